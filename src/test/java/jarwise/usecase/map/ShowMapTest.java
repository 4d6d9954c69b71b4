package jarwise.usecase.map;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.Finding;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.plan.Spot;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.site.PlantMove;
import jarwise.store.work.RoundPlanStore;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.findings.Story;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.map.CropMap.Status;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShowMapTest {

    private static final LocalDate SECOND = TestSite.START.plusWeeks(1);
    private static final LocalDate PLANNED = LocalDate.of(2026, 3, 23);

    @TempDir Path folder;
    private TestSite site;

    @BeforeEach
    void tell() {
        site = Story.toldTo(new TestSite(folder));
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void everyRoundOnTheMapHasTheFindingsOfThePageFindings() {
        Findings all = findings();

        for (LocalDate day : all.rounds().days()) {
            CropMap map = map(Optional.of(day), Story.NOW);
            List<Finding> expected =
                    all.series().stream()
                            .flatMap(series -> series.rounds().stream())
                            .filter(finding -> finding.day().equals(day))
                            .toList();
            assertThat(map.benches().stream().flatMap(bench -> bench.findings().stream()))
                    .as("benches on %s", day)
                    .containsExactlyInAnyOrderElementsOf(expected);
            assertThat(map.findings().orElseThrow().series())
                    .as("table of %s", day)
                    .extracting(Findings.Series::last)
                    .containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    @Test
    void eachBenchHasOneStatusAndWhatWasNotSampledIsNotBlank() {
        CropMap newest = map(Optional.empty(), Story.NOW);

        assertThat(newest.day()).isEqualTo(Story.ROUND);
        assertThat(status(newest))
                .isEqualTo(
                        Map.of(
                                "P1-B5", Status.ABOVE,
                                "P1-B3", Status.BELOW,
                                "P1-B4", Status.NOT_READ,
                                "P1-D1", Status.NOT_SAMPLED));
        assertThat(newest.findings().orElseThrow().bare())
                .extracting(stand -> stand.bench().orElseThrow())
                .containsExactly("P1-D1");
        assertThat(status(map(Optional.of(SECOND), Story.NOW)))
                .containsEntry("P1-B4", Status.EMPTY);
    }

    @Test
    void targetedJarsStandApartAndChangeNoBench() {
        CropMap newest = map(Optional.empty(), Story.NOW);

        assertThat(newest.findings().orElseThrow().targeted()).hasSize(1);
        assertThat(newest.bench("P1-B5").orElseThrow().findings().get(0).evidence().samples())
                .isEqualTo(8);
        assertThat(map(Optional.of(SECOND), Story.NOW).findings().orElseThrow().targeted())
                .isEmpty();
    }

    @Test
    void aBenchInsideARunningReentryIntervalIsClosedUntilItEnds() {
        assertThat(map(Optional.empty(), Story.NOW).extras().noEntry())
                .singleElement()
                .satisfies(
                        closed -> {
                            assertThat(closed.benches()).containsExactly("P1-B4");
                            assertThat(closed.ends())
                                    .hasValue(Instant.parse("2026-03-19T18:30:00Z"));
                        });
        assertThat(map(Optional.empty(), Story.NOW.plus(1, ChronoUnit.DAYS)).extras().noEntry())
                .isEmpty();
    }

    @Test
    void aPlannedRoundIsAStopWithItsRandomPlacesAndNoFinding() {
        new RoundPlanStore(site.database).put(TestSite.SLUG, planned());

        CropMap map = map(Optional.of(PLANNED), Story.NOW);

        assertThat(map.stops()).last().isEqualTo(new CropMap.Stop(PLANNED, 0, false));
        assertThat(map.walked()).isFalse();
        assertThat(map.extras().places())
                .isEqualTo(Map.of("P1-B3", List.of(new Spot(.25, .5), new Spot(.75, .1))));
        assertThat(map.benches()).allMatch(bench -> bench.findings().isEmpty());
        assertThat(map(Optional.empty(), Story.NOW).day()).isEqualTo(Story.ROUND);
    }

    @Test
    void movesOfTheWeeksBeforeTheRoundAreShown() {
        PlantMove move = new PlantMove(SECOND, "P1-B3", "P1-B5", "L-1", 10);
        site.rounds.add(TestSite.SLUG, move);

        assertThat(map(Optional.of(TestSite.START), Story.NOW).extras().moves()).isEmpty();
        assertThat(map(Optional.of(Story.ROUND), Story.NOW).extras().moves()).containsExactly(move);
    }

    @Test
    void theMapAsksForNoMoreSamplesThanFindings() {
        map(Optional.empty(), Story.NOW);
        findings();
        int findings = site.questionsAskedBy(this::findings);
        int map = site.questionsAskedBy(() -> map(Optional.empty(), Story.NOW));

        // Houses, benches, drawings, lots, occupancies, moves, plans and the ledger: a dozen at
        // the most, however many samples there are.
        assertThat(map - findings).isLessThanOrEqualTo(14);
    }

    private static RoundPlan planned() {
        return new RoundPlan(
                "2026-03-23-a",
                PLANNED,
                SamplingMethod.WASH,
                RoundQuestion.ESTIMATE,
                1,
                Map.of(),
                List.of(jar(1, .25, .5), jar(2, .75, .1)),
                "SC-1",
                Story.NOW);
    }

    private static PlannedJar jar(int walk, double along, double across) {
        return new PlannedJar(
                new SampleCode("NEXT-" + walk),
                walk,
                "P1",
                "P1-B3",
                Optional.empty(),
                Optional.empty(),
                Purpose.RANDOM,
                SampleRole.CROP,
                Optional.of(new Spot(along, across)),
                10);
    }

    private static Map<String, Status> status(CropMap map) {
        return map.benches().stream()
                .collect(
                        java.util.stream.Collectors.toMap(
                                CropMap.BenchState::code, CropMap.BenchState::status));
    }

    private Findings findings() {
        ShowMap.Asked asked = asked();
        return site.showFindings().run(TestSite.SLUG, ZoneOffset.UTC, asked.rules(), asked.scope());
    }

    private ShowMap.Asked asked() {
        SiteRules rules = site.counts.rules(TestSite.SLUG);
        return new ShowMap.Asked(
                rules,
                new Scope(
                        new Finding.Subject("FRANOC", "larva"),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        TestSite.START,
                        Story.ROUND));
    }

    private CropMap map(Optional<LocalDate> round, Instant now) {
        return new ShowMap(site.database, site.showFindings())
                .run(site.nursery, Optional.of(asked()), round, now.atZone(ZoneOffset.UTC));
    }
}
