package jarwise.web.lan;

import io.javalin.config.JettyConfig;
import java.net.InetAddress;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;

/** The connectors of a server that other devices may reach, one an address and door. */
public final class LanDoors {

    private final Lan lan;
    private final List<ServerConnector> secure = new ArrayList<>();
    private final List<ServerConnector> plain = new ArrayList<>();

    /** Makes the doors; {@link #addTo} hangs them. */
    public LanDoors(Lan lan) {
        this.lan = lan;
    }

    /** Adds the desk's door first, whose port counts as the server's, then the others. */
    public void addTo(JettyConfig jetty, int deskPort) {
        jetty.addConnector(
                (server, http) ->
                        open(connector(server, marked(http, Door.DESK)), "127.0.0.1", deskPort));
        SslContextFactory.Server keys = keys();
        for (InetAddress address : lan.addresses()) {
            String host = LanAddresses.plain(address);
            jetty.addConnector(
                    (server, http) -> {
                        ServerConnector door = secure(server, marked(http, Door.LAN), keys);
                        secure.add(door);
                        return open(door, host, lan.port());
                    });
            jetty.addConnector(
                    (server, http) -> {
                        ServerConnector door = connector(server, marked(http, Door.PLAIN));
                        plain.add(door);
                        return open(door, host, lan.plainPort());
                    });
        }
    }

    /** {@return how the running server is reached} */
    public Reach reach() {
        return Reach.of(lan, secure.get(0).getLocalPort(), plain.get(0).getLocalPort());
    }

    private SslContextFactory.Server keys() {
        // The key store lives in memory only; its password keeps nobody out.
        byte[] random = new byte[16];
        new SecureRandom().nextBytes(random);
        String password = HexFormat.of().formatHex(random);
        SslContextFactory.Server keys = new SslContextFactory.Server();
        keys.setKeyStore(lan.identity().keyStore(password));
        keys.setKeyStorePassword(password);
        return keys;
    }

    private static HttpConfiguration marked(HttpConfiguration http, Door door) {
        HttpConfiguration own = new HttpConfiguration(http);
        own.addCustomizer(
                (request, headers) -> {
                    request.setAttribute(Door.ATTRIBUTE, door);
                    return request;
                });
        return own;
    }

    /** The names in a request are checked by the guard, who answers with a page. */
    private static ServerConnector secure(
            Server server, HttpConfiguration http, SslContextFactory.Server keys) {
        http.addCustomizer(new SecureRequestCustomizer(false));
        return new ServerConnector(
                server,
                new SslConnectionFactory(keys, "http/1.1"),
                new HttpConnectionFactory(http));
    }

    private static ServerConnector connector(Server server, HttpConfiguration http) {
        return new ServerConnector(server, new HttpConnectionFactory(http));
    }

    private static Connector open(ServerConnector connector, String host, int port) {
        connector.setHost(host);
        connector.setPort(port);
        return connector;
    }
}
