package jarwise.stats.sequential;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.stats.count.Observation;
import java.util.List;

/**
 * A round of a sequential plan so far, whose samples may hold other numbers of sampling units than
 * planned or be read in part.
 *
 * <p>The decision then is by the sum of the log-likelihood ratios, sample by sample with its own
 * mean, and no longer by the stop lines; with samples as planned both say the same.
 *
 * <p><b>Assumes</b> the same k for all samples, whatever they hold.
 *
 * <p><b>Source.</b> Wald (1947), <i>Sequential Analysis</i>, ch. 3 (from memory). Checked against
 * plain probabilities and a simulation of our own.
 *
 * @param plan the plan
 * @param samples the samples counted so far, in any order; with presence–absence 1 individual means
 *     at or over the tally threshold, 0 under it
 */
public record RoundInProgress(SequentialPlan plan, List<Observation> samples) {

    private static final double ROUNDING = 1e-12;

    /** Copies the samples; throws {@link InvalidInput} if they are more than the plan allows. */
    public RoundInProgress {
        samples = List.copyOf(samples);
        if (samples.size() > plan.maxSamples()) {
            throw new InvalidInput(
                    "the round has %d samples; the plan ends after %d."
                            .formatted(samples.size(), plan.maxSamples()));
        }
        if (plan.design().model() instanceof PresenceAbsence
                && samples.stream().anyMatch(sample -> sample.individuals() > 1)) {
            throw new InvalidInput(
                    "a sample of a presence-absence plan counts more than 1; it must be 1 for a"
                            + " sample at or over the tally threshold, else 0.");
        }
    }

    /** {@return the sum of the log-likelihood ratios; positive speaks for the upper density} */
    public double logLikelihoodRatio() {
        return samples.stream()
                .mapToDouble(
                        sample ->
                                plan.design()
                                        .logLikelihoodRatio(
                                                sample.individuals(), sample.exposure()))
                .sum();
    }

    /** {@return what to do now} */
    public SequentialStep decision() {
        int sampleSize = samples.size();
        if (sampleSize < plan.minSamples()) {
            return SequentialStep.CONTINUE;
        }
        double ratio = logLikelihoodRatio();
        if (ratio <= plan.design().lowerLimit() + ROUNDING) {
            return SequentialStep.BELOW;
        }
        if (ratio >= plan.design().upperLimit() - ROUNDING) {
            return SequentialStep.ABOVE;
        }
        return sampleSize == plan.maxSamples()
                ? SequentialStep.SAMPLED_OUT
                : SequentialStep.CONTINUE;
    }

    /**
     * How the round goes on, from what was found so far and the next samples as planned.
     *
     * @param nextSamples how many more samples to look ahead, 1 or more; not beyond the plan's
     *     largest number
     * @param trueDensity density per sampling unit, 0 or more; a proportion with presence–absence
     * @return chances to be settled below or above by then, and sample numbers counted from the
     *     start of the round; a round that is decided already stays so
     * @throws InvalidInput if a number is out of range
     */
    public SequentialOutcome ahead(int nextSamples, double trueDensity) {
        Require.atLeast("next samples", nextSamples, 1);
        Require.notNegative("density", trueDensity);
        WaldDesign design = plan.design();
        int already = samples.size();
        int last = Math.min(plan.maxSamples(), already + nextSamples);
        if (last < plan.minSamples()) {
            return new SequentialOutcome(last, new double[1], new double[1], 1);
        }
        // What was found so far, told in individuals of samples as planned, moves the lines.
        double found = logLikelihoodRatio() / design.evidencePerIndividual();
        StopLines lines = plan.lines().moved(-found - design.slope() * already, last);
        int most = ForwardRecursion.width(lines, already, 0);
        SampleChances sample = design.model().chances(design.unitsPerSample() * trueDensity, most);
        return ForwardRecursion.outcome(lines, already, 0, n -> sample);
    }

    /**
     * The chance that the next samples settle the round.
     *
     * @param nextSamples how many more samples, 1 or more
     * @param trueDensity density per sampling unit, 0 or more; a proportion with presence–absence
     * @return in [0, 1]; 1 if it is settled already
     * @throws InvalidInput if a number is out of range
     */
    public double chanceToSettle(int nextSamples, double trueDensity) {
        return ahead(nextSamples, trueDensity).probabilitySettled();
    }
}
