package jarwise.web.lan;

import java.io.IOException;
import java.net.Inet4Address;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Addresses of this machine that a phone in the same building can open. */
public final class LanAddresses {

    /** Interfaces of virtual machines and containers: nothing outside of this machine is there. */
    private static final List<String> INSIDE =
            List.of("docker", "br-", "veth", "virbr", "vmnet", "vboxnet");

    private LanAddresses() {}

    /** {@return private addresses in use, those that people know first} */
    public static List<InetAddress> ofThisMachine() {
        List<InetAddress> found = new ArrayList<>();
        try {
            for (NetworkInterface one : Collections.list(NetworkInterface.getNetworkInterfaces())) {
                if (leadsOutside(one)) {
                    Collections.list(one.getInetAddresses()).stream()
                            .filter(LanAddresses::isPrivate)
                            .forEach(found::add);
                }
            }
        } catch (IOException e) {
            return List.of();
        }
        return found.stream()
                .sorted(
                        Comparator.comparing((InetAddress a) -> a instanceof Inet6Address)
                                .thenComparing(a -> !plain(a).startsWith("192.168."))
                                .thenComparing(LanAddresses::plain))
                .distinct()
                .toList();
    }

    /** {@return the machine's name as phones look it up in a local network; none if unusable} */
    public static List<String> namesOfThisMachine() {
        try {
            String label =
                    InetAddress.getLocalHost()
                            .getHostName()
                            .toLowerCase(Locale.ROOT)
                            .replaceFirst("\\..*", "");
            return label.matches("[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?") && !label.equals("localhost")
                    ? List.of(label + ".local")
                    : List.of();
        } catch (UnknownHostException e) {
            return List.of();
        }
    }

    private static boolean leadsOutside(NetworkInterface one) throws IOException {
        return one.isUp()
                && !one.isLoopback()
                && !one.isPointToPoint()
                && INSIDE.stream().noneMatch(one.getName()::startsWith);
    }

    /** Ranges that no router passes on: RFC 1918, and RFC 4193 for IPv6. */
    static boolean isPrivate(InetAddress address) {
        return address instanceof Inet4Address
                ? address.isSiteLocalAddress()
                : (address.getAddress()[0] & 0xfe) == 0xfc;
    }

    /** {@return an address as text, without the name of an interface} */
    public static String plain(InetAddress address) {
        return address.getHostAddress().replaceFirst("%.*", "");
    }

    /** {@return an address as it stands between "//" and ":" of an address of a page} */
    static String inAddress(String name) {
        return name.contains(":") ? "[" + name + "]" : name;
    }

    /** {@return the name in a Host header in one spelling; empty if it is none} */
    static String nameIn(String host) {
        String name = host.replaceFirst(":\\d+$", "").toLowerCase(Locale.ROOT);
        if (name.matches("\\[[0-9a-f:.]+\\]")) {
            try {
                return plain(InetAddress.getByName(name));
            } catch (UnknownHostException e) {
                return "";
            }
        }
        return name.endsWith(".") ? name.substring(0, name.length() - 1) : name;
    }
}
