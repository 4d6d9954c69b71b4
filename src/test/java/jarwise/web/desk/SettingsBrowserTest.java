package jarwise.web.desk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.decision.ActionThreshold;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SettingsBrowserTest extends BrowserTest {

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aLineIsSetWithItsReasonAndSource(int width) {
        try (DeskServer desk = new DeskServer(folder, true)) {
            Page page = page(width);
            page.navigate(desk.page("settings"));
            isAccessible(page);
            summary(page, "Set a line").click();
            page.locator("#line-subject").selectOption("FRANOC/larva");
            page.getByLabel("Per growing point").fill("0.1");
            page.locator("#line-reason").fill("Beneficials cope below that");
            page.locator("#line-source").fill("own records 2025");
            button(page, "Set this line").click();

            assertThat(page.locator("h1").innerText())
                    .isEqualTo("This site has set 1 line of its own.");
            List<ActionThreshold> lines =
                    new SettingsStore(desk.database).thresholds(DeskServer.NURSERY);
            assertThat(lines).hasSize(1);
            assertThat(lines.get(0).density()).isEqualTo(0.1);
            assertThat(lines.get(0).reason()).isEqualTo("Beneficials cope below that");
            isAccessible(page);
            picture(page, "settings-" + width);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aFirstRunNamesTheNurseryAndLeadsToAnEmptySite(int width) {
        try (DeskServer desk = new DeskServer(folder, false)) {
            Page page = page(width);
            page.navigate(desk.address(""));
            isAccessible(page);
            picture(page, "first-run-" + width);
            page.getByLabel("Name of the nursery").fill("Larch Row");
            page.getByLabel("Time zone").fill("Europe/Madrid");
            page.getByLabel("Time zone").press("Enter");

            page.waitForURL("**/larch-row/today");
            isAccessible(page);
            assertThat(new SiteStore(desk.database).nurseries())
                    .extracting(nursery -> nursery.name())
                    .containsExactly("Larch Row");
            page.navigate(desk.address("larch-row/samples"));
            isAccessible(page);
            page.navigate(desk.address("larch-row/methods"));
            isAccessible(page);
            picture(page, "methods-" + width);
        }
    }

    @Test
    void whoIsAtThisScreenSignsAndReadsInTheirLanguage() {
        try (DeskServer desk = new DeskServer(folder, true)) {
            Page page = page(DESK);
            page.navigate(desk.page("settings"));
            summary(page, "Add or change a person").click();
            page.locator("#person-code").fill("SC-2");
            page.locator("#person-role").fill("scout");
            button(page, "Save this person").click();
            page.getByLabel("Who is here").selectOption("SC-2");
            page.locator("#here-language").selectOption("es");
            button(page, "Use this").click();

            assertThat(page.locator("html").getAttribute("lang")).isEqualTo("es");
            assertThat(page.locator(".frame-site").innerText()).contains("SC-2");
            isAccessible(page);
        }
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    private static Locator summary(Page page, String name) {
        return page.locator("summary", new Page.LocatorOptions().setHasText(name));
    }
}
