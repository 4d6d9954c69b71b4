package jarwise.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.sample.CollectedSample;
import jarwise.sample.Fluid;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.tally.StageKey;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SampleBrowserTest extends BrowserTest {

    private static final StageKey LARVA = new StageKey("FRANOC", "larva1");
    private static final StageKey ADULT = new StageKey("FRANOC", "adult");

    @TempDir Path folder;
    private DeskServer desk;

    @BeforeEach
    void startServer() {
        desk = new DeskServer(folder, true);
    }

    @AfterEach
    void stopServer() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aSampleIsEnteredCorrectedAndVoided(int width) {
        Page page = page(width);
        page.navigate(desk.page("samples"));
        isAccessible(page);
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Enter a sample"))
                .first()
                .click();
        isAccessible(page);
        enterSample(page);
        picture(page, "sample-new-" + width);
        button(page, "Put the sample on record").click();

        assertThat(page.locator("h1").innerText()).isEqualTo("In S-001: 4 × first-stage larva.");
        assertThat(counts()).isEqualTo(Map.of(LARVA, 4L, ADULT, 0L));
        assertThat(sample().wash().fluid()).contains(Fluid.ALCOHOL);
        isAccessible(page);

        correctLarvae(page);
        assertThat(counts()).containsEntry(LARVA, 6L);
        voidAdults(page);
        assertThat(counts()).isEqualTo(Map.of(LARVA, 6L));
        isAccessible(page);
        picture(page, "sample-" + width);
        assertThat(page.content()).contains("misread the label", "adults were not looked for");
        page.navigate(desk.page("samples"));
        picture(page, "samples-" + width);
        isAccessible(page);
    }

    @Test
    void aSampleIsEndedWithTheKeyboardAloneAndIsNoZero() {
        Page page = page(DESK);
        page.navigate(desk.page("new-sample"));
        page.getByLabel("growing points cut").fill("10");
        button(page, "Put the sample on record").press("Enter");
        assertThat(page.locator("h1").innerText())
                .isEqualTo("S-001 is cut and waits to be washed.");

        summary(page, "Lost, spilled or discarded").press("Enter");
        page.getByLabel("What happened").selectOption("spilled");
        page.locator("#end-reason").fill("the lid was loose");
        page.locator("#end-reason").press("Enter");

        assertThat(page.locator("h1").innerText()).isEqualTo("S-001 was spilled. That is no zero.");
        assertThat(sample().state()).isEqualTo(SampleState.SPILLED);
        assertThat(counts()).isEmpty();
    }

    private static void correctLarvae(Page page) {
        summary(page, "Correct first-stage larva, western flower thrips").click();
        page.getByLabel("The right number").first().fill("6");
        page.getByLabel("Reason").first().fill("misread the label");
        button(page, "Correct this count").first().click();
    }

    private static void voidAdults(Page page) {
        summary(page, "Void adult, western flower thrips").click();
        page.locator("[id='v-FRANOC:adult']").fill("adults were not looked for");
        page.locator("[id='v-FRANOC:adult']").press("Enter");
    }

    private static void enterSample(Page page) {
        page.getByLabel("growing points cut").fill("10");
        page.getByLabel("bench", new Page.GetByLabelOptions().setExact(true)).fill("P1-B3");
        page.getByLabel("wash fluid").selectOption("alcohol");
        page.getByLabel("reader").fill("SC-1");
        page.getByText("western flower thrips").click();
        page.locator("[name='count:FRANOC:larva1']").fill("4");
        page.locator("[name='count:FRANOC:adult']").fill("0");
    }

    private Map<StageKey, Long> counts() {
        return new SampleStore(desk.database).countsOf(DeskServer.NURSERY, new SampleCode("S-001"));
    }

    private CollectedSample sample() {
        assertThat(new EventStore(desk.database).staleSamples(DeskServer.NURSERY)).isEmpty();
        return new SampleStore(desk.database)
                .find(DeskServer.NURSERY, new SampleCode("S-001"))
                .orElseThrow();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    private static Locator summary(Page page, String name) {
        return page.locator("summary", new Page.LocatorOptions().setHasText(name));
    }
}
