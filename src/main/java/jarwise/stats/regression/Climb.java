package jarwise.stats.regression;

import java.util.Optional;

/**
 * Newton's way up the likelihood, in the coefficients and ln k together, with steps that are halved
 * where they lead down. At a given k the likelihood has one top only; along k it may have several,
 * and Poisson may be one of them, so {@link #highest} starts from more than one place.
 */
final class Climb {

    private static final int MOST_STEPS = 200;
    private static final double DECREMENT = 1e-11;

    /** Near enough to see whether counts scatter more than Poisson counts. */
    private static final double ROUGHLY = 1e-3;

    /** Above this share of the individuals a rough look is enough to say that they do. */
    private static final double CLEARLY = 0.01;

    private static final double FARTHEST_STEP_IN_LOG_K = 2;

    /** ln k beyond which counts of any size are Poisson counts. */
    private static final double LARGEST_LOG_K = 20;

    private static final double SMALLEST_LOG_K = -20;
    private static final double[] OTHER_STARTS = {0.05, 1, 20};

    /** Designs of up to this many cells are searched from every start. */
    private static final int FEW_CELLS = 20_000;

    /** From so many cells on it pays to look at a part first. */
    private static final int MANY_CELLS = 100_000;

    private final Design design;
    private final LikelihoodPass pass;

    Climb(Design design) {
        this.design = design;
        this.pass = new LikelihoodPass(design);
    }

    /** {@return the top of Poisson counts} */
    Maximum poisson() {
        return atK(start(), Double.POSITIVE_INFINITY);
    }

    /** {@return the highest of all tops; of many cells a part shows which of them it is} */
    Maximum highest() {
        if (design.cells() > MANY_CELLS) {
            Optional<Maximum> top = fromAPart();
            if (top.isPresent()) {
                return top.get();
            }
        }
        return highestFromScratch();
    }

    private Optional<Maximum> fromAPart() {
        return design.part(design.cells() / FEW_CELLS + 1)
                .map(part -> new Climb(part).highestFromScratch())
                .filter(top -> top.converged() && top.k() < Double.POSITIVE_INFINITY)
                .map(top -> near(top.coefficients(), top.k()))
                .filter(top -> top.converged() && top.k() < Double.POSITIVE_INFINITY);
    }

    private Maximum highestFromScratch() {
        Maximum poisson = atK(start(), Double.POSITIVE_INFINITY, ROUGHLY);
        double slope = pass.slopeAtPoisson(poisson.coefficients());
        if (slope < CLEARLY * design.allIndividuals()) {
            poisson = atK(poisson.coefficients(), Double.POSITIVE_INFINITY);
            slope = pass.slopeAtPoisson(poisson.coefficients());
        }
        Maximum best = poisson;
        if (slope > 1e-12 * design.allIndividuals()) {
            best = higher(best, from(poisson.coefficients(), momentK(poisson, slope)));
        }
        if (design.cells() <= FEW_CELLS) {
            for (double k : OTHER_STARTS) {
                best = higher(best, from(best.coefficients(), k));
            }
        }
        return best;
    }

    private static Maximum higher(Maximum one, Maximum other) {
        return other.converged() && other.logLikelihood() > one.logLikelihood() ? other : one;
    }

    /** Σ mean² over what the squares are more than Poisson. */
    private double momentK(Maximum poisson, double slope) {
        double squares = 0;
        for (int cell = 0; cell < design.cells(); cell++) {
            double mean = Math.exp(design.logMean(cell, poisson.coefficients()));
            squares += design.samples()[cell] * mean * mean;
        }
        return Math.max(0.01, Math.min(1e6, squares / (2 * slope)));
    }

    /** {@return the top near a place, k following; Poisson where k runs away} */
    Maximum near(double[] coefficients, double k) {
        Maximum best = k < Double.POSITIVE_INFINITY ? from(coefficients, k) : atK(coefficients, k);
        if (k < Double.POSITIVE_INFINITY && best.k() < Double.POSITIVE_INFINITY) {
            return best;
        }
        double slope = pass.slopeAtPoisson(best.coefficients());
        return slope > 1e-12 * design.allIndividuals()
                ? higher(best, from(best.coefficients(), momentK(best, slope)))
                : best;
    }

    /** {@return the only top at a k} */
    Maximum atK(double[] coefficients, double k) {
        return atK(coefficients, k, DECREMENT);
    }

    private Maximum atK(double[] coefficients, double k, double decrement) {
        double[] at = coefficients;
        LikelihoodPass.Sums sums = pass.at(at, k);
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] move = solved(sums.observed(), sums.slope());
            boolean last = product(move, sums.slope()) < decrement;
            Point next = walk(at, Math.log(k), move, 0, sums);
            at = next.coefficients();
            sums = next.sums();
            if (last) {
                return new Maximum(at, k, sums, true);
            }
        }
        return new Maximum(at, k, sums, false);
    }

    @SuppressWarnings("ArrayRecordComponent") // made once, read in the innermost loops
    private record Point(double[] coefficients, double logK, LikelihoodPass.Sums sums) {}

    private Maximum from(double[] coefficients, double k) {
        Point at = new Point(coefficients, Math.log(k), pass.at(coefficients, k));
        for (int step = 0; step < MOST_STEPS; step++) {
            if (at.logK() >= LARGEST_LOG_K || at.logK() <= SMALLEST_LOG_K) {
                return atK(at.coefficients(), Double.POSITIVE_INFINITY);
            }
            Step move = step(at.sums());
            boolean last = move.concave() && move.decrement() < DECREMENT;
            at = walk(at.coefficients(), at.logK(), move.coefficients(), move.logK(), at.sums());
            if (last) {
                return new Maximum(at.coefficients(), Math.exp(at.logK()), at.sums(), true);
            }
        }
        return new Maximum(at.coefficients(), Math.exp(at.logK()), at.sums(), false);
    }

    @SuppressWarnings("ArrayRecordComponent") // made once, read in the innermost loops
    private record Step(double[] coefficients, double logK, double decrement, boolean concave) {}

    /** Where the likelihood bends up along k, its slope says where to go, not its curvature. */
    private static Step step(LikelihoodPass.Sums sums) {
        double[] alone = solved(sums.observed(), sums.slope());
        double[] shift = solved(sums.observed(), sums.cross());
        double slope = sums.slopeInLogK() + product(shift, sums.slope());
        double bend = -sums.curvatureInLogK() - product(shift, sums.cross());
        boolean concave = bend > 0;
        double wanted = concave ? slope / bend : Math.signum(slope) * FARTHEST_STEP_IN_LOG_K;
        double logK = Math.max(-FARTHEST_STEP_IN_LOG_K, Math.min(FARTHEST_STEP_IN_LOG_K, wanted));
        double[] move = new double[alone.length];
        for (int j = 0; j < move.length; j++) {
            move[j] = alone[j] + logK * shift[j];
        }
        return new Step(move, logK, product(alone, sums.slope()) + slope * logK, concave);
    }

    /** Halves the step until it does not lead down by more than rounding. */
    private Point walk(
            double[] coefficients,
            double logK,
            double[] move,
            double moveK,
            LikelihoodPass.Sums at) {
        double least = at.logLikelihood() - 1e-11 * Math.max(1, Math.abs(at.logLikelihood()));
        double share = 1;
        Point next = moved(coefficients, logK, move, moveK, share);
        for (int halving = 0; halving < 40; halving++) {
            if (next.sums().logLikelihood() >= least) {
                return next;
            }
            share /= 2;
            next = moved(coefficients, logK, move, moveK, share);
        }
        return new Point(coefficients, logK, at);
    }

    private Point moved(
            double[] coefficients, double logK, double[] move, double moveK, double share) {
        double[] next = new double[coefficients.length];
        for (int j = 0; j < next.length; j++) {
            next[j] = coefficients[j] + share * move[j];
        }
        double nextK = logK + share * moveK;
        return new Point(next, nextK, pass.at(next, Math.exp(nextK)));
    }

    /** Coefficients that fit the logarithms of the counts: a place to start from. */
    private double[] start() {
        int p = design.columns();
        double[][] squares = new double[p][p];
        double[] right = new double[p];
        for (int cell = 0; cell < design.cells(); cell++) {
            double weight = design.individuals()[cell] + 0.5;
            double log = Math.log(weight / design.samples()[cell]) - design.offset()[cell];
            for (int i = 0; i < p; i++) {
                double x = weight * design.rows()[cell * p + i];
                right[i] += x * log;
                for (int j = 0; x != 0 && j < p; j++) {
                    squares[i][j] += x * design.rows()[cell * p + j];
                }
            }
        }
        return solved(squares, right);
    }

    private static double[] solved(double[][] matrix, double[] right) {
        return new SymmetricSystem(matrix).solve(right);
    }

    private static double product(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
