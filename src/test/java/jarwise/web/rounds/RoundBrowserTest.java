package jarwise.web.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.Program;
import jarwise.plan.RoundPlan;
import jarwise.store.Database;
import jarwise.store.work.RoundPlanStore;
import jarwise.usecase.MakeDemo;
import jarwise.usecase.demo.DemoClock;
import jarwise.usecase.demo.DemoSite;
import jarwise.web.browser.BrowserTest;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A scout plans a round on the demo nursery without touching the mouse. */
class RoundBrowserTest extends BrowserTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 12);

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aDetectionRoundIsPlannedByKeyboard(int width) {
        MakeDemo.inFolder(folder, said -> {});
        try (Program program =
                Program.open(folder.toString(), InstantSource.fixed(DemoClock.MOMENT))) {
            String site = "http://127.0.0.1:" + program.serve(0) + "/quillback-lane/";
            Page page = page(width);
            page.navigate(site + "rounds");
            isAccessible(page);
            assertThat(page.locator("h1").innerText()).isEqualTo("1 round waits to be walked.");
            press(page.getByRole(AriaRole.LINK, named("Plan a round")), "Enter");
            page.waitForURL("**/rounds/new");
            isAccessible(page);

            asksAndReadsTheAnswer(page);
            picture(page, "rounds-plan-" + width);
            press(page.getByRole(AriaRole.BUTTON, named("Save this round")), "Enter");
            page.waitForURL("**/rounds/2026-05-12-a");
            isAccessible(page);
            picture(page, "round-" + width);
        }
        try (Database database = Database.open(folder.toString())) {
            List<RoundPlan> saved =
                    new RoundPlanStore(database).plans(DemoSite.NURSERY.slug(), DAY, DAY);
            assertThat(saved).hasSize(1);
            assertThat(saved.get(0).ofCrop())
                    .isNotEmpty()
                    .allSatisfy(jar -> assertThat(jar.bench()).isEqualTo("H2-B4"));
            assertThat(saved.get(0).numbers()).containsEntry("density", "0.2");
        }
    }

    private static void asksAndReadsTheAnswer(Page page) {
        page.getByLabel("Cut on").fill(DAY.toString());
        press(page.getByRole(AriaRole.CHECKBOX, named("H2-B4 ‘Pellam Pink’, L-121")), "Space");
        page.getByRole(AriaRole.TEXTBOX, named("Number on a growing point")).focus();
        page.keyboard().press("ControlOrMeta+A");
        page.keyboard().type("0.2");
        page.getByText("At a density of 1 in 5").waitFor();
        assertThat(page.locator("#plan-says").innerText())
                .contains("If none is found you can say: fewer than");
        assertThat(page.url()).as("the plan can be passed on").contains("density=0.2");
        isAccessible(page);
    }

    /** By the key, on what has the focus, as a scout without a mouse does. */
    private static void press(Locator element, String key) {
        element.first().focus();
        element.first().press(key);
    }

    private static Page.GetByRoleOptions named(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }
}
