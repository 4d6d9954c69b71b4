package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.plan.RoundQuestion;
import jarwise.sample.SampleState;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A filter is counted by the keypad alone; the server is asked what it has. */
class MicroscopeBrowserTest extends BrowserTest {

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

    private Counter counter(int width) {
        return Counter.on(page(width)).open(site.address(site.port()));
    }

    @Test
    void aWholeFilterIsCountedByTheKeypadAlone() {
        String code = MicroscopeSite.JARS.get(0);
        Counter counter = counter(DESK).reads(code).isOn("A3");
        picture(counter.page, "microscope-start");

        counter.hears("P1-B3 ‘Rubia Tarn’. A 3. Start.").keys("4550").isOn("A4");
        counter.hold("*", 900)
                .hears(
                        "A 4. Here: nothing. On this filter: 3 western flower thrips. 39 cells to"
                                + " go.");
        counter.keys("60.0").isOn("B7");
        picture(counter.page, "microscope");
        for (int cell = 4; cell < 40; cell++) {
            counter.keys("0");
        }
        counter.isOn("all read").hold("*", 900).hears("Hold Enter to finish the filter.");
        counter.hold("Enter", 900);
        counter.hears("Filter done. 4 western flower thrips. Hold Enter for the next one.");
        isAccessible(counter.page);
        counter.foot("The desk has them all.");

        assertThat(site.filter(code).sample().state()).isEqualTo(SampleState.READ);
        assertThat(site.counted(code, "larva1")).isEqualTo(1);
        assertThat(site.counted(code, "larva2")).isEqualTo(2);
        assertThat(site.counted(code, "adult")).isEqualTo(1);
        assertThat(site.counted(code, "pupal")).isEqualTo(0);
        assertThat(site.filter(code).sample().reading().cellsObscured()).isEqualTo(1);
        assertThat(site.filter(code).sample().reading().cellsRead()).isEqualTo(39);
    }
}
