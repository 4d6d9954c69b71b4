package jarwise;

import jarwise.base.InvalidInput;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.List;

/** Ports that nobody has. */
final class Ports {

    private static final int TRIES = 50;

    private Ports() {}

    /**
     * {@return the wanted port, or the next free one when it is taken and nobody asked for it}
     *
     * @param wanted 0 for any
     * @param asked whether it was asked for
     * @param width how many in a row must be free
     * @param addresses on which they must be
     * @throws InvalidInput if they are taken
     */
    static int free(int wanted, boolean asked, int width, List<InetAddress> addresses) {
        if (wanted == 0 && width == 1) {
            return 0;
        }
        int first = wanted == 0 ? ServeOptions.LanOptions.USUAL_PORT : wanted;
        int last = asked && wanted != 0 ? first : first + TRIES;
        for (int port = first; port <= last; port++) {
            if (areFree(port, width, addresses)) {
                return port;
            }
        }
        throw new InvalidInput(
                "Port %s is taken by another program; maybe Jarwise is running already."
                        .formatted(width == 1 ? first : first + " or " + (first + 1)));
    }

    private static boolean areFree(int first, int width, List<InetAddress> addresses) {
        for (InetAddress address : addresses) {
            for (int port = first; port < first + width; port++) {
                try (ServerSocket probe = new ServerSocket(port, 1, address)) {
                    probe.setReuseAddress(true);
                } catch (IOException e) {
                    return false;
                }
            }
        }
        return true;
    }
}
