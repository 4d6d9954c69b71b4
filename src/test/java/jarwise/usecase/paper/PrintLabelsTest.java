package jarwise.usecase.paper;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.plan.RoundPlan;
import jarwise.plan.RoundPlans;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.TreatmentStore;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PrintLabelsTest {

    private static final Nursery LANE =
            new Nursery("lane", "Lane", ZoneId.of("America/Toronto"), "en");
    private static final RoundPlan ROUND = RoundPlans.small("2026-05-11-a", "A-");
    private static final Instant FRIDAY = Instant.parse("2026-05-08T20:00:00Z");
    private static final ZonedDateTime NOW = FRIDAY.atZone(LANE.zone());
    private static final Words ENGLISH = Words.of(Language.ENGLISH);

    @TempDir Path folder;
    private Database database;
    private PrintLabels print;

    @SuppressWarnings("NullAway.Init")
    PrintLabelsTest() {}

    @BeforeEach
    void open() {
        database = DatabaseUnderTest.SQLITE.fresh(folder);
        new SiteStore(database).save(LANE);
        print = new PrintLabels(database);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void a_chosen_sheet_is_remembered_once_and_the_one_before_is_kept() {
        LabelChoice first = new LabelChoice("letter-10", 0.5, 0);
        LabelChoice second = new LabelChoice("letter-80", 0, -1);
        print.choose(LANE, first, "SC-1", NOW);
        print.choose(LANE, first, "SC-1", NOW.plusMinutes(1));
        assertThat(print.chosen(LANE, NOW.toLocalDate())).isEqualTo(first);
        assertThat(print.chosen(LANE, NOW.toLocalDate().minusDays(1)))
                .isEqualTo(LabelChoice.usual(LANE));

        print.choose(LANE, second, "SC-1", NOW.plusMinutes(2));
        assertThat(print.chosen(LANE, NOW.toLocalDate())).isEqualTo(second);
        assertThat(new SettingsStore(database).settings("lane")).hasSize(2);
    }

    @Test
    void without_a_treatment_the_caution_is_the_general_one() {
        assertThat(print.cautions(LANE, ROUND, ENGLISH, FRIDAY))
                .hasSize(2)
                .first()
                .asString()
                .contains("nobody may enter");
    }

    @Test
    void an_interval_that_still_runs_on_the_day_of_the_round_names_its_benches_and_its_end() {
        spray("T1", OptionalDouble.of(12), "2026-05-11T01:00:00Z");
        assertThat(print.cautions(LANE, ROUND, ENGLISH, FRIDAY).get(0))
                .startsWith("Restricted entry: P1-B3 until Mon 11 May, 09:00.");
    }

    @Test
    void an_interval_nobody_knows_keeps_everybody_out() {
        spray("T1", OptionalDouble.empty(), "2026-05-01T01:00:00Z");
        assertThat(print.cautions(LANE, ROUND, ENGLISH, FRIDAY).get(0))
                .startsWith("Restricted entry: P1-B3, end not known.");
    }

    @Test
    void an_interval_that_is_over_by_then_is_not_named() {
        spray("T1", OptionalDouble.of(12), "2026-05-08T19:00:00Z");
        assertThat(print.cautions(LANE, ROUND, ENGLISH, FRIDAY).get(0)).doesNotContain("P1-B3");
    }

    private void spray(String id, OptionalDouble hours, String at) {
        Instant end = Instant.parse(at);
        new TreatmentStore(database)
                .add(
                        "lane",
                        new Application(
                                id,
                                "P1",
                                Set.of("P1-B3"),
                                end.minusSeconds(3600),
                                Optional.of(end),
                                List.of(product(hours)),
                                "",
                                "AP-1",
                                ""),
                        end);
    }

    private static ProductUse product(OptionalDouble reentryHours) {
        return new ProductUse(
                "A",
                Optional.empty(),
                List.of("6"),
                reentryHours,
                OptionalInt.empty(),
                OptionalInt.empty());
    }
}
