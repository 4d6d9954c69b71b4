package jarwise.stats.efficacy;

/**
 * An even grid of changes in ln density.
 *
 * @param origin one of its points
 * @param step distance of neighbours, above 0
 */
record ChangeGrid(double origin, double step) {}
