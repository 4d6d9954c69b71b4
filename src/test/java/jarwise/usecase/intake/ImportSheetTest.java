package jarwise.usecase.intake;

import static jarwise.usecase.intake.Intake.NURSERY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleState;
import jarwise.tally.StageKey;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.SheetRefused;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ImportSheetTest {

    private static final StageKey LARVA = new StageKey("FRANOC", "larva1");
    private static final StageKey ADULT = new StageKey("FRANOC", "adult");
    private static final String WEEK_1 =
            """
            sample,date,bench,units,cells_read,cells_total,pest,stage,count,reader
            A1,2026-05-04,P1-B3,10,40,40,FRANOC,larva1,4,SC-1
            A1,2026-05-04,P1-B3,10,40,40,FRANOC,adult,0,SC-1
            A2,2026-05-04,P1-B4,9,40,40,FRANOC,larva1,,SC-1
            A2,2026-05-04,P1-B4,9,40,40,FRANOC,adult,2,SC-1
            """;

    @TempDir Path folder;
    private Intake intake;

    @BeforeEach
    void openData() {
        intake = new Intake(folder);
    }

    @AfterEach
    void closeData() {
        intake.close();
    }

    @Test
    void keepsZeroApartFromBlank() {
        ImportSheet.Outcome outcome = intake.take(intake.sheet("week.csv", WEEK_1));

        assertThat(outcome.plan().counted().added()).isEqualTo(3);
        assertThat(intake.counts("A1")).isEqualTo(Map.of(LARVA, 4L, ADULT, 0L));
        assertThat(intake.counts("A2")).isEqualTo(Map.of(ADULT, 2L));
        CollectedSample sample = sample("A2");
        assertThat(sample.samplingUnits()).isEqualTo(9);
        assertThat(sample.place().bench()).contains("P1-B4");
        assertThat(sample.reading().reader()).contains("SC-1");
        assertThat(sample.state()).isEqualTo(SampleState.READ);
        assertThat(sample.times().cut()).as("a sheet knows the day, not the hour").isEmpty();
    }

    @Test
    void keepsObscuredApartFromBothZeroAndBlank() {
        intake.take(
                intake.sheet(
                        "o.csv",
                        "sample,pest,stage,count\nA,FRANOC,larva1,obscured\nA,FRANOC,adult,0\n"));

        assertThat(intake.counts("A")).isEqualTo(Map.of(ADULT, 0L));
        assertThat(sample("A").attributes()).containsEntry("obscured", "FRANOC larva1");
    }

    @Test
    void countsASheetSentTwiceOnce() {
        SheetFile sheet = intake.sheet("week.csv", WEEK_1);
        intake.take(sheet);
        long events = intake.events().count();

        ImportSheet.Outcome again = intake.take(sheet);

        assertThat(again.batch()).isEmpty();
        assertThat(again.plan().counted().same()).isEqualTo(3);
        assertThat(intake.events().count()).isEqualTo(events);
    }

    @Test
    void addsOnlyWhatALongerCopyHasMore() {
        intake.take(intake.sheet("week.csv", WEEK_1));
        String longer = WEEK_1 + "A3,2026-05-11,P1-B3,10,40,40,FRANOC,adult,7,SC-1\n";

        ImportPlan plan = intake.take(intake.sheet("week2.csv", longer)).plan();

        assertThat(plan.counted().added()).isEqualTo(1);
        assertThat(plan.counted().same()).isEqualTo(3);
        assertThat(plan.newSamples()).isEqualTo(1);
        assertThat(intake.counts("A3")).isEqualTo(Map.of(ADULT, 7L));
    }

    @Test
    void correctsWhatTheSheetTellsOtherwise() {
        intake.take(intake.sheet("week.csv", WEEK_1));
        String other = WEEK_1.replace("larva1,4,", "larva1,6,").replace(",9,40", ",8,40");

        ImportPlan plan = intake.take(intake.sheet("week.csv", other)).plan();

        assertThat(plan.counted().changed()).isEqualTo(1);
        assertThat(plan.corrected()).hasSize(2);
        assertThat(intake.counts("A1")).containsEntry(LARVA, 6L);
        assertThat(sample("A2").samplingUnits()).isEqualTo(8);
        assertThat(intake.samples().withOpenQuestions(NURSERY)).isEmpty();
        assertThat(intake.desk().staleSamples(NURSERY)).isEmpty();
    }

    @Test
    void leavesAloneWhatIsGoneFromTheSheetAndSaysSo() {
        intake.take(intake.sheet("week.csv", WEEK_1));
        String shorter = String.join("\n", WEEK_1.lines().limit(3).toList());

        ImportPlan plan = intake.preview(intake.sheet("week.csv", shorter));

        assertThat(plan.gone()).containsExactly(new ImportPlan.Gone(new SampleCode("A2"), ADULT));
        assertThat(intake.counts("A2")).isEqualTo(Map.of(ADULT, 2L));
    }

    @Test
    void takesAnImportBackWhole() {
        ImportSheet.Outcome first = intake.take(intake.sheet("week.csv", WEEK_1));
        ImportSheet.Outcome second =
                intake.take(
                        intake.sheet(
                                "week.csv",
                                WEEK_1.replace("larva1,4,", "larva1,6,")
                                        + "A3,2026-05-11,P1-B3,10,40,40,FRANOC,adult,7,SC-1\n"));

        intake.desk().takeBack().run(NURSERY, id(second), "SC-1", "wrong file");

        assertThat(intake.counts("A1")).containsEntry(LARVA, 4L);
        assertThat(intake.counts("A3")).isEmpty();
        assertThat(sample("A3").state()).isEqualTo(SampleState.DISCARDED);

        intake.desk().takeBack().run(NURSERY, id(first), "SC-1", "wrong nursery");

        assertThat(intake.counts("A1")).isEmpty();
        assertThat(sample("A1").state()).isEqualTo(SampleState.DISCARDED);
        assertThat(intake.desk().batches(NURSERY)).hasSize(2);

        intake.take(intake.sheet("week.csv", WEEK_1));

        assertThat(intake.counts("A1")).isEqualTo(Map.of(LARVA, 4L, ADULT, 0L));
        assertThat(sample("A1").state()).isEqualTo(SampleState.READ);
        assertThat(intake.samples().withOpenQuestions(NURSERY)).isEmpty();
    }

    @Test
    void aFaultLeavesEverythingAsItWas() {
        intake.take(intake.sheet("week.csv", WEEK_1));
        long events = intake.events().count();
        String bad =
                """
                sample,pest,stage,count
                B1,FRANOC,larva1,3
                B1,FRANOC,larva1,3
                B2,BEMITA,adult,1
                B3,FRANOC,larva,2
                """;

        assertThatThrownBy(() -> intake.take(intake.sheet("bad.csv", bad)))
                .isInstanceOfSatisfying(
                        SheetRefused.class,
                        refused -> {
                            assertThat(refused.faults())
                                    .extracting(fault -> fault.kind())
                                    .containsExactly(
                                            FaultKind.COUNTED_TWICE,
                                            FaultKind.PEST_UNKNOWN,
                                            FaultKind.STAGE_UNKNOWN);
                            assertThat(refused.faults().get(0).arguments())
                                    .as("both places")
                                    .contains("2");
                        });
        assertThat(intake.events().count()).isEqualTo(events);
        assertThat(intake.events().firstBrokenLink()).isEmpty();
    }

    @Test
    void knowsRowsWithoutACodeByTheirPlaceInTheSheet() {
        String sheet = "count,spray\n10,A\n7,A\n20,B\n";
        intake.take(intake.sheet("plots.csv", sheet));

        ImportPlan longer = intake.take(intake.sheet("plots.csv", sheet + "3,B\n")).plan();
        ImportPlan other = intake.take(intake.sheet("plots.csv", "count,spray\n1,C\n2,C\n")).plan();

        assertThat(longer.grownFrom()).isEqualTo("plots");
        assertThat(longer.counted().added()).isEqualTo(1);
        assertThat(other.grownFrom()).isEmpty();
        assertThat(intake.allCounts().keySet())
                .containsExactly(
                        "plots-1", "plots-2", "plots-3", "plots-4", "plots.2-1", "plots.2-2");
    }

    @Test
    void aSheetWithoutDatesIsCutOnTheDayThatIsSaidAndKeepsItWhenItComesAgain() {
        LocalDate monday = LocalDate.of(2026, 5, 4);
        SheetFile sheet = intake.sheet("plots.csv", "count,spray\n10,A\n7,A\n");
        intake.take(sheet, intake.usual(sheet).on(monday));

        SheetFile grown = intake.sheet("plots.csv", "count,spray\n10,A\n7,A\n20,A\n");
        ImportPlan plan = intake.take(grown, intake.usual(grown).on(monday.plusWeeks(1))).plan();

        assertThat(plan.corrected()).isEmpty();
        assertThat(sample("plots-1").collectedOn()).contains(monday);
        assertThat(sample("plots-3").collectedOn()).contains(monday.plusWeeks(1));
    }

    @Test
    void aPersonCanSayThatItIsANewSheet() {
        SheetFile sheet = intake.sheet("plots.csv", "count,spray\n10,A\n7,A\n");
        intake.take(sheet);

        intake.take(sheet, intake.usual(sheet).asNewSheet());

        assertThat(intake.allCounts()).hasSize(4);
    }

    @Test
    void addsPlacesOnlyWhenAsked() {
        SheetFile sheet = intake.sheet("week.csv", WEEK_1);
        ImportPlan plan = intake.preview(sheet);
        assertThat(plan.places().houses()).containsExactly("P1");
        assertThat(plan.places().benches())
                .containsExactly(
                        new ImportPlan.NamedIn("P1-B3", "P1"),
                        new ImportPlan.NamedIn("P1-B4", "P1"));

        ImportChoices choices = intake.usual(sheet);
        intake.take(
                sheet,
                new ImportChoices(
                        choices.worksheet(),
                        choices.mapping(),
                        choices.unnamed(),
                        Map.of(),
                        Map.of(),
                        false,
                        true));

        assertThat(intake.preview(sheet).places().isAny()).isFalse();
    }

    @Test
    void takesInsectSpraysAsTheyAre() {
        // Beall 1942, Biometrika 32:243-262: 72 plots, totals of the sprays A to F
        SheetFile sheet = Intake.reference("insectsprays.csv");

        ImportPlan plan = intake.take(sheet).plan();

        assertThat(plan.newSamples()).isEqualTo(72);
        StageKey any = new StageKey("UNNAMED", "any");
        Map<String, Long> totals = new java.util.TreeMap<>();
        for (CollectedSample sample : intake.samples().list(NURSERY, SampleFilter.ALL, 0, 100)) {
            long count = intake.counts(sample.code().text()).getOrDefault(any, -1L);
            totals.merge(sample.attributes().getOrDefault("spray", ""), count, Long::sum);
        }
        assertThat(totals)
                .isEqualTo(Map.of("A", 174L, "B", 184L, "C", 25L, "D", 59L, "E", 42L, "F", 200L));
    }

    @Test
    void takesAFrequencyTableAsItIs() {
        // Bliss and Fisher 1953: red mites on 150 apple leaves, 172 mites
        ImportPlan plan = intake.take(Intake.reference("freq_red_mites.csv")).plan();

        assertThat(plan.newSamples()).isEqualTo(150);
        List<Long> counts =
                intake.allCounts().values().stream()
                        .flatMap(sample -> sample.values().stream())
                        .toList();
        assertThat(counts).hasSize(150);
        assertThat(counts.stream().mapToLong(Long::longValue).sum()).isEqualTo(172);
        assertThat(counts.stream().filter(count -> count == 0).count()).isEqualTo(70);
    }

    private CollectedSample sample(String code) {
        return intake.samples().find(NURSERY, new SampleCode(code)).orElseThrow();
    }

    private static String id(ImportSheet.Outcome outcome) {
        return outcome.batch().orElseThrow().id();
    }
}
