package jarwise.web.paper;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundPlans;
import jarwise.sample.CollectedSample;
import jarwise.sample.Fluid;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.usecase.rounds.RegisterRound;
import jarwise.web.browser.BrowserTest;
import jarwise.web.desk.DeskServer;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaperBrowserTest extends BrowserTest {

    private static final String ID = "2026-05-11-a";

    @TempDir Path folder;

    private static DeskServer desk(Path folder) {
        DeskServer desk = new DeskServer(folder, true);
        RoundPlan plan = RoundPlans.small(ID, "7K4-M9Q");
        new RegisterRound(desk.database).run(DeskServer.NURSERY, plan);
        return desk;
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void labels_are_printed_on_the_chosen_sheet_and_the_choice_is_remembered(int width)
            throws IOException {
        try (DeskServer desk = desk(folder)) {
            Page page = page(width);
            page.navigate(desk.page("rounds/" + ID + "/labels"));
            assertThat(page.locator("h1").innerText()).isEqualTo("4 jars: 12 labels on 1 sheet.");
            isAccessible(page);
            picture(page, "labels-" + width);

            page.getByLabel("Sheet of labels").selectOption("a4-24");
            page.getByLabel("To the right, mm").fill("-0,5");
            page.getByLabel("First label still").fill("22");
            Download labels = page.waitForDownload(() -> button(page, "Print labels"));
            String text = text(labels);
            assertThat(labels.suggestedFilename()).isEqualTo("labels-2026-05-11-a.pdf");
            assertThat(text).contains("7K4-M9Q1", "VOUCHER", "sheet 2 of 2", "re-entry interval");
            assertThat(new SettingsStore(desk.database).settings(DeskServer.NURSERY))
                    .singleElement()
                    .satisfies(one -> assertThat(one.value()).isEqualTo("a4-24 -0.5 0.0"));

            page.navigate(desk.page("rounds/" + ID + "/labels"));
            assertThat(page.getByLabel("Sheet of labels").inputValue()).isEqualTo("a4-24");
            Download test = page.waitForDownload(() -> button(page, "Test page"));
            assertThat(text(test)).contains("Test page for a4-24");
        }
    }

    @Test
    void what_is_wrong_with_a_choice_is_said_beside_it_and_nothing_is_remembered() {
        try (DeskServer desk = desk(folder)) {
            Page page = page(DESK);
            page.navigate(desk.page("rounds/" + ID + "/labels"));
            page.getByLabel("Down, mm").fill("40");
            page.getByLabel("First label still").fill("99");
            button(page, "Print labels");
            isRefused(page);
            assertThat(page.locator("#down-fault").innerText()).contains("below 10");
            assertThat(page.locator("#start-fault").innerText()).contains("21");
            assertThat(page.getByLabel("Down, mm").inputValue()).isEqualTo("40");
            isAccessible(page);
            assertThat(new SettingsStore(desk.database).settings(DeskServer.NURSERY)).isEmpty();
        }
    }

    @Test
    void sheets_for_a_pencil_come_on_the_paper_of_the_labels() throws IOException {
        try (DeskServer desk = desk(folder)) {
            Page page = page(DESK);
            page.navigate(desk.page("rounds/" + ID + "/labels"));
            assertThat(text(page.waitForDownload(() -> link(page, "Round sheet"))))
                    .contains("7K4-M9Q4", "P1-B3", "freezer in");
            assertThat(text(page.waitForDownload(() -> link(page, "Grid for filters"))))
                    .contains("true to scale");
            assertThat(text(page.waitForDownload(() -> link(page, "Card of the keys"))))
                    .contains("larva 2");
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void a_paper_sheet_is_typed_in_row_by_row_with_the_keyboard_alone(int width) {
        try (DeskServer desk = desk(folder)) {
            Page page = page(width);
            page.navigate(desk.page("rounds/" + ID + "/paper"));
            assertThat(page.locator("h1").innerText()).startsWith("4 jars of round 2026-05-11-a");
            isAccessible(page);
            page.getByLabel("Day of cutting").fill("2026-05-06");
            page.getByLabel("really cut, 7K4-M9Q1").focus();
            for (String typed : new String[] {"9", "s", "45", "1405", "14:30", "foam"}) {
                page.keyboard().type(typed);
                page.keyboard().press("Tab");
            }
            page.keyboard().type("10"); // the next row
            page.getByLabel("fluid, 7K4-M9Q4").selectOption("alcohol");
            picture(page, "paper-" + width);
            button(page, "Put on record");

            assertThat(page.locator("h1").innerText()).startsWith("1 jar of round");
            CollectedSample first = sample(desk, "7K4-M9Q1");
            assertThat(first.state()).isEqualTo(SampleState.FROZEN);
            assertThat(first.samplingUnits()).isEqualTo(9);
            assertThat(first.times().washed()).contains(Instant.parse("2026-05-06T12:05:00Z"));
            assertThat(first.times().freezerIn()).contains(Instant.parse("2026-05-06T12:30:00Z"));
            assertThat(first.times().cut()).isEmpty();
            assertThat(first.wash().fluid()).contains(Fluid.SOAP);
            assertThat(sample(desk, "7K4-M9Q2").state()).isEqualTo(SampleState.CUT);
            assertThat(sample(desk, "7K4-M9Q3").state()).isEqualTo(SampleState.PLANNED);
            assertThat(sample(desk, "7K4-M9Q4").state()).isEqualTo(SampleState.WASHED);
        }
    }

    @Test
    void a_sheet_with_one_wrong_row_is_not_taken_at_all_and_keeps_what_was_typed() {
        try (DeskServer desk = desk(folder)) {
            Page page = page(DESK);
            page.navigate(desk.page("rounds/" + ID + "/paper"));
            page.getByLabel("Day of cutting").fill("2026-05-06");
            page.getByLabel("really cut, 7K4-M9Q1").fill("10");
            page.getByLabel("washed, time, 7K4-M9Q2").fill("25:00");
            button(page, "Put on record");
            isRefused(page);
            assertThat(page.locator("#fault-2").innerText())
                    .contains("really cut: This is needed.")
                    .contains("washed, time: \"25:00\" is no time of day");
            assertThat(page.getByLabel("really cut, 7K4-M9Q1").inputValue()).isEqualTo("10");
            isAccessible(page);
            picture(page, "paper-refused");
            assertThat(sample(desk, "7K4-M9Q1").state()).isEqualTo(SampleState.PLANNED);
        }
    }

    private static CollectedSample sample(DeskServer desk, String code) {
        return new SampleStore(desk.database)
                .find(DeskServer.NURSERY, new SampleCode(code))
                .orElseThrow();
    }

    private static void button(Page page, String name) {
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name)).click();
    }

    private static void link(Page page, String name) {
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name)).click();
    }

    private static String text(Download download) throws IOException {
        try (PDDocument document = Loader.loadPDF(download.path().toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }
}
