package jarwise.stats.filter;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * From how many individuals on a whole filter the verdict of its round is another, the other
 * samples of the round as they are.
 *
 * @param belowFrom the verdict is below the line with so many or more, up to {@code below}; mostly
 *     0, but where none is found at all the estimate is more careful than where one is
 * @param below the verdict is below the line with so many or fewer; empty if with no number
 * @param above the verdict is above the line with so many or more; empty if with no number
 */
public record FilterLimits(long belowFrom, OptionalLong below, OptionalLong above) {

    /** What the round may say. */
    public enum Verdict {
        BELOW,
        CANNOT_TELL,
        ABOVE
    }

    /** Checks that no number is both; throws {@link InvalidInput} if one is. */
    public FilterLimits {
        Require.atLeast("belowFrom", belowFrom, 0);
        if (belowFrom > below.orElse(Long.MAX_VALUE)) {
            throw new InvalidInput(
                    "belowFrom is %d; it must be at most the limit below, %d."
                            .formatted(belowFrom, below.getAsLong()));
        }
        if (below.isPresent() && above.isPresent() && below.getAsLong() >= above.getAsLong()) {
            throw new InvalidInput(
                    "The limit below is %d; it must be less than the limit above, %d."
                            .formatted(below.getAsLong(), above.getAsLong()));
        }
    }

    /**
     * The verdict that a round is most likely to have.
     *
     * @param verdict the likeliest
     * @param chanceOfOther chance that it is another once the filter is read, 0 to 1
     */
    public record Likely(Verdict verdict, double chanceOfOther) {}

    /**
     * Which verdict will the round have once this filter is read whole, and how likely is another?
     *
     * <p>The chance that the filter holds so many that the verdict is below the line, neither, or
     * above; the likeliest, and the sum of the two others. <b>Assumes</b> the other samples of the
     * round as they are.
     *
     * <p><b>Source.</b> Our own. Checked by hand-sized cases and by {@link
     * StopRules#chanceOfOtherVerdict}, which adds up number by number; {@code
     * testdata/partial/stop}.
     *
     * @param reading what the completed passes say
     * @return the likeliest verdict; of two as likely the lower
     */
    public Likely likely(PartialReading reading) {
        double isBelow =
                below.isPresent()
                        ? reading.chanceOfAtMost(below.getAsLong())
                                - reading.chanceOfAtMost(belowFrom - 1)
                        : 0;
        double isNotAbove = above.isPresent() ? reading.chanceOfAtMost(above.getAsLong() - 1) : 1;
        Likely likely = new Likely(Verdict.BELOW, 1 - isBelow);
        likely = likelier(likely, new Likely(Verdict.CANNOT_TELL, isBelow + (1 - isNotAbove)));
        return likelier(likely, new Likely(Verdict.ABOVE, isNotAbove));
    }

    /**
     * The chance that another decision follows once this filter is read whole, for {@link
     * StopRules#reason}.
     *
     * @param reading what the completed passes say
     * @param othersToRead filters of the same stand and round that wait to be read
     * @return that of {@link #likely}; empty where nothing is decided: no number on this filter
     *     brings a verdict, or it cannot be told and filters wait that could tell
     */
    public OptionalDouble chanceOfOtherDecision(PartialReading reading, int othersToRead) {
        Likely likely = likely(reading);
        boolean decides = below.isPresent() || above.isPresent();
        boolean waits = likely.verdict == Verdict.CANNOT_TELL && othersToRead > 0;
        return decides && !waits ? OptionalDouble.of(likely.chanceOfOther) : OptionalDouble.empty();
    }

    private static Likely likelier(Likely one, Likely other) {
        return other.chanceOfOther < one.chanceOfOther ? other : one;
    }
}
