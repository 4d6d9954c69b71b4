package jarwise.web.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.site.Occupancy;
import jarwise.site.floor.Rectangle;
import jarwise.store.SiteStore;
import jarwise.store.work.FloorStore;
import jarwise.web.browser.BrowserTest;
import jarwise.web.desk.DeskServer;
import jarwise.web.findings.StoryServer;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MapBrowserTest extends BrowserTest {

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aRoundIsChosenByItsStopAndSaysItselfInWords(int width) {
        try (StoryServer server = new StoryServer(folder, true)) {
            Page page = page(width);
            page.navigate(server.page("map"));
            isAccessible(page);
            picture(page, "map-" + width);
            Locator stops =
                    page.getByRole(
                            AriaRole.NAVIGATION, new Page.GetByRoleOptions().setName("Rounds"));
            Locator stop =
                    stops.getByRole(AriaRole.LINK, new Locator.GetByRoleOptions().setName("9 Mar"));
            assertThat(stop.boundingBox().height).isGreaterThanOrEqualTo(44);
            assertThat(stop.boundingBox().width).isGreaterThanOrEqualTo(44);
            stop.focus();
            page.keyboard().press("Enter");

            page.waitForURL("**round=2026-03-09**");
            assertThat(page.locator("h1").innerText()).startsWith("1 bench is above the line");
            assertThat(stops.locator("[aria-current]").innerText()).contains("9 Mar");
            isAccessible(page);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {PHONE, DESK})
    void aHouseIsDrawnInAFewWordsAndABenchMovedByKeys(int width) {
        try (DeskServer desk = new DeskServer(folder, true)) {
            Page page = page(width);
            page.navigate(desk.page("map/draw"));
            isAccessible(page);
            page.locator("#house-code").fill("P1");
            page.locator("#house-length").fill("40");
            page.locator("#house-width").fill("15");
            page.getByLabel("Bays and benches").fill("3 benches × 2 bays");
            button(page, "Draw the house").click();

            page.waitForURL("**/map/draw?house=P1**");
            assertThat(page.locator("h1").innerText()).isEqualTo("1 house with 6 benches.");
            Rectangle drawn = place(desk, "P1-A2");
            Locator bench =
                    page.getByRole(
                            AriaRole.BUTTON,
                            new Page.GetByRoleOptions().setName("P1-A2").setExact(true));
            bench.focus();
            page.keyboard().press("ArrowDown");
            page.keyboard().press("ArrowRight");
            assertThat(page.locator("[data-said]").innerText()).startsWith("P1-A2: ");
            isAccessible(page);
            picture(page, "map-draw-" + width);
            button(page, "Save the places").click();

            page.waitForURL("**#adjust");
            assertThat(place(desk, "P1-A2").y()).isCloseTo(drawn.y() + 0.5, within(0.01));
            assertThat(place(desk, "P1-A2").x()).isCloseTo(drawn.x() + 0.5, within(0.01));
        }
    }

    @Test
    void aLotIsBroughtInAndMovedInPart() {
        try (DeskServer desk = new DeskServer(folder, true)) {
            Page page = page(DESK);
            page.navigate(desk.page("map/draw"));
            page.locator("#house-code").fill("P1");
            page.locator("#house-length").fill("40");
            page.locator("#house-width").fill("15");
            page.getByLabel("Bays and benches").fill("2 benches");
            button(page, "Draw the house").click();
            page.navigate(desk.page("map/lots"));
            page.locator("#lot-lot").fill("L-117");
            page.locator("#lot-bench").fill("P1-A1");
            page.locator("#lot-from").fill("2026-02-23");
            page.locator("#lot-variety").fill("Rubia Tarn");
            page.locator("#lot-plants").fill("420");
            button(page, "Put it there").click();
            page.locator("#move-to").fill("P1-A2");
            page.locator("#move-day").fill("2026-04-14");
            page.locator("#move-plants").fill("180");
            button(page, "Move them").click();

            page.waitForURL("**/map/lots#move");
            assertThat(page.getByText("180 plants of L-117 went from P1-A1 to P1-A2").count())
                    .isEqualTo(1);
            assertThat(new SiteStore(desk.database).occupancies(DeskServer.NURSERY))
                    .extracting(Occupancy::bench, stand -> stand.plants().orElse(0))
                    .containsExactly(
                            org.assertj.core.groups.Tuple.tuple("P1-A1", 420.0),
                            org.assertj.core.groups.Tuple.tuple("P1-A1", 240.0),
                            org.assertj.core.groups.Tuple.tuple("P1-A2", 180.0));
            picture(page, "map-lots");
        }
    }

    private static Rectangle place(DeskServer desk, String bench) {
        return Objects.requireNonNull(
                        new FloorStore(desk.database)
                                .drawn(DeskServer.NURSERY)
                                .benches()
                                .get(bench))
                .place();
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }
}
