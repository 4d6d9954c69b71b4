package jarwise.stats.detect;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * Pools of the same size that were tested.
 *
 * @param poolSize units in each, 1 or more
 * @param pools how many pools, 1 or more
 * @param positivePools how many of them tested positive, 0 to {@code pools}
 */
public record PoolGroup(int poolSize, int pools, int positivePools) {

    /** Checks the numbers. */
    public PoolGroup {
        Require.atLeast("poolSize", poolSize, 1);
        Require.atLeast("pools", pools, 1);
        if (!(positivePools >= 0 && positivePools <= pools)) {
            throw new InvalidInput(
                    "positivePools is %d; it must be 0 to %d.".formatted(positivePools, pools));
        }
    }
}
