package jarwise.render.chart;

import jarwise.base.InvalidInput;
import jarwise.base.Require;

/**
 * Places positive values on a line so that equal ratios have equal lengths.
 *
 * @param from value at {@code start}; may be the greater one
 * @param to value at {@code end}
 * @param start position of {@code from}, px
 * @param end position of {@code to}, px
 */
record LogScale(double from, double to, double start, double end) {

    LogScale {
        Require.positive("start of the scale", from);
        Require.positive("end of the scale", to);
        if (from == to) {
            throw new InvalidInput("the scale runs from %s to %s".formatted(from, to));
        }
    }

    /** {@return the position of a value; values off the scale are held at its ends} */
    double at(double value) {
        if (!(value > 0)) {
            return from < to ? start : end;
        }
        double share = Math.log(value / from) / Math.log(to / from);
        return start + (end - start) * Math.min(1, Math.max(0, share));
    }

    /** {@return whether the value lies past {@code end}} */
    boolean pastEnd(double value) {
        return from < to ? value > to : value < to;
    }

    /** {@return whether the value lies before {@code start}} */
    boolean beforeStart(double value) {
        return from < to ? value < from : value > from;
    }
}
