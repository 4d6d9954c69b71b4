package jarwise.stats.regression;

/**
 * A design with one linear combination of its coefficients held at a value: the coefficient that
 * weighs most in it is expressed by the others.
 */
final class HeldContrast {

    private final Design design;
    private final double[] contrast;
    private final int pivot;
    private final double[] rows;
    private final double[] lift;

    HeldContrast(Design design, double[] contrast) {
        this.design = design;
        this.contrast = contrast.clone();
        this.pivot = heaviest(contrast);
        int p = design.columns();
        rows = new double[design.cells() * (p - 1)];
        lift = new double[design.cells()];
        for (int cell = 0; cell < lift.length; cell++) {
            lift[cell] = design.rows()[cell * p + pivot] / contrast[pivot];
            for (int j = 0, to = 0; j < p; j++) {
                if (j != pivot) {
                    rows[cell * (p - 1) + to++] =
                            design.rows()[cell * p + j] - contrast[j] * lift[cell];
                }
            }
        }
    }

    private static int heaviest(double[] contrast) {
        int heaviest = 0;
        for (int j = 1; j < contrast.length; j++) {
            if (Math.abs(contrast[j]) > Math.abs(contrast[heaviest])) {
                heaviest = j;
            }
        }
        return heaviest;
    }

    /** {@return the design of the other coefficients when the combination has this value} */
    Design at(double value) {
        double[] offset = new double[lift.length];
        for (int cell = 0; cell < offset.length; cell++) {
            offset[cell] = design.offset()[cell] + value * lift[cell];
        }
        return design.with(design.columns() - 1, rows, offset);
    }

    /** {@return the other coefficients of all} */
    double[] others(double[] all) {
        double[] others = new double[all.length - 1];
        for (int j = 0, to = 0; j < all.length; j++) {
            if (j != pivot) {
                others[to++] = all[j];
            }
        }
        return others;
    }

    /** {@return all coefficients, from the others and the value} */
    double[] all(double[] others, double value) {
        double[] all = new double[others.length + 1];
        double rest = value;
        for (int j = 0, from = 0; j < all.length; j++) {
            if (j != pivot) {
                all[j] = others[from++];
                rest -= contrast[j] * all[j];
            }
        }
        all[pivot] = rest / contrast[pivot];
        return all;
    }

    /** {@return slope of the highest likelihood along the value, from all slopes} */
    double slope(double[] slopes) {
        return slopes[pivot] / contrast[pivot];
    }
}
