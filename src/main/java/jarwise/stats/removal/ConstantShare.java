package jarwise.stats.removal;

/**
 * The likelihood of the total if every wash brings off the same share, which is fitted: p = T/(s N
 * − X).
 *
 * <pre>
 *   ln N! − ln (N − T)! + T ln p + (s N − X − T) ln(1 − p)
 * </pre>
 *
 * @param washes how many washes, s
 * @param caught individuals that came off, T
 * @param washesAfter X
 */
record ConstantShare(int washes, long caught, long washesAfter) implements TotalLikelihood {

    static ConstantShare of(RemovalCatches catches) {
        return new ConstantShare(catches.washes(), catches.total(), catches.washesAfter());
    }

    @Override
    public double at(double total) {
        double exposed = washes * total - washesAfter;
        double withstood = exposed - caught;
        double share = caught / exposed;
        double rest = withstood > 0 ? withstood * Math.log1p(-share) : 0;
        double came = caught > 0 ? caught * Math.log(share) : 0;
        return TotalLikelihood.logWays(total, caught) + came + rest;
    }

    @Override
    public double slope(double total) {
        if (caught == 0) {
            return 0;
        }
        double share = caught / (washes * total - washesAfter);
        return TotalLikelihood.slopeOfLogWays(total, caught) + washes * Math.log1p(-share);
    }

    @Override
    public double limit() {
        return caught > 0 ? caught * Math.log((double) caught / washes) - caught : 0;
    }

    /** The likelihood minus its limit is this number over 2 s N, and smaller terms. */
    double approach() {
        return caught * (2.0 * washesAfter - (double) washes * (caught - 1) + caught);
    }

    @Override
    public boolean hasMaximum() {
        return approach() > 0;
    }

    @Override
    public double least() {
        return caught;
    }
}
