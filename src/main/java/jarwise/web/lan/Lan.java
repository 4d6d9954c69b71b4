package jarwise.web.lan;

import jarwise.web.tls.Identity;
import java.net.InetAddress;
import java.security.cert.X509Certificate;
import java.util.List;
import java.util.Optional;

/**
 * How the server is to be reached from other devices.
 *
 * @param addresses of this machine in the local network; at least one
 * @param names host names beside them
 * @param port for https
 * @param plainPort for first contact over plain http
 * @param identity what the server shows
 * @param authority what phones have to trust first; empty where the certificate was brought along
 */
public record Lan(
        List<InetAddress> addresses,
        List<String> names,
        int port,
        int plainPort,
        Identity identity,
        Optional<X509Certificate> authority) {

    public Lan {
        addresses = List.copyOf(addresses);
        names = List.copyOf(names);
    }
}
