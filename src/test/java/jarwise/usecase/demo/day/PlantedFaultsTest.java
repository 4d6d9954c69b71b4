package jarwise.usecase.demo.day;

import static jarwise.sample.SamplingMethod.WASH;
import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.CollectedSample;
import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.DemoChoices;
import jarwise.usecase.demo.DemoClock;
import jarwise.usecase.demo.Stage;
import jarwise.usecase.demo.WorkWeek;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** Every fault that is in the demo on purpose is there, once, as the events tell it. */
class PlantedFaultsTest {

    private static final ProtocolVersion PROTOCOL = DemoChoices.protocol();

    @Test
    void oneJarOfTheSecondRoundWasWashedInPlainWater() {
        assertThat(washed(jar -> jar.wash().fluid().equals(Optional.of(Fluid.WATER))))
                .singleElement()
                .satisfies(jar -> assertThat(round(jar)).isEqualTo(2));
    }

    @Test
    void oneFilterOfTheThirdRoundWasTooWetToReadWhole() {
        assertThat(washed(jar -> jar.wash().condition().equals(Optional.of("too wet"))))
                .singleElement()
                .satisfies(
                        jar -> {
                            assertThat(round(jar)).isEqualTo(3);
                            assertThat(jar.sample().reading().cellsObscured())
                                    .isGreaterThanOrEqualTo(7);
                            assertThat(jar.sample().reading().cellsReadable())
                                    .as("obscured cells leave the denominator")
                                    .isEqualTo(40 - jar.sample().reading().cellsObscured());
                        });
    }

    @Test
    void oneJarOfTheFourthRoundWasPackedTooFull() {
        assertThat(washed(jar -> jar.wash().fill().equals(Optional.of(Fill.PACKED))))
                .singleElement()
                .satisfies(jar -> assertThat(round(jar)).isEqualTo(4));
    }

    @Test
    void thePairScanOfTheFifthRoundFoundTwoSwappedLids() {
        List<SampleFold> swapped =
                washed(jar -> jar.wash().condition().orElse("").startsWith("lids swapped"));

        assertThat(swapped).hasSize(2).allSatisfy(jar -> assertThat(round(jar)).isEqualTo(5));
        assertThat(swapped)
                .allSatisfy(
                        jar ->
                                assertThat(corrections(jar, Step.FREEZER_IN))
                                        .singleElement()
                                        .asString()
                                        .contains("pair scan"));
        assertThat(swapped.stream().map(jar -> jar.sample().place().bench()).distinct())
                .as("both from one bench, so that their counts are those of the bench")
                .hasSize(1);
    }

    @Test
    void twoFiltersOfTheSixthRoundWereReadEightyHoursAfterTheWash() {
        List<SampleFold> late = washed(jar -> readAfter(jar).compareTo(PROTOCOL.readWithin()) > 0);

        assertThat(late).hasSize(2).allSatisfy(jar -> assertThat(round(jar)).isEqualTo(6));
        assertThat(late)
                .allSatisfy(jar -> assertThat(readAfter(jar.sample()).toHours()).isEqualTo(80));
    }

    @Test
    void oneFilterOfTheEighthRoundWasReadAfterEighteenHoursInTheFreezer() {
        List<SampleFold> early = washed(jar -> frozenFor(jar).compareTo(thaw()) < 0);

        assertThat(early)
                .singleElement()
                .satisfies(
                        jar -> {
                            assertThat(round(jar)).isEqualTo(8);
                            assertThat(frozenFor(jar.sample()).plusMinutes(2).toHours())
                                    .as("two minutes of thawing before the first cell")
                                    .isEqualTo(18);
                        });
    }

    @Test
    void oneJarHoldsNineGrowingPoints() {
        assertThat(washed(jar -> jar.role() == SampleRole.CROP && jar.samplingUnits() != 10))
                .singleElement()
                .satisfies(jar -> assertThat(jar.sample().samplingUnits()).isEqualTo(9));
    }

    @Test
    void oneLocationWasPutRightLaterAndTheFirstRecordStays() {
        SampleFold jar = DemoCounts.ofTheDemo().jar(7, "P1-B5", 6);

        assertThat(steps(jar, Step.CUT).map(cut -> cut.facts().get("bench")))
                .containsExactly("P1-B4", "P1-B5");
        assertThat(corrections(jar, Step.CUT)).hasSize(1);
        assertThat(jar.sample().place().bench()).hasValue("P1-B5");
        assertThat(jar.openQuestions()).isEmpty();
        assertThat(DemoCounts.ofTheDemo().random(WASH, 7, "P1-B4").size())
                .as("jars of the bench it was noted on")
                .isEqualTo(8);
    }

    @Test
    void oneSyncCameTwiceAndChangesNothing() {
        List<List<SampleEvent>> batches = DemoCounts.BATCHES;
        List<List<SampleEvent>> once = batches.stream().distinct().toList();

        assertThat(batches).hasSize(once.size() + 1);
        assertThat(DemoCounts.of(once)).isEqualTo(DemoCounts.ofTheDemo());
    }

    @Test
    void washingNotedOnTwoPhonesRaisesNoQuestion() {
        List<SampleFold> twice =
                DemoCounts.ofTheDemo().samples().stream()
                        .filter(jar -> steps(jar, Step.WASHED).count() > 1)
                        .toList();

        assertThat(twice).hasSize(8).allSatisfy(jar -> assertThat(round(jar)).isEqualTo(4));
        assertThat(twice)
                .allSatisfy(
                        jar ->
                                assertThat(
                                                jar.history().stream()
                                                        .filter(e -> isStep(e, Step.WASHED))
                                                        .map(e -> e.id().device()))
                                        .containsExactlyInAnyOrder(Cast.PHONE_A, Cast.PHONE_B));
        assertThat(DemoCounts.ofTheDemo().samples())
                .allSatisfy(jar -> assertThat(jar.openQuestions()).isEmpty());
    }

    @Test
    void twelveAdultsThatNobodyCouldNameWereSuspectedSentInAndFoundNotRegulated() {
        SampleFold jar = washed(PlantedFaultsTest::suspected).get(0);

        assertThat(washed(PlantedFaultsTest::suspected)).hasSize(1);
        assertThat(round(jar)).isEqualTo(7);
        assertThat(jar.sample().place().house()).hasValue("H3");
        assertThat(jar.sample().purpose()).isEqualTo(Purpose.TARGETED);
        assertThat(jar.tally().of(Stage.UNSURE.key())).hasValue(12);

        List<SampleEvent> reads = jar.history().stream().filter(e -> isStep(e, Step.READ)).toList();
        assertThat(reads.stream().map(e -> suspectedIn(e)))
                .as("read, suspected, answered")
                .containsExactly("", "yes", "no");
        assertThat(week(reads.get(1).at())).isEqualTo(7);
        assertThat(week(reads.get(2).at())).isEqualTo(9);
        assertThat(jar.sample().attributes())
                .containsKey("voucher")
                .hasEntrySatisfying(
                        "authority_answer",
                        answer -> assertThat(answer).startsWith("not regulated"));
    }

    private static boolean suspected(CollectedSample jar) {
        return jar.attributes().containsKey("suspected_regulated");
    }

    /** Washed about three on Thursday: frozen long enough on Friday, too old on Sunday. */
    @Test
    void filtersOfTheThirdRoundCouldOnlyBeReadLateOnFriday() {
        LocalDate friday = new WorkWeek(3).monday().plusDays(4);
        List<SampleFold> jars = washed(jar -> DemoCounts.round(jar) == 3);

        assertThat(jars).hasSizeGreaterThan(37);
        for (SampleFold jar : jars) {
            Instant readable = frozenAt(jar.sample()).plus(PROTOCOL.freeze());
            Instant tooLate = jar.sample().times().washed().orElseThrow().plus(readWithin());
            assertThat(readable).isAfter(WorkWeek.at(friday, 14, 30));
            assertThat(tooLate.atZone(DemoClock.ZONE).getDayOfWeek()).isEqualTo(DayOfWeek.SUNDAY);
            Instant read = jar.sample().times().read().orElseThrow();
            assertThat(read.atZone(DemoClock.ZONE).toLocalDate()).isEqualTo(friday);
            assertThat(read.atZone(DemoClock.ZONE).toLocalTime())
                    .isBetween(LocalTime.of(15, 0), LocalTime.of(19, 0));
            assertThat(read).isAfter(readable);
        }
    }

    @Test
    void threeFiltersOfCopperWrenStillWaitOnThursdayMorning() {
        List<SampleFold> waiting = washed(jar -> jar.state() == SampleState.FROZEN);

        assertThat(waiting)
                .hasSize(3)
                .allSatisfy(jar -> assertThat(round(jar)).isEqualTo(10))
                .allSatisfy(
                        jar -> assertThat(jar.sample().place().variety()).hasValue("Copper Wren"));
        Instant lastMoment =
                waiting.stream()
                        .map(jar -> jar.sample().times().washed().orElseThrow().plus(readWithin()))
                        .min(Instant::compareTo)
                        .orElseThrow();
        assertThat(DemoClock.MOMENT)
                .isEqualTo(Instant.parse("2026-05-07T11:40:00Z"))
                .isBefore(lastMoment);
    }

    @Test
    void nothingIsNotedAfterTheMomentAtWhichTheDemoStands() {
        assertThat(DemoCounts.BATCHES.stream().flatMap(List::stream))
                .allSatisfy(event -> assertThat(event.at()).isBefore(DemoClock.MOMENT));
    }

    @Test
    void nobodyReadsTwoFiltersAtOnce() {
        for (String reader : List.of(Cast.READER_A, Cast.READER_B)) {
            List<Instant[]> readings = new ArrayList<>();
            for (SampleFold fold : DemoCounts.ofTheDemo().samples()) {
                List<Instant> cells =
                        fold.history().stream()
                                .filter(e -> e.deed() instanceof Deed.CellDone)
                                .filter(e -> e.person().equals(reader))
                                .map(SampleEvent::at)
                                .toList();
                if (!cells.isEmpty()) {
                    readings.add(new Instant[] {cells.get(0), cells.get(cells.size() - 1)});
                }
            }
            readings.sort(java.util.Comparator.comparing(reading -> reading[0]));
            for (int i = 1; i < readings.size(); i++) {
                assertThat(readings.get(i)[0]).as(reader).isAfter(readings.get(i - 1)[1]);
            }
        }
    }

    private static List<SampleFold> washed(Predicate<CollectedSample> wanted) {
        return DemoCounts.ofTheDemo()
                .where(jar -> jar.method() == WASH && jar.times().washed().isPresent())
                .where(wanted)
                .samples();
    }

    private static int round(SampleFold jar) {
        return DemoCounts.round(jar.sample());
    }

    private static int week(Instant at) {
        LocalDate day = at.atZone(DemoClock.ZONE).toLocalDate();
        return 1 + (int) java.time.temporal.ChronoUnit.WEEKS.between(new WorkWeek(1).monday(), day);
    }

    private static Duration readWithin() {
        return PROTOCOL.readWithin();
    }

    /** Filters are taken out two minutes before the first cell comes under the lens. */
    private static Duration thaw() {
        return PROTOCOL.freeze().minusMinutes(2);
    }

    private static Duration readAfter(CollectedSample jar) {
        return jar.times()
                .read()
                .map(read -> Duration.between(jar.times().washed().orElseThrow(), read))
                .orElse(Duration.ZERO);
    }

    private static Duration frozenFor(CollectedSample jar) {
        return jar.times()
                .freezerOut()
                .map(out -> Duration.between(frozenAt(jar), out))
                .orElse(PROTOCOL.freeze());
    }

    private static Instant frozenAt(CollectedSample jar) {
        return jar.times().freezerIn().orElseThrow();
    }

    private static boolean isStep(SampleEvent event, Step step) {
        return event.deed() instanceof Deed.StepTaken taken && taken.step() == step;
    }

    private static java.util.stream.Stream<Deed.StepTaken> steps(SampleFold jar, Step step) {
        return jar.history().stream()
                .filter(event -> isStep(event, step))
                .map(event -> (Deed.StepTaken) event.deed());
    }

    private static List<String> corrections(SampleFold jar, Step step) {
        return steps(jar, step).flatMap(taken -> taken.reason().stream()).toList();
    }

    private static String suspectedIn(SampleEvent event) {
        Map<String, String> facts =
                event.deed() instanceof Deed.StepTaken taken ? taken.facts() : Map.of();
        return facts.getOrDefault("other:suspected_regulated", "");
    }
}
