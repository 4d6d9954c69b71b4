package jarwise.stats.thermal;

import jarwise.base.Require;

/**
 * A stage that not all individuals pass in the same time: the heat it takes is spread as an Erlang
 * distribution with mean K.
 *
 * @param constants T0 and mean degree-days of the stage
 * @param shape of the distribution, 1 or more; its standard deviation is the mean over √shape
 */
public record StageDelay(ThermalConstants constants, int shape) {

    /** Where no standard deviation is published: a quarter of the mean. Our choice. */
    public static final int STANDARD_SHAPE = 16;

    private static final int LARGEST_SHAPE = 1000;

    /**
     * Checks.
     *
     * @throws jarwise.base.InvalidInput if the shape is not from 1 to 1000
     */
    public StageDelay {
        Require.atLeast("the shape of a stage", shape, 1);
        Require.atLeast("1000 less the shape of a stage", LARGEST_SHAPE - (long) shape, 0);
    }

    /** {@return a stage with the standard shape} */
    public static StageDelay of(ThermalConstants constants) {
        return new StageDelay(constants, STANDARD_SHAPE);
    }

    /**
     * Which shape goes with a published mean and standard deviation?
     *
     * <p>(mean/standard deviation)², rounded, from 1 to 1000.
     *
     * <p>Source: mean and variance of the gamma distribution.
     *
     * @param mean mean time of the stage, above 0
     * @param standardDeviation its standard deviation between individuals, in the same unit, above
     *     0; not the standard error of the mean
     * @return the shape
     * @throws jarwise.base.InvalidInput if one of them is not above 0
     */
    public static int shapeOf(double mean, double standardDeviation) {
        Require.positive("the mean time of a stage", mean);
        Require.positive("the standard deviation of a stage", standardDeviation);
        double ratio = mean / standardDeviation;
        return (int) Math.max(1, Math.min(LARGEST_SHAPE, Math.rint(ratio * ratio)));
    }
}
