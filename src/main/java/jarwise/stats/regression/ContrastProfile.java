package jarwise.stats.regression;

import java.util.OptionalDouble;

/**
 * How far the likelihood falls as one linear combination of the coefficients moves away from its
 * most likely value, while the others and k follow to where it is best.
 */
final class ContrastProfile {

    private static final double FARTHEST = 60;
    private static final double CLOSE = 1e-9;
    private static final int MOST_STEPS = 80;

    private final Maximum top;
    private final HeldContrast held;
    private final LikelihoodPass pass;
    private final double value;
    private final double scale;

    /**
     * Begins at the top.
     *
     * @param scale standard error of the combination, or 1 where it has none
     */
    ContrastProfile(Design design, Maximum top, double[] contrast, double scale) {
        this.top = top;
        this.held = new HeldContrast(design, contrast);
        this.pass = new LikelihoodPass(design);
        double sum = 0;
        for (int j = 0; j < contrast.length; j++) {
            sum += contrast[j] * top.coefficients()[j];
        }
        this.value = sum;
        this.scale = scale;
    }

    private record Point(double value, double deviance, double slope, Maximum others) {}

    /** {@return the highest log-likelihood with the combination at a value} */
    double logLikelihood(double at) {
        return new Climb(held.at(at)).highest().logLikelihood();
    }

    private Maximum climbed(double at, double[] others, double k) {
        return new Climb(held.at(at)).near(others, k);
    }

    /** {@return where twice the fall reaches a cut} */
    ProfileLimits limits(double cut) {
        return new ProfileLimits(crossing(cut, -1), crossing(cut, 1));
    }

    /**
     * Newton's way on the root of the deviance, which is nearly straight, kept between points known
     * to lie on either side of the cut.
     */
    private OptionalDouble crossing(double cut, int direction) {
        double root = Math.sqrt(cut);
        double inside = value;
        double outside = Double.NaN;
        double at = value + direction * root * scale;
        Maximum from = top;
        double[] others = held.others(top.coefficients());
        for (int step = 0; step < MOST_STEPS; step++) {
            Point here = point(at, others, from.k());
            from = here.others();
            others = from.coefficients();
            double fall = Math.sqrt(Math.max(0, here.deviance()));
            if (Math.abs(fall - root) < CLOSE * root) {
                return OptionalDouble.of(at);
            }
            if (fall < root) {
                inside = at;
            } else {
                outside = at;
            }
            if (Double.isNaN(outside) && Math.abs(inside - value) >= FARTHEST) {
                return OptionalDouble.empty();
            }
            if (Math.abs(outside - inside) < 1e-13 * (1 + Math.abs(at))) {
                return OptionalDouble.of(at);
            }
            at = next(here, root - fall, fall, new double[] {inside, outside}, direction);
        }
        return OptionalDouble.empty();
    }

    private double next(Point here, double missing, double fall, double[] ends, int direction) {
        double rise = -here.slope() / Math.max(fall, 1e-8);
        double newton = here.value() + missing / rise;
        double inside = ends[0];
        double outside = ends[1];
        if (Double.isNaN(outside)) {
            double reach = Math.max(scale, Math.abs(inside - value));
            double farthest = inside + direction * Math.min(2 * reach, 10);
            boolean ahead = direction * (newton - inside) > 0;
            boolean tooFar = direction * (newton - farthest) > 0;
            return ahead && !tooFar ? newton : farthest;
        }
        boolean between = (newton - inside) * (newton - outside) < 0;
        return between ? newton : 0.5 * (inside + outside);
    }

    private Point point(double at, double[] others, double k) {
        Maximum climbed = climbed(at, others, k);
        double[] all = held.all(climbed.coefficients(), at);
        double slope = held.slope(pass.at(all, climbed.k()).slope());
        double deviance = 2 * (top.logLikelihood() - climbed.logLikelihood());
        return new Point(at, deviance, slope, climbed);
    }
}
