package jarwise;

import jarwise.base.InvalidInput;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Options of {@code serve} and {@code demo}, read by hand: an option parser would cost a fifth of
 * the time to the first page.
 *
 * @param address data folder or database address
 * @param port wanted port; the next free one is taken when it is in use and was not asked for
 * @param portGiven whether the port was asked for
 * @param lan what was said about the local network; empty where it is not to be served
 */
record ServeOptions(String address, int port, boolean portGiven, Optional<LanOptions> lan) {

    static final int USUAL_PORT = 7007;

    /**
     * What was said about the local network.
     *
     * @param port wanted port for https; the page of first contact takes the next one
     * @param portGiven whether the port was asked for
     * @param files certificate and key that were brought along
     */
    record LanOptions(int port, boolean portGiven, Optional<OwnFiles> files) {
        static final int USUAL_PORT = 7443;
    }

    /** PEM files. */
    record OwnFiles(Path certificate, Path key) {}

    /**
     * Reads the words after the command.
     *
     * @param words options and values
     * @param usualAddress where the data lie when no option says
     * @throws InvalidInput naming the first word that cannot be used
     */
    static ServeOptions of(List<String> words, String usualAddress) {
        Said said = new Said();
        Iterator<String> rest = words.stream().flatMap(ServeOptions::parted).iterator();
        while (rest.hasNext()) {
            said.take(rest.next(), rest);
        }
        return new ServeOptions(
                said.address == null ? usualAddress : said.address,
                said.port == null ? USUAL_PORT : said.port,
                said.port != null,
                said.lan());
    }

    /** The options as they come in. */
    private static final class Said {
        private @Nullable String address;
        private @Nullable Integer port;
        private boolean lan;
        private @Nullable Integer lanPort;
        private @Nullable Path certificate;
        private @Nullable Path key;

        void take(String option, Iterator<String> rest) {
            switch (option) {
                case "--data", "--database" -> address = valueOf(option, rest);
                case "--port" -> port = portOf(valueOf(option, rest), 65535);
                case "--lan" -> lan = true;
                case "--lan-port" -> lanPort = portOf(valueOf(option, rest), 65534);
                case "--certificate" -> certificate = Path.of(valueOf(option, rest));
                case "--key" -> key = Path.of(valueOf(option, rest));
                default ->
                        throw new InvalidInput(
                                ("'%s' is not an option here; allowed are --data DIR, --database"
                                                + " ADDRESS, --port N, --lan, --lan-port N,"
                                                + " --certificate FILE and --key FILE.")
                                        .formatted(option));
            }
        }

        Optional<LanOptions> lan() {
            if (!lan) {
                if (lanPort != null || certificate != null || key != null) {
                    throw new InvalidInput(
                            "--lan-port, --certificate and --key are for the local network. Maybe"
                                    + " add --lan.");
                }
                return Optional.empty();
            }
            return Optional.of(
                    new LanOptions(
                            lanPort == null ? LanOptions.USUAL_PORT : lanPort,
                            lanPort != null,
                            files()));
        }

        private Optional<OwnFiles> files() {
            if (certificate == null && key == null) {
                return Optional.empty();
            }
            if (certificate == null || key == null) {
                throw new InvalidInput(
                        "A certificate needs its key: give both, --certificate FILE and --key"
                                + " FILE.");
            }
            return Optional.of(new OwnFiles(certificate, key));
        }
    }

    /** An option and its value may be one word: {@code --port=7010}. */
    private static Stream<String> parted(String word) {
        int equals = word.startsWith("--") ? word.indexOf('=') : -1;
        return equals < 0
                ? Stream.of(word)
                : Stream.of(word.substring(0, equals), word.substring(equals + 1));
    }

    private static String valueOf(String option, Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new InvalidInput("%s needs a value after it.".formatted(option));
        }
        return rest.next();
    }

    private static int portOf(String text, int most) {
        if (text.matches("\\d{1,5}") && Integer.parseInt(text) <= most) {
            return Integer.parseInt(text);
        }
        throw new InvalidInput(
                "The port is '%s'; it must be a whole number from 0 to %d.".formatted(text, most));
    }
}
