package jarwise.stats.removal;

import jarwise.base.Require;

/** How the total is estimated from repeat washes. */
public enum RemovalMethod {
    /** The continuous likelihood with its profile limits: the one to use. */
    ML {
        @Override
        RemovalEstimate estimated(RemovalCatches catches, double confidenceLevel) {
            return MaximumLikelihoodRemoval.estimate(catches, confidenceLevel);
        }
    },
    /** The large-sample form, with a standard error. */
    ZIPPIN {
        @Override
        RemovalEstimate estimated(RemovalCatches catches, double confidenceLevel) {
            return ZippinRemoval.estimate(catches, confidenceLevel);
        }
    },
    /** Weighted by a flat expectation of the share: always finite. */
    CARLE_STRUB {
        @Override
        RemovalEstimate estimated(RemovalCatches catches, double confidenceLevel) {
            return CarleStrubRemoval.estimate(catches, confidenceLevel);
        }
    },
    /** The closed formula for exactly two washes. */
    TWO_PASS {
        @Override
        RemovalEstimate estimated(RemovalCatches catches, double confidenceLevel) {
            return TwoPassRemoval.seber(catches, confidenceLevel);
        }
    };

    abstract RemovalEstimate estimated(RemovalCatches catches, double confidenceLevel);

    /**
     * How many were on the material before the first wash, and what share comes off in one wash?
     *
     * <p><b>Assumes</b> that every individual has the same chance in every wash and that nothing
     * comes or goes between the washes. Where the chance falls from wash to wash, as it does when
     * some sit in buds, the total is too low and the share too high; see {@link FirstWashTest}.
     *
     * <p>The formula and source stand at the class of each method. They differ for the same washes
     * (165, 101, 54: continuous likelihood 394.5, large-sample form 397.3, Carle and Strub 393).
     *
     * @param catches what came off, wash by wash
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return the estimate; one that says {@code finite} false where the method has none
     * @throws jarwise.base.InvalidInput if the level is out of range, or {@link #TWO_PASS} is asked
     *     for other than two washes
     */
    public RemovalEstimate estimate(RemovalCatches catches, double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        return estimated(catches, confidenceLevel);
    }

    /** {@return the share that comes off in one wash if there were so many} */
    static double share(RemovalCatches catches, double total) {
        double exposed = catches.washes() * total - catches.washesAfter();
        return catches.total() / exposed;
    }
}
