package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Cookie;
import jarwise.plan.RoundQuestion;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The dark page: sizes, languages, contrast, and what a screen reader is told. */
class MicroscopeLooksBrowserTest extends BrowserTest {

    private static final String CODE = MicroscopeSite.JARS.get(0);

    /** Words on whatever lies behind them, by the formula of WCAG 2.2. */
    private static final String LOW_CONTRAST =
            """
            () => {
              const parts = (colour) => colour.match(/[\\d.]+/g).map(Number)
              const light = ([r, g, b]) => {
                const line = (v) => (v /= 255) <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
                return 0.2126 * line(r) + 0.7152 * line(g) + 0.0722 * line(b)
              }
              const behind = (el) => {
                for (; el; el = el.parentElement) {
                  const colour = parts(getComputedStyle(el).backgroundColor)
                  if (colour.length === 3 || colour[3] > 0) return colour
                }
                return [255, 255, 255]
              }
              const faults = []
              const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
              while (walker.nextNode()) {
                const el = walker.currentNode.parentElement
                const words = walker.currentNode.data.trim()
                if (!words || el.closest('script, style, option')) continue
                if (el.getClientRects().length === 0) continue
                const style = getComputedStyle(el)
                const ink = parts(el instanceof SVGElement ? style.fill : style.color)
                const [a, b] = [light(ink), light(behind(el))].sort((x, y) => y - x)
                const ratio = (a + 0.05) / (b + 0.05)
                if (ratio < 7) faults.push(words + ' ' + ratio.toFixed(2))
              }
              return faults
            }
            """;

    @TempDir Path folder;
    private MicroscopeSite site;

    @BeforeEach
    void openSite() {
        site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE);
    }

    @AfterEach
    void closeSite() {
        leavePages();
        site.close();
    }

    private Counter counter(int width, int height, String language) {
        Page page = page(width);
        page.setViewportSize(width, height);
        page.context()
                .addCookies(
                        List.of(
                                new Cookie("jarwise-language", language)
                                        .setUrl("http://127.0.0.1:" + site.port())));
        Counter counter = Counter.on(page).open(site.address(site.port()));
        page.locator("#lid").waitFor();
        return counter;
    }

    @ParameterizedTest
    @CsvSource({"1440, 900", "1366, 768", "1024, 768", "740, 360", "360, 740"})
    void everyWordStandsOutSevenToOneAtEverySize(int width, int height) {
        Counter counter = counter(width, height, "en");
        check(counter.page, "open-" + width);
        counter.reads(CODE).isOn("A3");
        counter.keys("550.60");
        check(counter.page, "count-" + width);
        counter.button("More").click();
        check(counter.page, "more-" + width);
    }

    private static void check(Page page, String name) {
        picture(page, "tally-" + name);
        isAccessible(page);
        assertThat((List<?>) page.evaluate(LOW_CONTRAST)).as("words hard to see").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"es, 1440, 900", "es, 360, 740", "fr, 1366, 768", "fr, 740, 360"})
    void otherLanguagesFitAsWell(String language, int width, int height) {
        Counter counter = counter(width, height, language);
        counter.page.locator("#lid").fill(CODE);
        counter.page.locator("#base").fill(CODE);
        counter.page.locator("#person").selectOption("SC-2");
        counter.page.locator(".tally-go").click();
        counter.isOn("A3").keys("4560");
        check(counter.page, language + "-" + width);
    }
}
