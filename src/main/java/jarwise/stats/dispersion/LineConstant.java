package jarwise.stats.dispersion;

/**
 * Intercept or slope of a line.
 *
 * @param estimate least-squares value
 * @param standardError its standard error, 0 or more
 * @param lower lower limit, 95 %, Student's t
 * @param upper upper limit
 */
public record LineConstant(double estimate, double standardError, double lower, double upper) {

    static LineConstant of(double estimate, double standardError, double t) {
        double half = t * standardError;
        return new LineConstant(estimate, standardError, estimate - half, estimate + half);
    }
}
