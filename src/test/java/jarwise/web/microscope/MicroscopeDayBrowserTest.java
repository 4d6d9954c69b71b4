package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import jarwise.plan.RoundQuestion;
import jarwise.sample.SampleState;
import jarwise.web.browser.BrowserTest;
import jarwise.web.exchange.CuttingProxy;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day at the microscope without a server, and a device whose battery ends. */
class MicroscopeDayBrowserTest extends BrowserTest {

    private static final String ONE = MicroscopeSite.JARS.get(0);

    /** Presses of insects on each of six filters of 40 cells: 3,000 presses with the cells. */
    private static final int INSECTS = 460;

    private static final Map<String, String> STAGES =
            Map.of("4", "larva1", "5", "larva2", "6", "adult");

    @TempDir Path folder;
    private MicroscopeSite site;
    private CuttingProxy line;

    @BeforeEach
    void open() {
        site = new MicroscopeSite(folder.resolve("site"), RoundQuestion.ESTIMATE);
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

    private Counter counter(Page page) {
        Counter counter = Counter.on(page).open(site.address(line.port())).isReady();
        page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        page.waitForFunction("() => navigator.serviceWorker.controller !== null");
        return counter;
    }

    @Test
    void aDayOfThreeThousandPressesWithoutAServerArrivesWhole() {
        Counter counter = counter(page(DESK));
        line.unplug();
        Random insects = new Random(3);
        Map<String, Map<String, Long>> pressed = new HashMap<>();
        for (String code : MicroscopeSite.JARS) {
            counter.reads(code);
            PlaywrightAssertions.assertThat(counter.page.locator(".tally-cell-name"))
                    .not()
                    .isEmpty();
            pressed.put(code, fill(counter, insects));
            waitsFor(counter, ".tally-said", "Every cell is read");
            counter.hold("Enter", 900).hears("Filter done.");
            counter.hold("Enter", 900);
        }
        PlaywrightAssertions.assertThat(counter.page.locator(".tally-due")).hasCount(0);

        line.plug();
        counter.page.evaluate("dispatchEvent(new Event('online'))");
        waitsFor(counter, ".tally-foot", "The desk has them all.");
        pressed.forEach(this::isAtTheServer);
        List<Long> numbers =
                MicroscopeSite.JARS.stream()
                        .flatMap(code -> site.pressed(code).stream())
                        .map(event -> event.id().sequence())
                        .sorted()
                        .toList();
        assertThat(numbers)
                .hasSizeGreaterThan(3000)
                .isEqualTo(LongStream.rangeClosed(1, numbers.size()).boxed().toList());
    }

    /** A program presses faster than any hand: the page needs its time for a whole filter. */
    private static void waitsFor(Counter counter, String place, String words) {
        PlaywrightAssertions.assertThat(counter.page.locator(place))
                .containsText(
                        words, new LocatorAssertions.ContainsTextOptions().setTimeout(60_000));
    }

    /** Presses insects of any stage between the cells of a filter; some are taken back. */
    private static Map<String, Long> fill(Counter counter, Random insects) {
        Map<String, Long> pressed = new HashMap<>();
        StringBuilder keys = new StringBuilder();
        for (int i = 0; i < INSECTS; i++) {
            String key = String.valueOf(4 + insects.nextInt(3));
            keys.append(key);
            if (insects.nextInt(50) == 0) {
                keys.append('-');
            } else {
                pressed.merge(STAGES.get(key), 1L, Long::sum);
            }
            if (i % 12 == 11) {
                keys.append('0');
            }
        }
        keys.append("0".repeat(40 - INSECTS / 12));
        counter.keys(keys.toString());
        return pressed;
    }

    private void isAtTheServer(String code, Map<String, Long> pressed) {
        assertThat(site.filter(code).sample().state()).as(code).isEqualTo(SampleState.READ);
        pressed.forEach(
                (stage, number) ->
                        assertThat(site.counted(code, stage))
                                .as(code + " " + stage)
                                .isEqualTo(number));
    }

    @Test
    void aBrowserThatIsKilledHasEveryPressThatWasHeard() {
        Path data = folder.resolve("browser");
        // Killed, not closed: there is nothing left of it to close.
        Counter before = counter(browserOf(data).pages().get(0));
        line.unplug();
        before.reads(ONE).isOn("A3").keys("55555550").isOn("A4").keys("555555555555");
        Locator shown = before.page.locator(".tally-k5 .tally-count");
        PlaywrightAssertions.assertThat(shown).not().hasText("7");
        long heard = Long.parseLong(shown.innerText());
        kill(data);

        try (BrowserContext after = browserOf(data)) {
            Counter counter = Counter.on(after.pages().get(0)).open(site.address(line.port()));
            counter.isOn("A4").foot("wait here until the desk can be reached");
            line.plug();
            counter.keys("0").isOn("A5");
            counter.page.evaluate("dispatchEvent(new Event('online'))");
            counter.foot("The desk has them all.");
            assertThat(site.counted(ONE, "larva2")).isBetween(heard, 19L);
            PlaywrightAssertions.assertThat(counter.page.locator(".tally-k5 .tally-count"))
                    .hasText(String.valueOf(site.counted(ONE, "larva2")));
        }
    }

    /** Ends all that runs for a browser as a battery does: without a word before. */
    private static void kill(Path data) {
        List<ProcessHandle> running =
                ProcessHandle.allProcesses()
                        .filter(
                                one ->
                                        one.info()
                                                .commandLine()
                                                .orElse("")
                                                .contains(data.toString()))
                        .toList();
        assertThat(running).isNotEmpty();
        running.forEach(ProcessHandle::destroyForcibly);
        running.forEach(one -> one.onExit().join());
    }
}
