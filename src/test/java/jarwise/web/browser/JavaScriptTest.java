package jarwise.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Unit tests of the page's modules, run where the modules run: each file of {@code
 * src/test/resources/js} is a page of its own. No tool but the browser is needed.
 */
class JavaScriptTest extends BrowserTest {

    private static final Path TESTS = Path.of("src/test/resources/js");
    private static ModuleServer server;

    @BeforeAll
    static void startServer() throws IOException {
        server = new ModuleServer();
    }

    @AfterAll
    static void stopServer() {
        server.close();
    }

    static Stream<String> files() throws IOException {
        try (Stream<Path> files = Files.list(TESTS)) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".test.js"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void everyTestOfTheFileHolds(String file) {
        Page page = page(DESK);
        page.navigate(server.page(file));
        page.waitForFunction("globalThis.results !== undefined");
        @SuppressWarnings("unchecked")
        List<Map<String, String>> results =
                (List<Map<String, String>>) page.evaluate("globalThis.results");

        assertThat(results).as("tests in " + file).isNotEmpty();
        assertThat(results)
                .filteredOn(result -> !result.get("fault").isEmpty())
                .extracting(result -> result.get("name") + ": " + result.get("fault"))
                .isEmpty();
    }
}
