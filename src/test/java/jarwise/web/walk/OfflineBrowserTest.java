package jarwise.web.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.web.browser.BrowserTest;
import jarwise.web.exchange.CuttingProxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day in the house without a server; then the desk has exactly what the phone recorded. */
class OfflineBrowserTest extends BrowserTest {

    private static final String SHEET = "walk/" + WalkSite.ROUND;

    @TempDir Path folder;
    private WalkSite site;
    private CuttingProxy line;

    @BeforeEach
    void open() {
        site = new WalkSite(folder);
        line = new CuttingProxy(site.port());
    }

    @AfterEach
    void close() {
        line.close();
        site.close();
    }

    @Override
    protected boolean isOwnDoing(String consoleError) {
        return consoleError.startsWith("Failed to load resource: net::ERR_");
    }

    @Test
    void aWholeRoundWithoutAServerArrivesOnceAndComplete() {
        Walker scout = phone("SC-1");
        offline(scout, true);
        scout.cutAll();
        scout.sees("All are cut. Next: wash");
        scout.foot("8 steps are only on this phone. They are sent when the desk can be reached.");
        scout.press("Wash");
        scout.press("Soap");
        List<Integer> shaken = new ArrayList<>();
        for (String jar : WalkSite.JARS) {
            shaken.add(scout.wash(jar, 44 + shaken.size()));
        }
        assertThat(shaken).allMatch(seconds -> seconds >= 44 && seconds < 80);
        scout.foot("16 steps are only on this phone.");
        assertThat(site.fromPhones()).isEmpty();

        scout.page.reload();
        scout.sees("Which jar is in your hand?");
        scout.foot("16 steps are only on this phone.");
        picture(scout.page, "walk-30-offline");
        scout.type("Code on its label", WalkSite.BLANK);
        scout.shakeAndRinse(45);

        offline(scout, false);
        scout.foot("Everything is at the desk.");
        assertThat(site.fromPhones()).hasSize(17);
        assertThat(site.fromPhones().stream().map(event -> event.id().sequence()))
                .isEqualTo(LongStream.rangeClosed(1, 17).boxed().toList());
        for (int i = 0; i < WalkSite.JARS.size(); i++) {
            var jar = site.jar(WalkSite.JARS.get(i)).sample();
            assertThat(jar.state()).isEqualTo(SampleState.WASHED);
            assertThat(jar.samplingUnits()).isEqualTo(i == 2 ? 9 : 10);
            assertThat(jar.wash().shakeSeconds()).hasValue(shaken.get(i));
            assertThat(jar.collectedOn()).hasToString("Optional[2026-05-11]");
        }
        assertThat(site.jar(WalkSite.BLANK).sample().state()).isEqualTo(SampleState.WASHED);
        assertThat(site.events.staleSamples(WalkSite.SLUG)).isEmpty();
    }

    @Test
    void answersThatAreLostAreAskedForAgainAndCountOnce() {
        Walker scout = phone("SC-1");
        line.lose(100);
        scout.cut("P1-B3", WalkSite.JARS.get(0), 10, true);
        scout.foot("1 step is only on this phone.");
        awaitCuts(1);
        scout.cut("P1-B3", WalkSite.JARS.get(1), 8, false);
        awaitCuts(2);
        scout.foot("2 steps are only on this phone.");

        line.lose(0);
        scout.page.clock().fastForward(600_000);
        scout.foot("Everything is at the desk.");
        assertThat(site.fromPhones()).hasSize(2);
    }

    @Test
    void theSameBatchFromTwoPagesOfOnePhoneCountsOnce() {
        Walker scout = phone("SC-1");
        offline(scout, true);
        scout.cut("P1-B3", WalkSite.JARS.get(0), 10, true);
        scout.cut("P1-B3", WalkSite.JARS.get(1), 10, false);
        offline(scout, false);
        Page other = scout.page.context().newPage();
        other.navigate(site.address(line.port(), SHEET));
        scout.foot("Everything is at the desk.");
        Walker.on(other).foot("Everything is at the desk.");

        assertThat(site.fromPhones()).hasSize(2);
    }

    @Test
    void twoPhonesThatDisagreeLeaveAQuestionForTheDesk() {
        Walker one = phone("SC-1");
        Walker other = phone("SC-2");
        offline(one, true);
        offline(other, true);
        one.cut("P1-B3", WalkSite.JARS.get(0), 10, true);
        one.cut("P1-B3", WalkSite.JARS.get(1), 10, false);
        other.cut("P1-B3", WalkSite.JARS.get(0), 8, true);
        other.cut("P1-B3", WalkSite.JARS.get(1), 10, false);
        offline(one, false);
        one.foot("Everything is at the desk.");
        offline(other, false);
        other.foot("Everything is at the desk.");

        assertThat(site.fromPhones()).hasSize(4);
        assertThat(site.fromPhones().stream().map(SampleEvent::id).map(EventId::device).distinct())
                .hasSize(2);
        assertThat(site.jar(WalkSite.JARS.get(0)).openQuestions()).hasSize(1);
        assertThat(site.jar(WalkSite.JARS.get(1)).openQuestions()).isEmpty();
        other.press("More");
        other.page.getByText("1 jar has two different records").waitFor();
    }

    @Test
    void aRoundThatWaitsForMoreThanADayIsAnAlert() {
        Walker scout = phone("SC-1");
        offline(scout, true);
        scout.cut("P1-B3", WalkSite.JARS.get(0), 10, true);
        scout.page.clock().fastForward(25L * 3600 * 1000);
        scout.cut("P1-B3", WalkSite.JARS.get(1), 10, false);
        scout.foot("Some for more than a day: bring this phone to the desk today.");
        isAccessible(scout.page);
        picture(scout.page, "walk-31-late");
    }

    private Walker phone(String person) {
        Walker walker = Walker.with(page(PHONE)).open(site.address(line.port(), SHEET));
        walker.press(person);
        walker.foot("Everything is at the desk.");
        walker.page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        walker.page.waitForFunction("navigator.serviceWorker.controller !== null");
        return walker;
    }

    /** The browser knows that it is off, and nothing gets through either. */
    private void offline(Walker walker, boolean off) {
        BrowserContext phone = walker.page.context();
        if (off) {
            line.unplug();
        } else {
            line.plug();
        }
        phone.setOffline(off);
    }

    private void awaitCuts(int number) {
        long until = System.nanoTime() + 20_000_000_000L;
        while (cuts().size() < number && System.nanoTime() < until) {
            Thread.onSpinWait();
        }
        assertThat(cuts()).hasSize(number);
    }

    private List<SampleEvent> cuts() {
        return site.fromPhones().stream()
                .filter(
                        event ->
                                event.deed() instanceof Deed.StepTaken step
                                        && step.step() == Step.CUT)
                .toList();
    }
}
