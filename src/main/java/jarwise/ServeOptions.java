package jarwise;

import jarwise.base.InvalidInput;
import java.util.Iterator;
import java.util.List;

/**
 * Options of {@code serve} and {@code demo}, read by hand: an option parser would cost a fifth of
 * the time to the first page.
 *
 * @param address data folder or database address
 * @param port wanted port; the next free one is taken when it is in use and was not asked for
 * @param portGiven whether the port was asked for
 */
record ServeOptions(String address, int port, boolean portGiven) {

    static final int USUAL_PORT = 7007;

    /**
     * Reads the words after the command.
     *
     * @param words options and values
     * @param usualAddress where the data lie when no option says
     * @throws InvalidInput naming the first word that cannot be used
     */
    static ServeOptions of(List<String> words, String usualAddress) {
        String address = usualAddress;
        int port = USUAL_PORT;
        boolean portGiven = false;
        Iterator<String> rest = words.iterator();
        while (rest.hasNext()) {
            String option = rest.next();
            switch (option) {
                case "--data", "--database" -> address = valueOf(option, rest);
                case "--port" -> {
                    port = portOf(valueOf(option, rest));
                    portGiven = true;
                }
                default ->
                        throw new InvalidInput(
                                ("'%s' is not an option here; allowed are --data DIR, --database"
                                                + " ADDRESS and --port N.")
                                        .formatted(option));
            }
        }
        return new ServeOptions(address, port, portGiven);
    }

    private static String valueOf(String option, Iterator<String> rest) {
        if (!rest.hasNext()) {
            throw new InvalidInput("%s needs a value after it.".formatted(option));
        }
        return rest.next();
    }

    private static int portOf(String text) {
        if (text.matches("\\d{1,5}") && Integer.parseInt(text) <= 65535) {
            return Integer.parseInt(text);
        }
        throw new InvalidInput(
                "The port is '%s'; it must be a whole number from 0 to 65535.".formatted(text));
    }
}
