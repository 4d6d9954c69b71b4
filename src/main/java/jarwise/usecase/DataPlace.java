package jarwise.usecase;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/** Where a site's data lie when nobody says: the platform's usual place for application data. */
public final class DataPlace {

    private DataPlace() {}

    /**
     * Finds the folder of one set of data.
     *
     * @param name {@code jarwise} for a site's own, {@code jarwise-demo} for the demo nursery
     * @param operatingSystem value of the system property {@code os.name}
     * @param environment environment variables
     * @param home the person's home folder
     * @return the folder; it may not exist yet
     */
    public static Path folder(
            String name, String operatingSystem, Map<String, String> environment, Path home) {
        String system = operatingSystem.toLowerCase(Locale.ROOT);
        if (system.contains("win")) {
            String roaming = environment.get("APPDATA");
            return (roaming == null ? home.resolve("AppData/Roaming") : Path.of(roaming))
                    .resolve(name);
        }
        if (system.contains("mac")) {
            return home.resolve("Library/Application Support").resolve(name);
        }
        String data = environment.get("XDG_DATA_HOME");
        boolean usable = data != null && Path.of(data).isAbsolute();
        return (usable ? Path.of(data) : home.resolve(".local/share")).resolve(name);
    }

    /** {@return the folder on this machine} */
    public static Path here(String name) {
        return folder(
                name,
                System.getProperty("os.name", ""),
                System.getenv(),
                Path.of(System.getProperty("user.home", ".")));
    }
}
