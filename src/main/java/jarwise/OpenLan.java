package jarwise;

import jarwise.ServeOptions.LanOptions;
import jarwise.base.InvalidInput;
import jarwise.store.Database;
import jarwise.usecase.DataPlace;
import jarwise.web.lan.Lan;
import jarwise.web.lan.LanAddresses;
import jarwise.web.lan.Reach;
import jarwise.web.tls.Identity;
import jarwise.web.tls.LocalAuthority;
import jarwise.web.tls.OwnCertificate;
import java.io.PrintStream;
import java.net.InetAddress;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What {@code serve --lan} needs: addresses, free ports, a certificate. */
final class OpenLan {

    private OpenLan() {}

    /**
     * {@return how the server is to be reached from other devices}
     *
     * @param options what was said
     * @param data address of the data, beside which the keys are kept
     * @param now by this machine's own clock, whatever the day of the demo
     * @throws InvalidInput if there is no local network, a port is taken or a file is wrong
     */
    static Lan of(LanOptions options, String data, Instant now) {
        return of(options, data, LanAddresses.ofThisMachine(), now);
    }

    static Lan of(LanOptions options, String data, List<InetAddress> addresses, Instant now) {
        if (addresses.isEmpty()) {
            throw new InvalidInput(
                    "This computer has no address in a local network (such as 192.168.1.20). Maybe"
                            + " its network is off.");
        }
        Optional<Identity> brought =
                options.files()
                        .map(files -> OwnCertificate.read(files.certificate(), files.key(), now));
        int port = Ports.free(options.port(), options.portGiven(), 2, addresses);
        return brought.map(identity -> brought(identity, addresses, port))
                .orElseGet(() -> made(addresses, port, data, now));
    }

    private static Lan brought(Identity identity, List<InetAddress> addresses, int port) {
        List<String> names = OwnCertificate.namesOf(identity);
        return new Lan(addresses, names, port, port + 1, identity, Optional.empty());
    }

    private static Lan made(List<InetAddress> addresses, int port, String data, Instant now) {
        Path folder =
                Database.fileAt(data)
                        .map(file -> file.resolveSibling("certificates"))
                        .orElseGet(() -> DataPlace.here("jarwise").resolve("certificates"));
        List<String> names = LanAddresses.namesOfThisMachine();
        LocalAuthority authority = LocalAuthority.in(folder, now);
        List<String> all =
                Stream.concat(addresses.stream().map(LanAddresses::plain), names.stream()).toList();
        return new Lan(
                addresses,
                names,
                port,
                port + 1,
                authority.serverFor(all, now),
                Optional.of(authority.certificate()));
    }

    /** Says where the pages are, and what to do next. */
    static void tell(Reach reach, PrintStream out) {
        List<String> names = reach.names();
        out.printf("In the local network it is at %s%n", joined(names, reach));
        out.printf(
                "A new phone opens %s first; its code is shown under Settings, Devices.%n",
                reach.plain(names.get(0)));
    }

    private static String joined(List<String> names, Reach reach) {
        return String.join(" and ", names.stream().map(reach::secure).toList());
    }
}
