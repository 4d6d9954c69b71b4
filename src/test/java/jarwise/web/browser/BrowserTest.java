package jarwise.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;

/**
 * A real browser on a real server. Pages are opened at a width; what a test finds, it finds by role
 * and label, as a scout would. Whatever the page writes to its console as an error fails the test.
 */
@Tag("slow")
public abstract class BrowserTest {

    protected static final int PHONE = 360;
    protected static final int DESK = 1440;

    private static Playwright playwright;
    private static Browser browser;

    private final List<BrowserContext> contexts = new ArrayList<>();
    private final List<String> consoleErrors = new ArrayList<>();

    @BeforeAll
    static void startBrowser() {
        playwright = Browsers.playwright();
        browser = Browsers.start(playwright);
    }

    @AfterAll
    static void stopBrowser() {
        playwright.close();
    }

    @AfterEach
    void closePages() {
        leavePages();
        assertThat(consoleErrors).as("errors on the page's console").isEmpty();
    }

    /** Closes all pages: before their server is closed, where a page sends by itself. */
    protected void leavePages() {
        contexts.forEach(BrowserContext::close);
        contexts.clear();
    }

    /** Checks that a form was refused: the browser tells its console of that, and of no more. */
    protected void isRefused(Page page) {
        page.waitForCondition(() -> !consoleErrors.isEmpty());
        assertThat(consoleErrors).singleElement().asString().contains("422");
        consoleErrors.clear();
    }

    /** {@return a fresh page of this width, with no cookies} */
    protected Page page(int width) {
        BrowserContext context =
                browser.newContext(
                        new Browser.NewContextOptions()
                                .setViewportSize(width, width < 720 ? 740 : 900)
                                .setHasTouch(width < 720)
                                // the authority of a test server is known to nobody
                                .setIgnoreHTTPSErrors(true)
                                .setLocale("en"));
        contexts.add(context);
        Page page = context.newPage();
        page.onConsoleMessage(
                message -> {
                    if (message.type().equals("error") && !isOwnDoing(message.text())) {
                        consoleErrors.add(message.text());
                    }
                });
        page.onPageError(consoleErrors::add);
        return page;
    }

    /** {@return whether a test brought an error about itself, such as a broken connection} */
    protected boolean isOwnDoing(String consoleError) {
        return false;
    }

    /** Checks the page against WCAG 2.2 A and AA as far as a program can, and for overflow. */
    protected static void isAccessible(Page page) {
        AxeResults results =
                new AxeBuilder(page)
                        .withTags(
                                List.of(
                                        "wcag2a",
                                        "wcag2aa",
                                        "wcag21a",
                                        "wcag21aa",
                                        "wcag22aa",
                                        "best-practice"))
                        .analyze();
        assertThat(results.getViolations())
                .as("accessibility of " + page.url())
                .extracting(rule -> rule.getId() + ": " + rule.getNodes())
                .isEmpty();
        Object overflow =
                page.evaluate(
                        "document.documentElement.scrollWidth -"
                                + " document.documentElement.clientWidth");
        assertThat(((Number) overflow).intValue())
                .as("sideways overflow of " + page.url())
                .isLessThanOrEqualTo(0);
    }

    /** Keeps a picture under target/screens, to be looked at. */
    protected static void picture(Page page, String name) {
        page.screenshot(
                new Page.ScreenshotOptions()
                        .setFullPage(true)
                        .setPath(Path.of("target", "screens", name + ".png")));
    }

    /** {@return a browser of its own, with its data in a folder: one that may be killed} */
    protected static BrowserContext browserOf(Path data) {
        return Browsers.start(playwright, data);
    }
}
