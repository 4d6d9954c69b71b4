package jarwise.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.sample.SampleCode;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.tally.StageKey;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page of a sample tells what is unsure and set aside, and takes the names of the unsure. */
class IdentifyBrowserTest extends BrowserTest {

    private static final SampleCode JAR = new SampleCode("J-1");

    @TempDir Path folder;
    private DeskServer desk;

    @BeforeEach
    void startServer() {
        desk = new DeskServer(folder, true);
        read("phone-a", unsure("A1"), unsure("A1"), unsure("B1"), done("A1", false));
        read("phone-b", unsure("A1"), done("A1", false), unsure("C1"), done("C1", true));
    }

    @AfterEach
    void stopServer() {
        desk.close();
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void theUnsureOnesOfACellGetTheirName(int width) {
        Page page = page(width);
        page.navigate(desk.page("samples/J-1"));
        assertThat(page.locator("main").innerText())
                .contains("3 individuals are unsure: cell A1 (2), cell B1 (1).");
        page.getByText("Say what the unsure ones are").click();
        page.getByLabel("How many of them").fill("2");
        page.getByLabel("Pest and stage").selectOption("FRANOC:larva2");
        page.getByLabel("Where").selectOption("A1");
        isAccessible(page);
        picture(page, "identify-" + width);
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Put the name on record"))
                .click();

        assertThat(counts())
                .isEqualTo(
                        Map.of(
                                new StageKey("FRANOC", "larva2"),
                                2L,
                                new StageKey("unsure", "any"),
                                1L));
        assertThat(page.locator("main").innerText())
                .contains("1 individual is unsure: cell B1 (1).")
                .contains("unsure, identified: 1 × second-stage larva, western flower thrips");
        isAccessible(page);
    }

    @Test
    void aNumberThatIsTooLargeIsToldAndStays() {
        Page page = page(DESK);
        page.navigate(desk.page("samples/J-1"));
        page.getByText("Say what the unsure ones are").click();
        page.getByLabel("How many of them").fill("4");
        page.getByLabel("How many of them").press("Enter");

        assertThat(page.getByLabel("How many of them").inputValue()).isEqualTo("4");
        assertThat(page.locator("main").innerText())
                .contains("At most 3 can be named here.")
                .contains("This is needed.");
        isRefused(page);
        isAccessible(page);
    }

    @Test
    void whatIsSetAsideStandsThereWithItsReason() {
        Page page = page(DESK);
        page.navigate(desk.page("samples/J-1"));

        Locator main = page.locator("main");
        assertThat(main.innerText())
                .contains("In cells that could not be read: 1 × any stage, unsure.")
                .contains("In cells that another device had read before: 1 × any stage, unsure.")
                .contains("1 cell was read on two devices")
                .doesNotContain("broken off");
    }

    private Map<StageKey, Long> counts() {
        return new SampleStore(desk.database).countsOf(DeskServer.NURSERY, JAR);
    }

    private void read(String device, Deed... deeds) {
        List<SampleEvent> read = new ArrayList<>();
        for (Deed deed : deeds) {
            EventId id = new EventId(device, read.size() + 1L);
            Instant at = Instant.parse("2026-05-07T04:00:00Z").plusSeconds(id.sequence());
            read.add(new SampleEvent(id, JAR, at, "SC-1", Optional.empty(), deed));
        }
        new EventStore(desk.database).append(DeskServer.NURSERY, read);
    }

    private static Deed unsure(String cell) {
        return new Deed.Counted("unsure", "any", 1, Optional.of(cell));
    }

    private static Deed done(String cell, boolean obscured) {
        return new Deed.CellDone(cell, obscured);
    }
}
