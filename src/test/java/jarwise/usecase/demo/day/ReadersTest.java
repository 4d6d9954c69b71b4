package jarwise.usecase.demo.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.tally.SampleFold;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.Stage;
import jarwise.usecase.demo.Streams;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Beat 8: the second reader sees fewer larvae than the first, on the same filters and on seeded
 * ones.
 *
 * <p>Of n larvae under the lens a reader who sees the share p finds a binomial number, so the
 * logarithm of the number found has a variance of about (1 − p) / (n p).
 */
class ReadersTest {

    /** Larvae of a filter are about 55 of the first stage to 45 of the second. */
    private static double seen(String reader) {
        return .55 * Stage.LARVA1.observed().seenBy(reader)
                + .45 * Stage.LARVA2.observed().seenBy(reader);
    }

    private record Larvae(long foundByA, long foundByB, double underTheLens) {

        double logRatio() {
            return Math.log((double) foundByB / foundByA);
        }

        double error() {
            double a = seen(Cast.READER_A);
            double b = seen(Cast.READER_B);
            return Math.sqrt(((1 - a) / a + (1 - b) / b) / underTheLens);
        }
    }

    @Test
    void theSecondReaderTrulySeesTwentyToThirtyPercentFewerLarvae() {
        assertThat(1 - seen(Cast.READER_B) / seen(Cast.READER_A)).isBetween(.20, .30);
    }

    /** Four hundred filters with ten larvae each, under the lens of both. */
    @Test
    void onManyFiltersTheSecondReaderFindsAQuarterFewerLarvae() {
        Larvae larvae = new Larvae(onMany(Cast.READER_A), onMany(Cast.READER_B), 4000);

        assertThat(larvae.logRatio())
                .as("%s, standard error %.3f", larvae, larvae.error())
                .isCloseTo(
                        Math.log(seen(Cast.READER_B) / seen(Cast.READER_A)),
                        within(4 * larvae.error()));
    }

    private static long onMany(String reader) {
        Diary diary = new Diary();
        for (int number = 0; number < 400; number++) {
            Streams streams = new Streams(number);
            Filter filter =
                    Filter.seeded(Map.of(Stage.LARVA1, 5, Stage.LARVA2, 5), streams.of("filter"));
            new Reading(
                            new SampleCode("SEED-%03d".formatted(number)),
                            reader,
                            Set.of(Stage.LARVA1.pest()),
                            filter,
                            0,
                            streams.of(reader))
                    .write(diary, Instant.EPOCH);
        }
        return DemoCounts.of(diary.batches()).larvae();
    }

    /** Three standard errors: fifty larvae on recounted filters cannot tell more. */
    @Test
    void recountsShowTheSecondReaderBelowTheFirst() {
        Larvae larvae = ofRecounts();

        assertThat(larvae.foundByA()).as("enough for a logarithm").isGreaterThan(25);
        assertThat(larvae.logRatio())
                .as("%s, standard error %.2f", larvae, larvae.error())
                .isNegative()
                .isCloseTo(
                        Math.log(seen(Cast.READER_B) / seen(Cast.READER_A)),
                        within(3 * larvae.error()));
    }

    @Test
    void seededFiltersAgreeWithTheRecounts() {
        Larvae seeded = ofSeeded();
        Larvae recounts = ofRecounts();

        double error = Math.hypot(seeded.error(), recounts.error());
        assertThat(seeded.logRatio()).as("seeded filters " + seeded).isNegative();
        assertThat(seeded.logRatio() - recounts.logRatio())
                .as("difference, standard error %.2f", error)
                .isCloseTo(0, within(3 * error));
    }

    @Test
    void aboutOneFilterInTenIsReadAgainByTheOtherReaderWithoutTheFirstCount() {
        List<SampleFold> recounts =
                samples(fold -> fold.sample().role() == SampleRole.RECOUNT).samples();
        int jars =
                DemoCounts.ofTheDemo().random(jarwise.sample.SamplingMethod.WASH).samples().size();

        assertThat((double) recounts.size() / jars).isBetween(.09, .11);
        Map<SampleCode, SampleFold> byCode = byCode();
        for (SampleFold again : read(recounts)) {
            assertThat(reader(again)).isNotEqualTo(reader(first(again, byCode)));
            assertThat(again.sample().times().read().orElseThrow())
                    .isAfter(first(again, byCode).sample().times().read().orElseThrow());
        }
    }

    private static Larvae ofRecounts() {
        Map<SampleCode, SampleFold> byCode = byCode();
        long ofA = 0;
        long ofB = 0;
        for (SampleFold again :
                read(samples(fold -> fold.sample().role() == SampleRole.RECOUNT).samples())) {
            for (SampleFold reading : List.of(again, first(again, byCode))) {
                long larvae = new DemoCounts(List.of(reading)).larvae();
                ofA += reader(reading).equals(Cast.READER_A) ? larvae : 0;
                ofB += reader(reading).equals(Cast.READER_B) ? larvae : 0;
            }
        }
        return new Larvae(ofA, ofB, ofA / seen(Cast.READER_A));
    }

    /** Both read about as many seeded filters; shares are compared on an equal number. */
    private static Larvae ofSeeded() {
        List<SampleFold> larvae =
                samples(
                                fold ->
                                        fold.sample().role() == SampleRole.SEEDED
                                                && "larva"
                                                        .equals(
                                                                fold.sample()
                                                                        .attributes()
                                                                        .get("known_stage")))
                        .samples();
        DemoCounts byA =
                new DemoCounts(
                        larvae.stream().filter(f -> reader(f).equals(Cast.READER_A)).toList());
        DemoCounts byB =
                new DemoCounts(
                        larvae.stream().filter(f -> reader(f).equals(Cast.READER_B)).toList());
        assertThat(byA.size()).as("seeded filters of both readers").isEqualTo(byB.size());
        return new Larvae(byA.larvae(), byB.larvae(), Checks.KNOWN * byA.size());
    }

    private static DemoCounts samples(java.util.function.Predicate<SampleFold> wanted) {
        return new DemoCounts(DemoCounts.ofTheDemo().samples().stream().filter(wanted).toList());
    }

    private static List<SampleFold> read(List<SampleFold> folds) {
        return folds.stream().filter(f -> f.sample().state() == SampleState.READ).toList();
    }

    private static Map<SampleCode, SampleFold> byCode() {
        return DemoCounts.ofTheDemo().samples().stream()
                .collect(Collectors.toMap(f -> f.sample().code(), Function.identity()));
    }

    private static SampleFold first(SampleFold again, Map<SampleCode, SampleFold> byCode) {
        SampleFold first = byCode.get(again.sample().recountOf().orElseThrow());
        if (first == null) {
            throw new IllegalStateException("a recount of no jar");
        }
        return first;
    }

    private static String reader(SampleFold fold) {
        return fold.sample().reading().reader().orElseThrow();
    }
}
