package jarwise.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.LoadState;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ImportBrowserTest extends BrowserTest {

    private static final Path SPRAYS =
            Path.of("src/test/resources/reference/data/insectsprays.csv");

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
    void aSheetIsChosenCheckedAndPutOnRecord(int width) {
        Page page = page(width);
        page.navigate(desk.page("import"));
        isAccessible(page);
        picture(page, "import-" + width);

        page.getByLabel("Choose a sheet, or drop it here").setInputFiles(SPRAYS);
        button(page, "Read the sheet").click();
        assertThat(page.locator("h1").innerText()).startsWith("72 new counts");
        isAccessible(page);
        picture(page, "import-preview-" + width);
        button(page, "Put on record").click();

        assertThat(page.locator("h1").innerText()).isEqualTo("insectsprays.csv is on record.");
        isAccessible(page);
        picture(page, "import-done-" + width);
        assertThat(new SampleStore(desk.database).count(DeskServer.NURSERY)).isEqualTo(72);
    }

    @Test
    void aSheetIsDroppedFromAFolder() {
        Page page = page(DESK);
        page.navigate(desk.page("import"));

        // Behaviours load after the page itself.
        page.waitForLoadState(LoadState.NETWORKIDLE);
        page.evaluate(
                """
                () => {
                  const form = document.querySelector("form[data-behaviour]")
                  const data = new DataTransfer()
                  data.items.add(new File(["count\\n3\\n0\\n"], "jars.csv", { type: "text/csv" }))
                  form.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true }))
                }
                """);

        button(page, "Put on record").click();
        assertThat(page.locator("h1").innerText()).isEqualTo("jars.csv is on record.");
        assertThat(new SampleStore(desk.database).count(DeskServer.NURSERY)).isEqualTo(2);
    }

    @Test
    void faultsAreNamedAndNothingIsKept() {
        Page page = page(DESK);
        page.navigate(desk.page("import"));
        page.getByLabel("Choose a sheet, or drop it here")
                .setInputFiles(
                        new com.microsoft.playwright.options.FilePayload(
                                "bad.csv",
                                "text/csv",
                                "sample,pest,stage,count\nA,thrips,adult,2\nB,FRANOC,adult,1.5\n"
                                        .getBytes(java.nio.charset.StandardCharsets.UTF_8)));
        button(page, "Read the sheet").click();

        assertThat(page.locator("h1").innerText()).startsWith("The sheet has");
        isAccessible(page);
        picture(page, "import-faults");
        assertThat(new EventStore(desk.database).count()).isZero();
    }

    private static com.microsoft.playwright.Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }
}
