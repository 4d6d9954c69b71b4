package jarwise.web.lan;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How a running server is reached from other devices.
 *
 * @param names addresses and host names it answers to, the best known first
 * @param port for https
 * @param plainPort for first contact
 * @param authority what phones have to trust first; empty where the certificate was brought along
 * @param until when the server's certificate runs out
 */
public record Reach(
        List<String> names,
        int port,
        int plainPort,
        Optional<X509Certificate> authority,
        Instant until) {

    public Reach {
        names = List.copyOf(names);
    }

    static Reach of(Lan lan, int port, int plainPort) {
        return new Reach(
                namesOf(lan),
                port,
                plainPort,
                lan.authority(),
                lan.identity().certificate().getNotAfter().toInstant());
    }

    /** {@return every address and host name under which the server is shown} */
    public static List<String> namesOf(Lan lan) {
        Stream<String> addresses = lan.addresses().stream().map(LanAddresses::plain);
        // A certificate that was brought along is for its names first.
        return (lan.authority().isPresent()
                        ? Stream.concat(addresses, lan.names().stream())
                        : Stream.concat(lan.names().stream(), addresses))
                .distinct()
                .toList();
    }

    /** {@return the address of this program over https, with a slash at its end} */
    public String secure(String name) {
        return "https://%s:%d/".formatted(LanAddresses.inAddress(name), port);
    }

    /** {@return the address where a new device starts, with a slash at its end} */
    public String plain(String name) {
        return "http://%s:%d/".formatted(LanAddresses.inAddress(name), plainPort);
    }

    /** {@return whether a Host header names this machine as it is shown} */
    public boolean isOurs(String host) {
        return names.contains(LanAddresses.nameIn(host));
    }

    /** {@return the certificate that phones trust, DER; empty where none of ours is needed} */
    public Optional<byte[]> encoded() {
        return authority.map(
                certificate -> {
                    try {
                        return certificate.getEncoded();
                    } catch (CertificateEncodingException e) {
                        throw new IllegalStateException(e);
                    }
                });
    }

    /** {@return SHA-256 of the authority's certificate, as phones show it; empty without one} */
    public String fingerprint() {
        return encoded().map(Reach::fingerprint).orElse("");
    }

    private static String fingerprint(byte[] encoded) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(encoded);
            return HexFormat.ofDelimiter(" ").formatHex(digest).toUpperCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
