package jarwise.usecase.demo.day;

import static jarwise.sample.SamplingMethod.TAP;
import static jarwise.sample.SamplingMethod.WASH;
import static org.assertj.core.api.Assertions.assertThat;

import jarwise.usecase.demo.Streams;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class DemoEventsTest {

    @Test
    void theSeedIsTheFirstWithWhichTheFirstTwoBeatsHold() {
        long first =
                LongStream.rangeClosed(1, 200)
                        .filter(DemoEventsTest::beatsHold)
                        .findFirst()
                        .orElseThrow();
        assertThat(Streams.SEED).isEqualTo(first);
    }

    private static DemoCounts demo() {
        return DemoCounts.ofTheDemo();
    }

    @Test
    void theSameSeedMakesTheSameEvents() {
        assertThat(DemoEvents.of(Streams.SEED)).isEqualTo(DemoCounts.BATCHES);
    }

    @Test
    void inTheTenthRoundTheTreatedBenchIsNearZeroAndTheMovedPotsCarryThrips() {
        DemoCounts demo = demo();

        assertThat(demo.random(WASH, 10, "P1-B3").larvae())
                .as("true mean 0.02 a growing point, 8 jars of 10")
                .isLessThanOrEqualTo(6);
        long before =
                IntStream.rangeClosed(1, 7)
                        .mapToLong(round -> demo.random(WASH, round, "H2-B4").thrips())
                        .sum();
        long after =
                IntStream.rangeClosed(8, 10)
                        .mapToLong(round -> demo.random(WASH, round, "H2-B4").thrips())
                        .sum();
        assertThat(before).as("before the pots came").isZero();
        assertThat(after).as("after the pots came").isPositive();
    }

    @Test
    void fromTheThirdRoundOnThirtySevenJarsAreCut() {
        DemoCounts demo = demo();

        for (int round = 3; round <= 10; round++) {
            int number = round;
            assertThat(demo.random(WASH).where(sample -> DemoCounts.round(sample) == number).size())
                    .as("jars of round " + round)
                    .isEqualTo(37);
        }
    }

    private static boolean beatsHold(long seed) {
        DemoCounts all = DemoCounts.of(DemoEvents.of(seed));
        return all.random(WASH, 1, "P1-B3").thrips() == 0
                && all.random(TAP, 1, "P1-B3").thrips() == 0
                && all.random(WASH, 2, "P1-B3").larvae() > 0
                && all.random(TAP, 2, "P1-B3").thrips() == 0;
    }
}
