package jarwise.stats.subsample;

/**
 * A figure and how sure it is.
 *
 * @param estimate the figure, 0 or more
 * @param standardError its standard error, 0 or more
 */
public record TwoStageTotal(double estimate, double standardError) {}
