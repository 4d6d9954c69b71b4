package jarwise.decision;

import jarwise.stats.estimate.DensityEstimate;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What is known of one pest and stage at one place on one day, and what follows from it. Read, not
 * read and not sampled are kept apart: without an estimate {@link #evidence} says which it is.
 *
 * @param subject pest and stages
 * @param stand where
 * @param day day the samples were collected
 * @param evidence the samples
 * @param estimated density and what it was worked out with; empty where nothing has been read
 * @param judgement the density held against the line; empty where there is no line or no estimate
 */
public record Finding(
        Subject subject,
        Stand stand,
        LocalDate day,
        Evidence evidence,
        Optional<Estimated> estimated,
        Optional<Judgement> judgement) {

    /**
     * What a finding is about.
     *
     * @param pest pest code
     * @param stageGroup stages that are added up
     */
    public record Subject(String pest, String stageGroup) {}

    /**
     * A density and where it comes from.
     *
     * @param density the estimate with its interval
     * @param basis what it was worked out with
     */
    public record Estimated(DensityEstimate density, Basis basis) {}

    /** {@return the verdict, where there is one} */
    public Optional<Verdict> verdict() {
        return judgement.map(Judgement::verdict);
    }

    /** {@return whether jars were cut here but none has been read} */
    public boolean notRead() {
        return estimated.isEmpty() && evidence.notRead() > 0;
    }

    /** {@return whether this kind of animal was looked for and none was found} */
    public boolean noneFound() {
        return estimated.isPresent() && evidence.individuals() == 0;
    }
}
