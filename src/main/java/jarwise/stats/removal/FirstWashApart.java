package jarwise.stats.removal;

import java.util.OptionalDouble;

/**
 * The likelihood of the total if the first wash has a share of its own, both shares fitted: the
 * binomial probability of the first catch, times {@link ConstantShare} for what it left.
 *
 * @param first individuals in the first wash
 * @param later the washes after it, as if they were all
 */
record FirstWashApart(long first, ConstantShare later) implements TotalLikelihood {

    static FirstWashApart of(RemovalCatches catches) {
        return new FirstWashApart(
                catches.first(),
                new ConstantShare(
                        catches.washes() - 1,
                        catches.total() - catches.first(),
                        catches.washesAfter() - (catches.washes() - 1) * catches.first()));
    }

    @Override
    public double at(double total) {
        double left = total - first;
        double came = first > 0 ? first * Math.log(first / total) : 0;
        double stayed = left > 0 ? left * Math.log1p(-first / total) : 0;
        return TotalLikelihood.logWays(total, first) + came + stayed + later.at(left);
    }

    @Override
    public double slope(double total) {
        return TotalLikelihood.slopeOfLogWays(total, first)
                + Math.log1p(-first / total)
                + later.slope(total - first);
    }

    @Override
    public double limit() {
        double came = first > 0 ? first * Math.log((double) first) - first : 0;
        return came + later.limit();
    }

    @Override
    public boolean hasMaximum() {
        return later.washes() * (double) first + later.approach() > 0;
    }

    @Override
    public double least() {
        return first + later.caught();
    }

    OptionalDouble laterShare(OptionalDouble total) {
        if (total.isEmpty() || later.caught() == 0) {
            return OptionalDouble.empty();
        }
        double exposed = later.washes() * (total.getAsDouble() - first) - later.washesAfter();
        return OptionalDouble.of(later.caught() / exposed);
    }
}
