package jarwise.stats.removal;

import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.special.Gamma;

/**
 * Whether the washes fall off as they would if every wash brought off the same share.
 *
 * @param statistic Pearson's chi-squared over the washes
 * @param degreesOfFreedom washes − 2
 * @param pValue chance of a statistic as large or larger if the share is the same in every wash;
 *     small means that it is not
 */
public record RemovalFit(double statistic, int degreesOfFreedom, double pValue) {

    /**
     * Do the washes fall off by one share, wash after wash?
     *
     * <pre>  Σ (caught − expected)² / expected,  expected in wash i = N p (1 − p)^(i − 1)</pre>
     *
     * <p>N and p are those of {@link ZippinRemoval}, whichever estimate is asked for, so that the
     * expected catches add up to those that came off. <b>Assumes</b> expected catches of about 5 or
     * more; with fewer the chance is rough, and errs either way.
     *
     * <p><b>Source.</b> Seber (1982), <i>The Estimation of Animal Abundance</i>, 7.2.3 (from
     * memory). Reference values: {@code reference/removal/zippin.csv}.
     *
     * @param catches what came off, wash by wash
     * @return the test; empty for two washes, which any share fits, and where the large-sample form
     *     has no estimate or all came off in the first wash
     */
    public static Optional<RemovalFit> of(RemovalCatches catches) {
        int washes = catches.washes();
        OptionalDouble share = ZippinRemoval.share(catches);
        if (washes == 2 || share.isEmpty() || share.getAsDouble() == 1) {
            return Optional.empty();
        }
        double p = share.getAsDouble();
        double expected = ZippinRemoval.total(catches, p) * p;
        double statistic = 0;
        for (long caught : catches.catches()) {
            statistic += (caught - expected) * (caught - expected) / expected;
            expected *= 1 - p;
        }
        double beyond = Gamma.regularizedGammaQ((washes - 2) / 2.0, statistic / 2);
        return Optional.of(new RemovalFit(statistic, washes - 2, beyond));
    }
}
