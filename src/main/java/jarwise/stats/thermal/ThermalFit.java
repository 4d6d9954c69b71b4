package jarwise.stats.thermal;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/**
 * Thermal constants drawn from times of development at several constant temperatures.
 *
 * @param constants T0 and K
 * @param rSquared share of the variance that the line takes up, 0 to 1
 */
public record ThermalFit(ThermalConstants constants, double rSquared) {

    /**
     * From which temperature on does a stage develop, and how much heat does it need?
     *
     * <p>Least squares of the rate 1/d on the temperature: 1/d = a + b T, T0 = −a/b, K = 1/b.
     *
     * <p>Assumes a straight line over the temperatures given; leave out those near T0 and in great
     * heat, where it bends.
     *
     * <p>Source: Campbell et al. (1974), J. Appl. Ecol. 11:431–438 (from memory); checked by
     * reference/thermal/fits.csv.
     *
     * @param celsius temperatures in °C, two different ones or more
     * @param days mean days of development at each, above 0
     * @return the constants; empty if development is not faster where it is warmer
     * @throws InvalidInput if the arrays do not fit together or all temperatures are the same
     */
    public static Optional<ThermalFit> leastSquares(double[] celsius, double[] days) {
        check(celsius, days);
        Line line = Line.of(celsius.length, i -> celsius[i], i -> 1 / days[i]);
        double slope = line.xy / line.xx;
        double intercept = line.meanY - slope * line.meanX;
        return slope > 0
                ? Optional.of(line.fit(new ThermalConstants(-intercept / slope, 1 / slope)))
                : Optional.empty();
    }

    /**
     * The same from the reduced major axis of d·T on d: d·T = K + T0 d, with T0 the ratio of the
     * two standard deviations. Errors of d then enter both sides, and slow development at low
     * temperatures weighs more.
     *
     * <p>Assumes as {@link #leastSquares}.
     *
     * <p>Source: Ikemoto and Takai (2000), Environ. Entomol. 29:671–682 (from memory); checked by
     * reference/thermal/fits.csv (own arithmetic).
     *
     * @param celsius temperatures in °C, two different ones or more
     * @param days mean days of development at each, above 0, not all the same
     * @return the constants; empty if the line gives no K above 0
     * @throws InvalidInput if the arrays do not fit together or all temperatures are the same
     */
    public static Optional<ThermalFit> reducedMajorAxis(double[] celsius, double[] days) {
        check(celsius, days);
        Line line = Line.of(celsius.length, i -> days[i], i -> days[i] * celsius[i]);
        double slope = Math.signum(line.xy) * Math.sqrt(line.yy / line.xx);
        double intercept = line.meanY - slope * line.meanX;
        return line.xx > 0 && intercept > 0
                ? Optional.of(line.fit(new ThermalConstants(slope, intercept)))
                : Optional.empty();
    }

    private static void check(double[] celsius, double[] days) {
        if (celsius.length != days.length || celsius.length < 2) {
            throw new InvalidInput(
                    ("There are %d temperatures and %d times; as many of one as of the other, and"
                                    + " two or more, are needed.")
                            .formatted(celsius.length, days.length));
        }
        boolean differ = false;
        for (int i = 0; i < days.length; i++) {
            Require.positive("a time of development", days[i]);
            Require.between("a temperature", celsius[i], -60, 100);
            differ |= celsius[i] != celsius[0];
        }
        if (!differ) {
            throw new InvalidInput(
                    "All temperatures are %s; two different ones are needed."
                            .formatted(celsius[0]));
        }
    }

    /** Sums of squares around the means of two variables. */
    private record Line(double meanX, double meanY, double xx, double xy, double yy) {

        static Line of(int number, IntToDoubleFunction x, IntToDoubleFunction y) {
            double meanX = 0;
            double meanY = 0;
            for (int i = 0; i < number; i++) {
                meanX += x.applyAsDouble(i) / number;
                meanY += y.applyAsDouble(i) / number;
            }
            double xx = 0;
            double xy = 0;
            double yy = 0;
            for (int i = 0; i < number; i++) {
                double dx = x.applyAsDouble(i) - meanX;
                double dy = y.applyAsDouble(i) - meanY;
                xx += dx * dx;
                xy += dx * dy;
                yy += dy * dy;
            }
            return new Line(meanX, meanY, xx, xy, yy);
        }

        ThermalFit fit(ThermalConstants constants) {
            // Points on a level line lie on it exactly, though they leave no variance to share.
            return new ThermalFit(constants, yy > 0 ? xy * xy / (xx * yy) : 1);
        }
    }
}
