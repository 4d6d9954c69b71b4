package jarwise.web.findings;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.WaitForSelectorState;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingsBrowserTest extends BrowserTest {

    @TempDir private Path folder;
    private StoryServer server;

    @BeforeEach
    void start() {
        server = new StoryServer(folder, true);
    }

    @AfterEach
    void stop() {
        leavePages();
        server.close();
    }

    @ParameterizedTest
    @CsvSource({
        "today, 360",
        "today, 1440",
        "findings, 360",
        "findings, 1440",
        "report, 360",
        "report, 1440"
    })
    void readsWellForEverybody(String name, int width) {
        Page page = page(width);
        page.navigate(server.page(name));

        assertThat(page.getByRole(AriaRole.HEADING, heading(1))).hasCount(1);
        isAccessible(page);
        picture(page, name + "-" + width);
    }

    @Test
    void leadsFromTodayToTheJarsThatDryOut() {
        Page page = page(DESK);
        page.navigate(server.page("today"));

        assertThat(page.getByRole(AriaRole.HEADING, heading(1))).containsText("can’t wait");
        page.getByRole(AriaRole.ROW, named("Read 3 filters"))
                .getByRole(AriaRole.LINK, linkIn("To the microscope"))
                .click();
        assertThat(page).hasURL(server.page("microscope"));
    }

    @Test
    void choosesABenchWithTheKeyboardAlone() {
        Page page = page(DESK);
        page.navigate(server.page("findings"));

        page.getByLabel("bench", exactly()).focus();
        page.getByLabel("bench", exactly()).selectOption("P1-B3");
        page.keyboard().press("Tab");
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Show").setExact(true))
                .focus();
        page.keyboard().press("Enter");

        assertThat(page.getByRole(AriaRole.HEADING, heading(1)))
                .hasText("Larvae are below the line on P1-B3.");
    }

    @Test
    void opensTheTableBehindThePicture() {
        Page page = page(PHONE);
        page.navigate(server.page("findings?bench=P1-B5"));

        page.getByText("Table behind the picture").first().click();

        // 8 jars with 3 second instars each and 0, 1 or 2 first instars in turn: 24 + 7
        assertThat(page.getByRole(AriaRole.CELL, cell("31")).first()).isVisible();
        isAccessible(page);
    }

    @Test
    void showsTheValuesOfAMarkAndTakesThemAway() {
        Page page = page(DESK);
        page.navigate(server.page("findings?bench=P1-B5"));

        // a mark shows its values once the page's script has come
        page.locator(".tip")
                .first()
                .waitFor(new Locator.WaitForOptions().setState(WaitForSelectorState.ATTACHED));
        page.locator("figure svg g circle").first().hover();
        assertThat(page.locator(".tip").first()).containsText("larvae in 8 jars");
        page.keyboard().press("Escape");
        assertThat(page.locator(".tip").first()).isHidden();
    }

    @Test
    void startsWithAnEmptyNurseryOnThePhone() {
        try (StoryServer empty = new StoryServer(folder.resolve("empty"), false)) {
            for (String name : new String[] {"today", "findings", "report"}) {
                Page page = page(PHONE);
                page.navigate(empty.page(name));
                assertThat(page.getByRole(AriaRole.LINK, link("Drop a sheet"))).isVisible();
                isAccessible(page);
            }
        }
        assertThat(folder).exists();
    }

    private static Page.GetByRoleOptions heading(int level) {
        return new Page.GetByRoleOptions().setLevel(level);
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static Page.GetByRoleOptions cell(String name) {
        return new Page.GetByRoleOptions().setName(name).setExact(true);
    }

    private static Page.GetByLabelOptions exactly() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    private static com.microsoft.playwright.Locator.GetByRoleOptions linkIn(String name) {
        return new com.microsoft.playwright.Locator.GetByRoleOptions().setName(name);
    }

    private static Page.GetByRoleOptions link(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }
}
