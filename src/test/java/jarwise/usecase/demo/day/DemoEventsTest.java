package jarwise.usecase.demo.day;

import static jarwise.sample.SamplingMethod.TAP;
import static jarwise.sample.SamplingMethod.WASH;
import static org.assertj.core.api.Assertions.assertThat;

import jarwise.usecase.demo.Stage;
import jarwise.usecase.demo.Stand;
import jarwise.usecase.demo.Streams;
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
        System.out.println("first " + first);
        long t = System.nanoTime();
        var batches = DemoEvents.of(first);
        System.out.println(
                (System.nanoTime() - t) / 1e6
                        + " ms; events "
                        + batches.stream().mapToInt(b -> b.size()).sum()
                        + " batches "
                        + batches.size());
        DemoCounts all = DemoCounts.of(batches);
        for (Stand s : Stand.all())
            for (int w = 1; w <= 10; w++) {
                DemoCounts j = all.random(WASH, w, s.bench());
                DemoCounts t2 = all.random(TAP, w, s.bench());
                System.out.printf(
                        "%s W%d jars %d L %d P %d A %d | taps %d L %d A %d | other mites %d aph %d"
                                + " pred %d%n",
                        s.bench(),
                        w,
                        j.size(),
                        j.larvae(),
                        j.sum(Stage.PUPAL),
                        j.sum(Stage.ADULT),
                        t2.size(),
                        t2.larvae(),
                        t2.sum(Stage.ADULT),
                        j.sum(Stage.BROAD_MITE, Stage.SPIDER_MITE),
                        j.sum(Stage.APHID_ADULT, Stage.APHID_NYMPH),
                        j.sum(Stage.CUCUMERIS, Stage.PERSIMILIS));
            }
        assertThat(Streams.SEED).isEqualTo(first);
    }

    private static boolean beatsHold(long seed) {
        DemoCounts all = DemoCounts.of(DemoEvents.of(seed));
        return all.random(WASH, 1, "P1-B3").thrips() == 0
                && all.random(TAP, 1, "P1-B3").thrips() == 0
                && all.random(WASH, 2, "P1-B3").larvae() > 0
                && all.random(TAP, 2, "P1-B3").thrips() == 0;
    }
}
