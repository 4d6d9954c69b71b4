package jarwise.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.decision.DetectionMix.Part;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.DetectionShare;
import java.util.List;
import org.junit.jupiter.api.Test;

class DetectionMixTest {

    private static final DetectionShare ALL = DetectionShare.known(1);
    private static final DetectionShare HALF = DetectionShare.known(0.5);
    private static final DetectionShare SHARP = DetectionShare.measured(380, 400);
    private static final DetectionShare BLUNT = DetectionShare.measured(14, 20);

    @Test
    void leavesSamplesOfOneReaderAndFluidAsTheyAre() {
        List<Observation> jars = List.of(Observation.of(3, 10), new Observation(0, 10, 0.5));

        DetectionMix mix =
                DetectionMix.of(jars.stream().map(jar -> new Part(jar, HALF, BLUNT)).toList());

        assertThat(mix.observations()).isEqualTo(jars);
        assertThat(mix.detection().efficiency()).isEqualTo(HALF);
        assertThat(mix.detection().sensitivity()).isEqualTo(BLUNT);
    }

    /** Worked by hand: what is expected is units times the sample's own shares, in every mix. */
    @Test
    void expectsOfEverySampleWhatItsOwnReaderAndFluidWouldFind() {
        List<Part> parts =
                List.of(
                        new Part(Observation.of(3, 10), HALF, SHARP),
                        new Part(Observation.of(3, 8), ALL, BLUNT),
                        new Part(new Observation(1, 10, 0.5), ALL, ALL));

        DetectionMix mix = DetectionMix.of(parts);

        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            assertThat(mix.observations().get(i).exposure() * mix.detection().mean())
                    .isCloseTo(
                            part.observation().exposure()
                                    * part.efficiency().mean()
                                    * part.sensitivity().mean(),
                            within(1e-12));
        }
    }

    /** Half of 40 and all of 20 growing points: 20 + 20 count, 8 were found, so 0.2 on each. */
    @Test
    void estimatesTheDensityOnThePlantFromUnequalShares() {
        List<Part> parts =
                List.of(
                        new Part(Observation.of(2, 20), HALF, ALL),
                        new Part(Observation.of(2, 20), HALF, ALL),
                        new Part(Observation.of(2, 10), ALL, ALL),
                        new Part(Observation.of(2, 10), ALL, ALL));

        DetectionMix mix = DetectionMix.of(parts);
        DensityEstimate estimate =
                DensityEstimator.standard()
                        .withDetection(mix.detection())
                        .estimate(mix.observations());

        assertThat(estimate.estimate()).isCloseTo(0.2, within(1e-9));
    }

    /** The relative variance of a sum of two independent parts of equal weight: a quarter each. */
    @Test
    void isAsUncertainAsTheMixOfItsReaders() {
        double counts = SHARP.mean() / BLUNT.mean();
        List<Part> parts =
                List.of(
                        new Part(Observation.of(3, 10), ALL, SHARP),
                        new Part(Observation.of(3, 10), ALL, BLUNT));

        double variance = DetectionMix.of(parts).detection().sensitivity().varianceOfLog();

        double w = counts / (1 + counts);
        double expected = w * w * SHARP.varianceOfLog() + (1 - w) * (1 - w) * BLUNT.varianceOfLog();
        assertThat(variance).isCloseTo(expected, within(0.1 * expected));
    }

    @Test
    void isNearlyAsUncertainAsTheOneWhoReadNearlyAll() {
        List<Part> parts =
                List.of(
                        new Part(Observation.of(30, 190), ALL, BLUNT),
                        new Part(Observation.of(2, 10), ALL, SHARP));

        double variance = DetectionMix.of(parts).detection().sensitivity().varianceOfLog();

        assertThat(variance).isBetween(0.8 * BLUNT.varianceOfLog(), BLUNT.varianceOfLog());
    }

    @Test
    void refusesAnEmptyGroup() {
        assertThatThrownBy(() -> DetectionMix.of(List.of())).isInstanceOf(InvalidInput.class);
    }
}
