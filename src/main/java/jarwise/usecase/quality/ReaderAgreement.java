package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.stats.agreement.AgreementScale;
import jarwise.stats.agreement.Concordance;
import jarwise.stats.agreement.CountPair;
import jarwise.stats.agreement.CountingBand;
import jarwise.stats.agreement.LimitsOfAgreement;
import jarwise.stats.count.FoundShare;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Two readers who counted the same filters.
 *
 * @param one the reader whose counts come first in each pair
 * @param other the reader whose counts come second
 * @param subject which animals
 * @param pairs filters that both counted and on which either found any
 * @param empty filters on which neither found any: they say nothing about either
 * @param ratio what the other finds for each one that the first finds
 * @param limits on the square-root scale; empty for fewer than two pairs
 * @param concordance on the square-root scale; empty where it does not exist
 * @param outsideBand pairs farther apart than chance brings two readers with these sensitivities;
 *     empty where they are not measured
 */
public record ReaderAgreement(
        String one,
        String other,
        Subject subject,
        List<CountPair> pairs,
        int empty,
        Optional<Ratio> ratio,
        Optional<LimitsOfAgreement> limits,
        Optional<Concordance> concordance,
        OptionalInt outsideBand) {

    private static final double LEVEL = EnoughReadings.LEVEL;

    /**
     * How many times as many.
     *
     * @param estimate the other's total over the first's, each with half an animal more
     * @param lower lower limit
     * @param upper upper limit
     */
    public record Ratio(double estimate, double lower, double upper) {

        /**
         * Given what both found together, the other's part is a share with Jeffreys' prior; its
         * limits are those of the ratio. Both saw the same insects, so chance moves the ratio less
         * than that: the limits are on the wide side.
         */
        static Ratio of(long one, long other) {
            FoundShare share = FoundShare.of(other, one + other, LEVEL);
            return new Ratio(odds(share.estimate()), odds(share.lower()), odds(share.upper()));
        }

        private static double odds(double share) {
            return share / (1 - share);
        }
    }

    /** Who counted what. */
    record Key(Subject subject, String one, String other) {}

    /** {@return what pairs say, the first reader's count first in each} */
    static ReaderAgreement of(Key key, List<CountPair> all, Optional<CountingBand> band) {
        List<CountPair> pairs =
                all.stream().filter(pair -> pair.first() + pair.second() > 0).toList();
        long one = pairs.stream().mapToLong(CountPair::first).sum();
        long other = pairs.stream().mapToLong(CountPair::second).sum();
        boolean enough = pairs.size() >= 2;
        return new ReaderAgreement(
                key.one(),
                key.other(),
                key.subject(),
                pairs,
                all.size() - pairs.size(),
                pairs.isEmpty() ? Optional.empty() : Optional.of(Ratio.of(one, other)),
                enough
                        ? Optional.of(LimitsOfAgreement.of(pairs, AgreementScale.SQRT, LEVEL))
                        : Optional.empty(),
                enough ? Concordance.of(pairs, AgreementScale.SQRT, LEVEL) : Optional.empty(),
                band.map(chance -> OptionalInt.of(chance.outside(pairs, AgreementScale.SQRT)))
                        .orElse(OptionalInt.empty()));
    }

    public ReaderAgreement {
        pairs = List.copyOf(pairs);
    }
}
