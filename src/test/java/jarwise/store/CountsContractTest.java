package jarwise.store;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.StageKey;
import jarwise.wire.pest.ShippedPests;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which counts a mean may be made of, on both databases. */
class CountsContractTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final Instant AT = Instant.parse("2026-05-04T12:00:00Z");
    private static final List<StageKey> LARVAE =
            List.of(new StageKey("FRANOC", "larva1"), new StageKey("FRANOC", "larva2"));
    private static final CountQuery RANDOM =
            CountQuery.random("lane", SamplingMethod.WASH, LARVAE, DAY, DAY.plusDays(6));

    @Nested
    class OnSqlite extends Contract {
        OnSqlite() {
            super(DatabaseUnderTest.SQLITE);
        }
    }

    @Nested
    @Tag("slow")
    class OnPostgresql extends Contract {
        OnPostgresql() {
            super(DatabaseUnderTest.POSTGRESQL);
        }
    }

    abstract static class Contract {

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private Database database;
        private SampleStore samples;
        private long sequence;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            samples = new SampleStore(database);
            for (String slug : List.of("lane", "other")) {
                new SiteStore(database).save(new Nursery(slug, slug, ZoneOffset.UTC, "en"));
            }
            PestStore pests = new PestStore(database);
            ShippedPests.read().forEach(pests::save);
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void addsUpTheStagesAskedForAndNoOthers() {
            jar("J-1", Map.of(), 3);
            jar("J-2", Map.of(), 0);

            assertThat(counted(RANDOM)).containsExactly("J-1 4", "J-2 1");
        }

        @Test
        void keepsTargetedSamplesOutOfAMeanUnlessBothAreAskedFor() {
            jar("J-1", Map.of(), 3);
            jar("J-2", Map.of(Facts.PURPOSE, "targeted"), 40);

            assertThat(counted(RANDOM)).containsExactly("J-1 4");
            assertThat(counted(narrowed(Optional.empty(), "", "", "")))
                    .containsExactly("J-1 4", "J-2 41");
            assertThat(counted(narrowed(Optional.of(Purpose.TARGETED), "", "", "")))
                    .containsExactly("J-2 41");
        }

        @Test
        void keepsChecksOfTheWorkOutWhateverIsAskedFor() {
            jar("J-1", Map.of(), 3);
            jar("J-2", Map.of(Facts.ROLE, "blank"), 0);
            jar("J-3", Map.of(Facts.ROLE, "spike", Facts.KNOWN, "24"), 18);
            jar("J-4", Map.of(Facts.ROLE, "seeded", Facts.KNOWN, "10"), 9);
            jar("J-5", Map.of(Facts.ROLE, "recount", Facts.RECOUNT_OF, "J-1"), 5);

            assertThat(counted(RANDOM)).containsExactly("J-1 4");
            assertThat(counted(narrowed(Optional.empty(), "", "", ""))).containsExactly("J-1 4");
        }

        @Test
        void leavesASampleOutInWhichAStageWasNotRead() {
            jar("J-1", Map.of(), 3);
            events(step("J-2", Step.CUT, facts(Map.of())), count("J-2", "larva1", 7));

            assertThat(counted(RANDOM)).as("not read is no zero").containsExactly("J-1 4");
            CountQuery oneStage =
                    CountQuery.random("lane", SamplingMethod.WASH, LARVAE.subList(0, 1), DAY, DAY);
            assertThat(counted(oneStage)).containsExactly("J-1 3", "J-2 7");
        }

        @Test
        void countsAStageLookedForAndNotFoundAsZero() {
            events(
                    step("J-1", Step.CUT, facts(Map.of())),
                    event("J-1", new Deed.FilterDone(Set.of("FRANOC"))));

            assertThat(counted(RANDOM)).containsExactly("J-1 0");
        }

        @Test
        void leavesASampleOutThatWasLost() {
            jar("J-1", Map.of(), 3);
            events(step("J-1", Step.SPILLED, Map.of()));

            assertThat(counted(RANDOM)).isEmpty();
        }

        @Test
        void narrowsToHouseBenchAndVariety() {
            jar("J-1", place("P1", "P1-B3", "Rubia"), 1);
            jar("J-2", place("P1", "P1-B4", "Rubia"), 2);
            jar("J-3", place("H2", "H2-B4", "Tarn"), 3);
            jar("J-4", Map.of(), 4);
            Optional<Purpose> random = Optional.of(Purpose.RANDOM);

            assertThat(counted(narrowed(random, "P1", "", ""))).containsExactly("J-1 2", "J-2 3");
            assertThat(counted(narrowed(random, "", "H2-B4", ""))).containsExactly("J-3 4");
            assertThat(counted(narrowed(random, "", "", "Rubia")))
                    .containsExactly("J-1 2", "J-2 3");
            assertThat(counted(narrowed(random, "P1", "P1-B4", "Rubia"))).containsExactly("J-2 3");
            assertThat(counted(narrowed(random, "P1", "H2-B4", ""))).isEmpty();
        }

        @Test
        void takesFirstAndLastDayInAndMixesNoMethodsOrNurseries() {
            jar("J-1", Map.of(Facts.COLLECTED_ON, DAY.minusDays(1).toString()), 1);
            jar("J-3", Map.of(Facts.COLLECTED_ON, DAY.plusDays(6).toString()), 3);
            jar("J-2", Map.of(), 2);
            jar("J-4", Map.of(Facts.COLLECTED_ON, DAY.plusDays(7).toString()), 4);
            jar("J-5", Map.of(Facts.METHOD, "tap"), 5);

            assertThat(counted(RANDOM)).as("by day, then code").containsExactly("J-2 3", "J-3 4");
            CountQuery elsewhere =
                    CountQuery.random("other", SamplingMethod.WASH, LARVAE, DAY, DAY);
            assertThat(counted(elsewhere)).isEmpty();
        }

        @Test
        void listsSamplesNewestFirstThoseWithoutADayLast() {
            jar("J-1", Map.of(), 1);
            jar("J-3", Map.of(Facts.COLLECTED_ON, DAY.plusDays(1).toString()), 1);
            jar("J-2", Map.of(Facts.COLLECTED_ON, DAY.plusDays(1).toString()), 1);
            events(step("X%_!", Step.REGISTERED, Map.of()));

            assertThat(listed(SampleFilter.ALL, 0, 9)).containsExactly("J-2", "J-3", "J-1", "X%_!");
            assertThat(listed(SampleFilter.ALL, 1, 2)).containsExactly("J-3", "J-1");
            assertThat(samples.count("lane", SampleFilter.ALL)).isEqualTo(4);
            assertThat(samples.days("lane")).containsExactly(DAY.plusDays(1), DAY);
            assertThat(samples.lastDay("lane")).contains(DAY.plusDays(1));
            assertThat(samples.lastDay("other")).isEmpty();
        }

        @Test
        void findsAPartOfACodeInAnyCaseAndTakesItAsItIsWritten() {
            jar("J-1", Map.of(), 1);
            events(step("X%_!", Step.REGISTERED, Map.of()));

            assertThat(listed(part("x%_!"), 0, 9)).containsExactly("X%_!");
            assertThat(listed(part("%"), 0, 9)).containsExactly("X%_!");
            assertThat(listed(part("j"), 0, 9)).containsExactly("J-1");
            assertThat(listed(part("J_1"), 0, 9)).isEmpty();
            SampleFilter planned =
                    new SampleFilter("", Optional.of(SampleState.PLANNED), Optional.empty());
            assertThat(listed(planned, 0, 9)).containsExactly("X%_!");
            SampleFilter ofDay = new SampleFilter("", Optional.empty(), Optional.of(DAY));
            assertThat(listed(ofDay, 0, 9)).containsExactly("J-1");
        }

        private List<String> counted(CountQuery query) {
            return samples.counts(query).stream()
                    .map(counted -> counted.sample().code() + " " + counted.individuals())
                    .toList();
        }

        private List<String> listed(SampleFilter filter, int skip, int most) {
            return samples.list("lane", filter, skip, most).stream()
                    .map(sample -> sample.code().text())
                    .toList();
        }

        /** A jar read to its end: the larvae given, one more of the second instar, nine adults. */
        private void jar(String code, Map<String, String> others, long larvae) {
            events(
                    step(code, Step.CUT, facts(others)),
                    count(code, "larva1", larvae),
                    count(code, "larva2", 1),
                    count(code, "adult", 9));
        }

        private void events(SampleEvent... events) {
            new EventStore(database).append("lane", List.of(events));
        }

        private SampleEvent step(String code, Step step, Map<String, String> facts) {
            return event(code, new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty()));
        }

        private SampleEvent count(String code, String stage, long individuals) {
            return event(code, new Deed.Counted("FRANOC", stage, individuals, Optional.empty()));
        }

        private SampleEvent event(String code, Deed deed) {
            return new SampleEvent(
                    new EventId("desk", ++sequence),
                    new SampleCode(code),
                    AT,
                    "SC-1",
                    Optional.empty(),
                    deed);
        }
    }

    private static SampleFilter part(String part) {
        return new SampleFilter(part, Optional.empty(), Optional.empty());
    }

    private static Map<String, String> place(String house, String bench, String variety) {
        return Map.of(Facts.HOUSE, house, Facts.BENCH, bench, Facts.VARIETY, variety);
    }

    private static Map<String, String> facts(Map<String, String> others) {
        Map<String, String> facts =
                new HashMap<>(
                        Map.of(Facts.COLLECTED_ON, DAY.toString(), Facts.SAMPLING_UNITS, "10"));
        facts.putAll(others);
        return facts;
    }

    private static CountQuery narrowed(
            Optional<Purpose> purpose, String house, String bench, String variety) {
        return new CountQuery(
                "lane",
                SamplingMethod.WASH,
                LARVAE,
                DAY,
                DAY.plusDays(6),
                purpose,
                given(house),
                given(bench),
                given(variety));
    }

    private static Optional<String> given(String text) {
        return Optional.of(text).filter(value -> !value.isEmpty());
    }
}
