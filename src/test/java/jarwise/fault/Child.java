package jarwise.fault;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A process of our own classes, to be killed. */
final class Child {

    private Child() {}

    /** {@return the started process; what it prints must be read by the caller} */
    static Process start(Class<?> main, String... arguments) throws IOException {
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-XX:TieredStopAtLevel=1",
                                "-Djava.util.logging.config.file="
                                        + System.getProperty("java.util.logging.config.file", ""),
                                "-cp",
                                System.getProperty("java.class.path"),
                                main.getName()));
        command.addAll(List.of(arguments));
        return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }
}
