package jarwise.web.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.BrowserType.LaunchOptions;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The browser of this machine. */
public final class Browsers {

    static final List<String> FLAGS =
            List.of(
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync");

    private Browsers() {}

    /** {@return what drives a browser; it fetches none of its own} */
    public static Playwright playwright() {
        return Playwright.create(
                new Playwright.CreateOptions()
                        .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    }

    /** {@return the browser, without a window} */
    public static Browser start(Playwright playwright) {
        return playwright
                .chromium()
                .launch(new LaunchOptions().setExecutablePath(program()).setArgs(FLAGS));
    }

    /** {@return a browser whose data lie in a folder: on a disk, and there after its end} */
    public static BrowserContext start(Playwright playwright, Path data) {
        return playwright
                .chromium()
                .launchPersistentContext(
                        data,
                        new BrowserType.LaunchPersistentContextOptions()
                                .setExecutablePath(program())
                                .setViewportSize(1440, 900)
                                .setLocale("en")
                                .setArgs(FLAGS));
    }

    static Path program() {
        String given = System.getenv("JARWISE_BROWSER");
        return Stream.concat(
                        Stream.ofNullable(given),
                        Stream.of(
                                "/usr/bin/chromium",
                                "/usr/bin/chromium-browser",
                                "/usr/bin/google-chrome",
                                "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"))
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalStateException(
                                        "No Chromium or Chrome found; ./dev check installs one, or"
                                                + " set JARWISE_BROWSER to its path"));
    }
}
