package jarwise.web.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import jarwise.plan.RoundQuestion;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A seeded filter: put on record at the desk, read like any other, retired. */
class SeededFilterBrowserTest extends BrowserTest {

    @TempDir Path folder;
    private MicroscopeSite site;

    @BeforeEach
    void open() {
        site = new MicroscopeSite(folder, RoundQuestion.ESTIMATE);
    }

    @AfterEach
    void close() {
        leavePages();
        site.close();
    }

    private Page quality(int width) {
        Page page = page(width);
        page.navigate("http://127.0.0.1:%d/%s/quality".formatted(site.port(), MicroscopeSite.SLUG));
        return page;
    }

    private static String make(Page page) {
        page.getByText("Put a seeded filter on record").click();
        page.getByLabel("Name").fill("set A, number 3");
        page.locator("summary", new Page.LocatorOptions().setHasText("western flower thrips"))
                .click();
        page.getByLabel("second-stage larva").first().fill("a3 c4, C4");
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Put it on record").setExact(true))
                .click();
        PlaywrightAssertions.assertThat(page.locator("#seeded-title"))
                .hasText("1 seeded filter is in use");
        return page.locator("#seeded th.no-break").innerText();
    }

    @Test
    void whatWasOverlookedOnASeededFilterIsToldWhenItIsDone() {
        Page page = quality(DESK);
        String code = make(page);
        page.getByText("Show, if you will not read it").click();
        PlaywrightAssertions.assertThat(page.locator("#seeded li"))
                .hasText("3 × second-stage larva, western flower thrips: A3, C4 (2)");

        Counter counter = Counter.on(page).open(site.address(site.port())).isReady();
        counter.reads(code).isOn("A3");
        assertThat(page.locator("h1").innerText()).doesNotContain("eeded");
        counter.keys("5" + "0".repeat(40)).hold("Enter", 900);
        counter.hears("This was a seeded filter. 1 of 3 found.");
        isAccessible(page);
        picture(page, "seeded-done");
        PlaywrightAssertions.assertThat(page.locator("main")).containsText("larva 2 in C4");
        counter.foot("The desk has them all.");

        page.navigate("http://127.0.0.1:%d/%s/quality".formatted(site.port(), MicroscopeSite.SLUG));
        assertThat(page.locator("#readers").innerText()).contains("1 of 3");
        page.onceDialog(dialog -> dialog.accept());
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Retire " + code))
                .click();
        PlaywrightAssertions.assertThat(page.locator("#seeded-title"))
                .hasText("No seeded filter is in use");
        PlaywrightAssertions.assertThat(page.locator("#seeded")).containsText("retired");
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aCellThatIsNotThereIsToldAndNothingIsKept(int width) {
        Page page = quality(width);
        page.getByText("Put a seeded filter on record").click();
        page.locator("summary", new Page.LocatorOptions().setHasText("western flower thrips"))
                .click();
        page.getByLabel("second-stage larva").first().fill("A3 3A");
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName("Put it on record").setExact(true))
                .click();
        assertThat(page.getByLabel("second-stage larva").first().inputValue()).isEqualTo("A3 3A");
        assertThat(page.locator("#seeded").innerText())
                .contains("The filter has no cell 3A; cells go from A3 to G6.")
                .contains("This is needed.")
                .contains("No seeded filter is in use");
        isRefused(page);
        isAccessible(page);
        picture(page, "seeded-refused-" + width);
    }
}
