package jarwise.web.lan;

import jarwise.Program;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import jarwise.web.tls.LocalAuthority;
import java.io.IOException;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** A real server with a local network of its own: another loopback address of this machine. */
public final class LanServer implements AutoCloseable {

    public static final String NURSERY = "quillback";
    public static final String HOST = "127.0.0.2";

    public final Database database;
    public final LocalAuthority authority;
    public final Reach reach;
    public Instant now = Instant.parse("2026-05-07T05:40:00Z");
    private final Program program;
    private final int port;

    /** Starts with two nurseries. */
    public LanServer(Path folder) {
        String address = folder.resolve("data").toString();
        this.program = Program.open(address, () -> now);
        this.database = Database.open(address);
        save(NURSERY, "Quillback Lane");
        save("larch-row", "Larch Row");
        Instant today = Instant.now();
        this.authority = LocalAuthority.in(folder.resolve("certificates"), today);
        Lan lan =
                new Lan(
                        List.of(literal(HOST)),
                        List.of(),
                        0,
                        0,
                        authority.serverFor(List.of(HOST), today),
                        Optional.of(authority.certificate()));
        this.port = program.serve(0, lan);
        this.reach = program.reach().orElseThrow();
    }

    private void save(String slug, String name) {
        new SiteStore(database).save(new Nursery(slug, name, ZoneId.of("Europe/Paris"), "en"));
    }

    private static InetAddress literal(String host) {
        try {
            return InetAddress.getByName(host);
        } catch (UnknownHostException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return an address at the desk} */
    public String desk(String page) {
        return "http://127.0.0.1:" + port + "/" + page;
    }

    /** {@return an address over https} */
    public String secure(String page) {
        return reach.secure(HOST) + page;
    }

    /** {@return an address over plain http} */
    public String plain(String page) {
        return reach.plain(HOST) + page;
    }

    /** {@return what a phone knows that trusts this authority, and nothing else} */
    public SSLContext trust() throws GeneralSecurityException, IOException {
        KeyStore roots = KeyStore.getInstance("PKCS12");
        roots.load(null, null);
        roots.setCertificateEntry("authority", authority.certificate());
        TrustManagerFactory trust =
                TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        trust.init(roots);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, trust.getTrustManagers(), null);
        return context;
    }

    @Override
    public void close() {
        database.close();
        program.close();
    }
}
