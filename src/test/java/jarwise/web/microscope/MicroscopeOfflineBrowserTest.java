package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import jarwise.plan.RoundQuestion;
import jarwise.sample.SampleState;
import jarwise.web.browser.BrowserTest;
import jarwise.web.exchange.CuttingProxy;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong at a microscope: no server, a tab that is closed. */
class MicroscopeOfflineBrowserTest extends BrowserTest {

    private static final String ONE = MicroscopeSite.JARS.get(0);
    private static final String OTHER = MicroscopeSite.JARS.get(1);

    @TempDir Path folder;
    private MicroscopeSite site;
    private CuttingProxy line;

    @BeforeEach
    void open() {
        site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE);
        line = new CuttingProxy(site.port());
    }

    @AfterEach
    void close() {
        leavePages();
        line.close();
        site.close();
    }

    @Override
    protected boolean isOwnDoing(String consoleError) {
        return consoleError.startsWith("Failed to load resource: net::ERR_");
    }

    private Counter counter() {
        Page page = page(DESK);
        Counter counter = Counter.on(page).open(site.address(line.port())).isReady();
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        page.waitForFunction("navigator.serviceWorker.controller !== null");
        return counter;
    }

    @Test
    void filtersCountedWithoutAServerArriveOnceAndComplete() {
        Counter counter = counter();
        line.unplug();
        counter.reads(ONE).isOn("A3").keys("4550").isOn("A4");
        counter.foot("wait here until the desk can be reached");
        counter.page.reload();
        counter.isOn("A4").keys("6" + "0".repeat(39)).hold("Enter", 900).hears("Filter done.");
        counter.hold("Enter", 900);
        PlaywrightAssertions.assertThat(counter.page.locator(".tally-due")).hasCount(5);
        counter.reads(ONE);
        PlaywrightAssertions.assertThat(counter.page.locator(".tally-fault"))
                .containsText("is read already");
        counter.reads(OTHER).isOn("A3").keys("0".repeat(40)).hold("Enter", 900);
        counter.hears("Filter done. 0 western flower thrips.");
        assertThat(site.pressed(ONE)).isEmpty();

        line.plug();
        counter.page.evaluate("dispatchEvent(new Event('online'))");
        counter.foot("The desk has them all.");
        assertThat(site.filter(ONE).sample().state()).isEqualTo(SampleState.READ);
        assertThat(site.counted(ONE, "larva1")).isEqualTo(1);
        assertThat(site.counted(ONE, "larva2")).isEqualTo(2);
        assertThat(site.counted(ONE, "adult")).isEqualTo(1);
        assertThat(site.counted(OTHER, "adult")).isZero();
        List<Long> numbers =
                site.pressed(ONE).stream().map(event -> event.id().sequence()).sorted().toList();
        assertThat(numbers).isEqualTo(LongStream.rangeClosed(1, 47).boxed().toList());
    }

    @Test
    void aTabThatIsClosedUnderTheHandLosesNothingThatWasHeard() {
        Counter counter = counter().reads(ONE).isOn("A3").keys("555");
        PlaywrightAssertions.assertThat(counter.page.locator(".tally-k5 .tally-count"))
                .hasText("3");
        counter.keys("5");
        Page next = counter.page.context().newPage();
        counter.page.close();
        Counter again = Counter.on(next).open(site.address(line.port())).isOn("A3");
        again.keys("0").isOn("A4").foot("The desk has them all.");

        long counted =
                site.pressed(ONE).stream()
                        .filter(event -> event.deed().toString().startsWith("Counted"))
                        .count();
        assertThat(counted).isBetween(3L, 4L);
        PlaywrightAssertions.assertThat(next.locator(".tally-k5 .tally-count"))
                .hasText(String.valueOf(counted));
    }
}
