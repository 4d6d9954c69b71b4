package jarwise.plan;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.sample.Purpose;
import jarwise.sample.SamplingMethod;
import java.time.LocalDate;
import java.util.List;

/**
 * A walk that is planned: which benches, in which order, how many samples from each.
 *
 * @param day when
 * @param method how insects are brought to the eye; two methods are two rounds
 * @param stops benches in the order of the walk, each once
 */
public record Round(LocalDate day, SamplingMethod method, List<Stop> stops) {

    /**
     * One bench of a round.
     *
     * @param bench bench code
     * @param samples jars, taps, cards or looks to take there, 1 or more
     * @param purpose whether they are to estimate or to find
     */
    public record Stop(String bench, int samples, Purpose purpose) {

        public Stop {
            Require.notBlank("bench", bench);
            Require.atLeast("samples from " + bench, samples, 1);
        }
    }

    public Round {
        stops = List.copyOf(stops);
        Require.atLeast("benches of the round", stops.size(), 1);
        if (stops.stream().map(Stop::bench).distinct().count() < stops.size()) {
            throw new InvalidInput("The round names a bench twice; each must stand once.");
        }
    }

    /** {@return samples to take in all} */
    public int samples() {
        return stops.stream().mapToInt(Stop::samples).sum();
    }
}
