package jarwise.web.walk;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import jarwise.Program;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.render.label.LabelGeometry;
import jarwise.render.label.PrintedLabels;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.tally.Deed;
import jarwise.tally.SampleEvent;
import jarwise.usecase.MakeDemo;
import jarwise.usecase.demo.DemoClock;
import jarwise.web.browser.BrowserTest;
import jarwise.web.exchange.CuttingProxy;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From the question to filters in the freezer, on the demo nursery: planned, printed, walked. */
class RoundDayBrowserTest extends BrowserTest {

    private static final String NURSERY = "quillback-lane";
    private static final LocalDate DAY = LocalDate.of(2026, 5, 12);
    private static final String BENCH = "H2-B4";

    @TempDir Path folder;

    @Override
    protected boolean isOwnDoing(String consoleError) {
        return consoleError.startsWith("Failed to load resource: net::ERR_");
    }

    @Test
    void whatWasPlannedAndPrintedIsWalkedOfflineAndArrivesAsItWasDone() throws IOException {
        MakeDemo.inFolder(folder, said -> {});
        try (Program program =
                        Program.open(folder.toString(), InstantSource.fixed(DemoClock.MOMENT));
                Database database = Database.open(folder.toString());
                CuttingProxy line = new CuttingProxy(program.serve(0))) {
            String site = "http://127.0.0.1:" + line.port() + "/" + NURSERY + "/";
            Page desk = page(DESK);
            RoundPlan plan = plans(desk, site, database);
            List<String> printed = prints(desk);

            List<String> codes = plan.jars().stream().map(jar -> jar.code().text()).toList();
            assertThat(plan.ofCrop()).hasSize(8);
            for (String code : codes) {
                assertThat(Collections.frequency(printed, code)).as(code).isEqualTo(3);
            }
            assertThat(printed).hasSize(3 * codes.size());

            Walker scout = goesOffline(site + "walk/" + plan.id(), line);
            walks(scout, plan, printed);
            assertThat(fromPhones(database)).isEmpty();
            line.plug();
            scout.page.context().setOffline(false);
            scout.foot("Everything is at the desk.");
            hasExactlyWhatWasDone(database, plan);
        }
    }

    private static RoundPlan plans(Page desk, String site, Database database) {
        desk.navigate(site + "rounds/new");
        desk.getByLabel("Cut on").fill(DAY.toString());
        desk.getByRole(
                        AriaRole.CHECKBOX,
                        new Page.GetByRoleOptions().setName("H2-B4 ‘Pellam Pink’, L-121"))
                .first()
                .check();
        desk.getByLabel("Number on a growing point").fill("0.2");
        desk.getByLabel("Jars at random places").fill("8");
        desk.getByText("At a density of 1 in 5").waitFor();
        picture(desk, "day-plan");
        desk.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save this round"))
                .first()
                .click();
        desk.waitForURL("**/rounds/2026-05-12-a");
        return new RoundPlanStore(database).find(NURSERY, "2026-05-12-a").orElseThrow();
    }

    /** {@return what is read from the QR codes of the sheets that the page gives} */
    private static List<String> prints(Page desk) throws IOException {
        desk.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("labels"))
                .first()
                .click();
        desk.getByLabel("Sheet of labels").selectOption("a4-24");
        Download sheets =
                desk.waitForDownload(
                        () ->
                                desk.getByRole(
                                                AriaRole.BUTTON,
                                                new Page.GetByRoleOptions().setName("Print labels"))
                                        .click());
        return PrintedLabels.codes(Files.readAllBytes(sheets.path()), LabelGeometry.named("a4-24"));
    }

    private Walker goesOffline(String sheet, CuttingProxy line) {
        Walker scout =
                Walker.with(page(PHONE), DAY.atTime(10, 0).atZone(DemoClock.ZONE).toInstant());
        scout.open(sheet);
        scout.press("SC-1");
        scout.foot("Everything is at the desk.");
        scout.page.evaluate("navigator.serviceWorker.ready.then(() => true)");
        scout.page.waitForFunction("navigator.serviceWorker.controller !== null");
        line.unplug();
        scout.page.context().setOffline(true);
        return scout;
    }

    /**
     * Cuts and washes the jars, whose codes are read off the printed labels, one reload between.
     */
    private static void walks(Walker scout, RoundPlan plan, List<String> printed) {
        boolean first = true;
        for (PlannedJar jar : plan.ofCrop()) {
            scout.cut(BENCH, printed.get(printed.indexOf(jar.code().text())), 10, first);
            first = false;
        }
        scout.foot("8 steps are only on this phone.");
        scout.page.reload();
        scout.press("Wash");
        scout.press("Soap");
        for (PlannedJar jar : plan.ofCrop()) {
            scout.wash(jar.code().text(), 45);
        }
        scout.foot("16 steps are only on this phone.");
        scout.page.reload();
        scout.foot("16 steps are only on this phone.");
    }

    private static List<SampleEvent> fromPhones(Database database) {
        return new EventStore(database)
                .after(0, 100_000).stream()
                        .filter(event -> event.id().device().startsWith("phone-"))
                        .toList();
    }

    private static void hasExactlyWhatWasDone(Database database, RoundPlan plan) {
        List<SampleEvent> events = fromPhones(database);
        assertThat(events.stream().map(event -> event.id().sequence()))
                .isEqualTo(LongStream.rangeClosed(1, 16).boxed().toList());
        assertThat(events.stream().map(event -> ((Deed.StepTaken) event.deed()).step()))
                .isEqualTo(
                        Stream.concat(
                                        Collections.nCopies(8, Step.CUT).stream(),
                                        Collections.nCopies(8, Step.WASHED).stream())
                                .toList());
        for (PlannedJar jar : plan.ofCrop()) {
            var sample = new EventStore(database).fold(NURSERY, jar.code()).orElseThrow().sample();
            assertThat(sample.state()).isEqualTo(SampleState.WASHED);
            assertThat(sample.samplingUnits()).isEqualTo(10);
        }
    }
}
