package jarwise.decision;

import java.util.OptionalInt;

/**
 * A density held against the site's line.
 *
 * @param line the action threshold valid on that day
 * @param probabilityAbove chance that the density is above it, 0 to 1
 * @param verdict what can be said
 * @param moreSamples where nothing can be said: further samples that would tell at the present
 *     estimate; empty otherwise, and where no number that anybody would take does
 * @param minutesPerSample time that one of them costs, cutting to reading
 */
public record Judgement(
        ActionThreshold line,
        double probabilityAbove,
        Verdict verdict,
        OptionalInt moreSamples,
        double minutesPerSample) {

    /** {@return the same with the number of samples that would tell} */
    public Judgement withMoreSamples(OptionalInt more) {
        return new Judgement(line, probabilityAbove, verdict, more, minutesPerSample);
    }

    /** {@return minutes for the samples that would tell; 0 where there are none} */
    public long minutes() {
        return Math.round(moreSamples.orElse(0) * minutesPerSample);
    }

    /** {@return how sure the verdict is, 0 to 1; for "cannot tell" the chance to be above} */
    public double certainty() {
        return verdict == Verdict.BELOW_THE_LINE ? 1 - probabilityAbove : probabilityAbove;
    }
}
