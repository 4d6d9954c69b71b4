package jarwise.stats.removal;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.numeric.BetaNodes;
import jarwise.stats.estimate.DetectionShare;

/**
 * What was found of a known number put into jars, and what its reader overlooks.
 *
 * @param found individuals found again, 0 to {@code known}
 * @param known individuals put in, 0 or more
 * @param sensitivity share of what is on the filter that the reader finds; known as 1 where what
 *     the reader overlooks is to be counted to the wash
 */
public record SpikeFinds(long found, long known, DetectionShare sensitivity) {

    /** A share overlooked changes the chance no faster than this on the scale ln s. */
    private static final double WIDEST = 0.5;

    private static final double TAIL = 1e-6;

    /** Checks both numbers. */
    public SpikeFinds {
        Require.atLeast("known", known, 0);
        if (!(found >= 0 && found <= known)) {
            throw new InvalidInput(
                    "found is %d of %d; it must be 0 to %d. Maybe the two numbers are swapped."
                            .formatted(found, known, known));
        }
    }

    private long missed() {
        return known - found;
    }

    /** A function ln(share washed off) to ln(chance of these finds), up to a constant. */
    LogChance logChance() {
        if (sensitivity instanceof DetectionShare.Measured measured && known > 0) {
            double a = measured.foundShape();
            double b = measured.missedShape();
            BetaNodes nodes = BetaNodes.of(a, b, finest(), TAIL);
            return logShare -> averaged(logShare, nodes);
        }
        double logSeen = Math.log(sensitivity.mean());
        return logShare -> logChance(logShare + logSeen);
    }

    /** Against the best chance that any reader has, so that nothing is too small to add up. */
    private double averaged(double logShare, BetaNodes nodes) {
        double best = logChance(Math.min(logShare, Math.log((found + 0.5) / (known + 1.0))));
        double average = nodes.average(logSeen -> Math.exp(logChance(logShare + logSeen) - best));
        return best + Math.log(Math.max(Double.MIN_VALUE, average));
    }

    private double logChance(double logFound) {
        return found * logFound + missed() * logRest(logFound);
    }

    /** ln(1 − e^x) for x below 0; a share of 1 leaves next to nothing rather than nothing. */
    private static double logRest(double x) {
        return Math.log(Math.max(Double.MIN_NORMAL, -Math.expm1(x)));
    }

    private double finest() {
        return Math.min(WIDEST, Math.sqrt((missed() + 0.5) / ((found + 0.5) * (known + 1.0))));
    }

    /** Logarithm of a chance, by the logarithm of the share that is washed off. */
    interface LogChance {
        double at(double logShare);
    }
}
