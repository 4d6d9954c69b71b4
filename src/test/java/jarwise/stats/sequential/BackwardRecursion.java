package jarwise.stats.sequential;

import jarwise.numeric.NegativeBinomial;

/**
 * The same outcome by another way: from the last sample back, what is to be expected of each
 * cumulative count, by the rule of the lines and plain probabilities.
 */
final class BackwardRecursion {

    private BackwardRecursion() {}

    /** Chance of below, chance of undecided, expected number of samples. */
    static double[] outcome(SequentialPlan plan, double density) {
        StopLines lines = plan.lines();
        int top = (int) lines.stopAbove(plan.maxSamples()) + 1;
        double[][] value = new double[top][];
        for (int count = 0; count < top; count++) {
            value[count] = ended(lines, plan.maxSamples(), count);
        }
        double[] chance = chances(plan, density, top);
        for (int n = plan.maxSamples() - 1; n >= 0; n--) {
            double[][] earlier = new double[top][];
            for (int count = 0; count < top; count++) {
                boolean over = n >= 1 && lines.step(n, count) != SequentialStep.CONTINUE;
                earlier[count] =
                        over ? ended(lines, n, count) : ahead(lines, value, chance, n, count);
            }
            value = earlier;
        }
        return value[0];
    }

    private static double[] ended(StopLines lines, int n, int count) {
        SequentialStep step = lines.step(n, count);
        return new double[] {
            step == SequentialStep.BELOW ? 1 : 0, step == SequentialStep.SAMPLED_OUT ? 1 : 0, n
        };
    }

    private static double[] ahead(
            StopLines lines, double[][] value, double[] chance, int n, int count) {
        double[] sum = new double[3];
        double left = 1;
        for (int y = 0; count + y < value.length; y++) {
            for (int i = 0; i < 3; i++) {
                sum[i] += chance[y] * value[count + y][i];
            }
            left -= chance[y];
        }
        sum[2] += left * Math.max(n + 1, lines.minSamples());
        return sum;
    }

    private static double[] chances(SequentialPlan plan, double density, int top) {
        double[] chance = new double[top];
        if (plan.design().model() instanceof CountedSamples counted) {
            NegativeBinomial sample =
                    new NegativeBinomial(plan.design().unitsPerSample() * density, counted.k());
            for (int y = 0; y < top; y++) {
                chance[y] = sample.probability(y);
            }
        } else {
            chance[0] = 1 - density;
            chance[1] = density;
        }
        return chance;
    }
}
