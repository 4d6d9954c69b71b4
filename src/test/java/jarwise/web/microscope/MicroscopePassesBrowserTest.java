package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import jarwise.plan.RoundQuestion;
import jarwise.sample.CollectedSample.Reading;
import jarwise.sample.SampleState;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A filter is read in passes, and the page says whether the rest of it still matters. */
class MicroscopePassesBrowserTest extends BrowserTest {

    private static final String CODE = MicroscopeSite.JARS.get(0);
    private static final String TEN_CELLS = "0".repeat(10);

    @TempDir Path folder;

    private Counter counter(MicroscopeSite site) {
        return Counter.on(page(DESK)).open(site.address(site.port()));
    }

    @Test
    void aPassThatFoundNothingIsNoReasonToStopADetection() {
        try (MicroscopeSite site = new MicroscopeSite(folder, RoundQuestion.DETECT)) {
            site.line("larva", 0.5);
            Counter counter = counter(site).reads(CODE, 4).isOn("A5").keys(TEN_CELLS);
            counter.hears("Pass 1 is read.").advises("Read on. Up to");
            picture(counter.page, "microscope-pass");
            isAccessible(counter.page);

            counter.hold("Enter", 900).hears("Filter done. 0 western flower thrips.");
            counter.foot("The desk has them all.");

            assertThat(site.filter(CODE).sample().state()).isEqualTo(SampleState.PARTLY_READ);
            Reading reading = site.filter(CODE).sample().reading();
            assertThat(reading.cellsRead()).isEqualTo(10);
            assertThat(reading.cellsReadable()).isEqualTo(40);
        }
    }

    @Test
    void theEndOfAPassAfterWhichTheVerdictStandsIsSaidAloud() {
        try (MicroscopeSite site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE)) {
            site.line("larva", 0.2);
            MicroscopeSite.JARS.subList(1, 5).forEach(code -> site.read(code, 12, "SC-2"));
            Counter counter = counter(site).reads(CODE, 4).isOn("A5");
            counter.keys("550".repeat(10));
            counter.hears("You may stop: hold Enter.");
            counter.advises("You may stop: above the line whatever the rest holds.");
            picture(counter.page, "microscope-may-stop");

            counter.hold("Enter", 900).hears("Filter done. 20 western flower thrips.");
            counter.foot("The desk has them all.");
            assertThat(site.filter(CODE).sample().state()).isEqualTo(SampleState.PARTLY_READ);
            assertThat(site.counted(CODE, "larva2")).isEqualTo(20);
        }
    }

    @Test
    void whatIsInABrokenPassIsSetAsideAfterAWord() {
        try (MicroscopeSite site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE)) {
            Counter counter = counter(site).reads(CODE, 4).isOn("A5").hold("Enter", 900);
            counter.hears("40 cells are not read. Rows read so far are no sample.");
            counter.keys("50" + "0".repeat(9) + "6600").hold("Enter", 900);
            counter.hears("This pass is not finished");
            counter.hold("Enter", 900).hears("Filter done. 1 western flower thrips.");
            counter.foot("The desk has them all.");

            assertThat(site.counted(CODE, "larva2")).isEqualTo(1);
            assertThat(site.counted(CODE, "adult")).isEqualTo(0);
            assertThat(site.filter(CODE).sample().reading().cellsRead()).isEqualTo(10);
        }
    }

    @Test
    void aFilterThatIsCountedAgainWaitsForSomebodyElse() {
        try (MicroscopeSite site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE)) {
            site.read(CODE, 3, "SC-1").drawn(CODE);
            Counter counter = counter(site).reads(CODE);
            PlaywrightAssertions.assertThat(counter.page.getByRole(AriaRole.ALERT))
                    .containsText("You counted " + CODE + " the first time.");
            PlaywrightAssertions.assertThat(
                            counter.page.locator(
                                    ".tally-due", new Page.LocatorOptions().setHasText(CODE)))
                    .containsText("to be counted again, not by SC-1");
            picture(counter.page, "microscope-again");
            isAccessible(counter.page);
            counter.page.getByLabel("Who reads").selectOption("SC-2");
            counter.button("Start reading").click();
            counter.isOn("A3").keys("5050" + "0".repeat(38)).hold("Enter", 900);
            counter.hears("Filter done. 2 western flower thrips.");
            counter.foot("The desk has them all.");

            assertThat(site.filter(CODE + ".r1").sample().reading().reader()).hasValue("SC-2");
            assertThat(site.counted(CODE + ".r1", "larva2")).isEqualTo(2);
            assertThat(site.counted(CODE, "larva2")).isEqualTo(3);
        }
    }
}
