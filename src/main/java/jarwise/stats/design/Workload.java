package jarwise.stats.design;

import jarwise.base.Require;

/**
 * How many minutes does a round take, and how many places in the freezer?
 *
 * <p>minutes = samples · (cut + wash + read). Reading takes by far the longest and differs from
 * reader to reader: give this reader's own measured speed.
 *
 * @param cutMinutes to cut one sample, 0 or more
 * @param washMinutes to wash and filter one sample, 0 or more
 * @param readMinutes to read one filter, 0 or more
 * @param freezerPlacesPerSample places one filter takes, 0 or more
 */
public record Workload(
        double cutMinutes, double washMinutes, double readMinutes, double freezerPlacesPerSample) {

    /** Checks the numbers. */
    public Workload {
        Require.notNegative("cutMinutes", cutMinutes);
        Require.notNegative("washMinutes", washMinutes);
        Require.notNegative("readMinutes", readMinutes);
        Require.notNegative("freezerPlacesPerSample", freezerPlacesPerSample);
    }

    /**
     * Minutes for a round.
     *
     * @param samples samples, 0 or more
     * @return minutes of work in all
     * @throws jarwise.base.InvalidInput if the number is negative
     */
    public double minutes(long samples) {
        return Require.atLeast("samples", samples, 0) * (cutMinutes + washMinutes + readMinutes);
    }

    /**
     * Minutes of a round that are spent at the microscope.
     *
     * @param samples samples, 0 or more
     * @return minutes
     * @throws jarwise.base.InvalidInput if the number is negative
     */
    public double readingMinutes(long samples) {
        return Require.atLeast("samples", samples, 0) * readMinutes;
    }

    /**
     * Places that a round takes in the freezer.
     *
     * @param samples samples, 0 or more
     * @return whole places
     * @throws jarwise.base.InvalidInput if the number is negative
     */
    public long freezerPlaces(long samples) {
        return (long) Math.ceil(Require.atLeast("samples", samples, 0) * freezerPlacesPerSample);
    }
}
