package jarwise;

/** Builds every object once and connects them. */
public final class App {

    private App() {}

    /**
     * Starts the command named by the first argument.
     *
     * @param args command and options
     */
    public static void main(String[] args) {
        System.out.println("Jarwise " + String.join(" ", args));
    }
}
