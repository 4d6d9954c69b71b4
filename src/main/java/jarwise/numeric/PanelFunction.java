package jarwise.numeric;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A smooth function that is dear to evaluate, kept as Legendre series on panels: cheap to evaluate
 * again, to integrate up to any point, and to invert that integral.
 *
 * <p>Each panel takes the function at the 12 Gauss points and is halved until the last terms of its
 * series are small. The integral over a panel is then Gauss's rule, exact for polynomials of degree
 * 23. Outside its panels the function is 0.
 *
 * <p><b>Source.</b> Trefethen (2013), <i>Approximation Theory and Approximation Practice</i>, ch.
 * 17 and 19 (from memory); nodes and weights from Hipparchus.
 */
public final class PanelFunction {

    private static final int TERMS = 12;
    private static final int MOST_HALVINGS = 14;
    private static final double[] NODE = new double[TERMS];
    private static final double[][] TO_SERIES = new double[TERMS][TERMS];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(TERMS);
        for (int j = 0; j < TERMS; j++) {
            NODE[j] = rule.getPoint(j);
            double before = 0;
            double now = 1;
            for (int n = 0; n < TERMS; n++) {
                TO_SERIES[n][j] = (n + 0.5) * rule.getWeight(j) * now;
                double next = ((2 * n + 1) * NODE[j] * now - n * before) / (n + 1);
                before = now;
                now = next;
            }
        }
    }

    private double[] edges;
    private double[][] series;
    private int panels;
    private double[] upToEdge = {};
    private double[] fromEdge = {};

    private PanelFunction(int capacity) {
        edges = new double[capacity + 1];
        series = new double[capacity][];
    }

    /**
     * How near the panels must come: the last terms of a panel's series, times its width.
     *
     * @param tolerance largest such error where the function is 1 or more
     * @param floor height from 0 to 1 down to which the error must shrink with the function
     */
    public record Accuracy(double tolerance, double floor) {

        boolean isMet(double error, double height) {
            return error <= tolerance * Math.max(floor, Math.min(1, height));
        }
    }

    /**
     * Takes a function on panels.
     *
     * @param function smooth inside each panel
     * @param edges panel edges to start with, rising, at least 2
     * @param accuracy how near; absolute, so give a small share of the integral expected
     * @return the function on these panels, or on halves of them where it needs them
     */
    public static PanelFunction of(
            DoubleUnaryOperator function, double[] edges, Accuracy accuracy) {
        PanelFunction result = new PanelFunction(edges.length * 2);
        result.edges[0] = edges[0];
        for (int i = 1; i < edges.length; i++) {
            result.add(function, edges[i - 1], edges[i], accuracy, MOST_HALVINGS);
        }
        result.addUp();
        return result;
    }

    private void add(
            DoubleUnaryOperator function, double from, double to, Accuracy accuracy, int halvings) {
        double[] terms = seriesOf(function, from, to);
        double last = Math.abs(terms[TERMS - 1]) + Math.abs(terms[TERMS - 2]);
        if (halvings > 0 && !accuracy.isMet(last * (to - from), Math.abs(terms[0]))) {
            double middle = 0.5 * (from + to);
            add(function, from, middle, accuracy, halvings - 1);
            add(function, middle, to, accuracy, halvings - 1);
            return;
        }
        if (panels == series.length) {
            edges = Arrays.copyOf(edges, 2 * panels + 1);
            series = Arrays.copyOf(series, 2 * panels);
        }
        series[panels] = terms;
        edges[panels + 1] = to;
        panels++;
    }

    /** From both ends, so that neither tail is lost beside the middle. */
    private void addUp() {
        upToEdge = new double[panels + 1];
        fromEdge = new double[panels + 1];
        for (int i = 0; i < panels; i++) {
            upToEdge[i + 1] = upToEdge[i] + whole(i);
        }
        for (int i = panels - 1; i >= 0; i--) {
            fromEdge[i] = fromEdge[i + 1] + whole(i);
        }
    }

    private double whole(int panel) {
        return series[panel][0] * (edges[panel + 1] - edges[panel]);
    }

    private static double[] seriesOf(DoubleUnaryOperator function, double from, double to) {
        double centre = 0.5 * (from + to);
        double half = 0.5 * (to - from);
        double[] terms = new double[TERMS];
        for (int j = 0; j < TERMS; j++) {
            double value = function.applyAsDouble(centre + half * NODE[j]);
            for (int n = 0; n < TERMS; n++) {
                terms[n] += TO_SERIES[n][j] * value;
            }
        }
        return terms;
    }

    /** {@return how many panels there are} */
    public int panels() {
        return panels;
    }

    /**
     * Where panels meet.
     *
     * @param i 0 for the start of the first panel, {@link #panels()} for the end of the last
     * @return that edge
     */
    public double edge(int i) {
        return edges[i];
    }

    /**
     * A height that the function does not exceed in a panel.
     *
     * @param panel from 0
     * @return at least its largest value there
     */
    public double bound(int panel) {
        double sum = 0;
        for (double term : series[panel]) {
            sum += Math.abs(term);
        }
        return sum;
    }

    /** {@return where the first panel starts} */
    public double start() {
        return edges[0];
    }

    /** {@return where the last panel ends} */
    public double end() {
        return edges[panels];
    }

    /**
     * The function at a point.
     *
     * @param x any number
     * @return its value; 0 outside the panels
     */
    public double value(double x) {
        if (!(x >= edges[0] && x <= edges[panels])) {
            return 0;
        }
        return value(panelAt(x), x);
    }

    /** The same, of a point known to lie in that panel. */
    double value(int panel, double x) {
        double[] terms = series[panel];
        double at = position(panel, x);
        double before = 1;
        double now = at;
        double sum = terms[0] + terms[1] * at;
        for (int n = 2; n < TERMS; n++) {
            double next = ((2 * n - 1) * at * now - (n - 1) * before) / n;
            sum += terms[n] * next;
            before = now;
            now = next;
        }
        return sum;
    }

    /** {@return the integral over all panels} */
    public double integral() {
        return upToEdge[panels];
    }

    /**
     * The integral from the start up to a point.
     *
     * @param x any number
     * @return 0 before the start, {@link #integral()} after the end
     */
    public double integralUpTo(double x) {
        if (x <= edges[0]) {
            return 0;
        }
        if (x >= edges[panels]) {
            return integral();
        }
        int panel = panelAt(x);
        return upToEdge[panel] + partOf(panel, x);
    }

    /**
     * The integral from a point to the end.
     *
     * @param x any number
     * @return {@link #integral()} before the start, 0 after the end
     */
    public double integralFrom(double x) {
        if (x <= edges[0]) {
            return integral();
        }
        if (x >= edges[panels]) {
            return 0;
        }
        int panel = panelAt(x);
        return fromEdge[panel + 1] + whole(panel) - partOf(panel, x);
    }

    /**
     * The point up to which the integral has a given value.
     *
     * @param target between 0 and {@link #integral()}; the function must be positive around there
     * @return a point between start and end
     */
    public double inverseIntegral(double target) {
        int panel = 0;
        while (panel < panels - 1 && upToEdge[panel + 1] <= target) {
            panel++;
        }
        return inPanel(panel, target - upToEdge[panel]);
    }

    /**
     * The point from which on the integral has a given value; keeps its digits where that is small.
     *
     * @param target between 0 and {@link #integral()}; the function must be positive around there
     * @return a point between start and end
     */
    public double inverseIntegralFrom(double target) {
        int panel = panels - 1;
        while (panel > 0 && fromEdge[panel] <= target) {
            panel--;
        }
        return inPanel(panel, whole(panel) - (target - fromEdge[panel + 1]));
    }

    private double inPanel(int panel, double part) {
        double low = edges[panel];
        double high = edges[panel + 1];
        if (!(part > 0)) {
            return low;
        }
        double all = whole(panel);
        return part < all ? Roots.between(x -> (partOf(panel, x) - part) / all, low, high) : high;
    }

    private int panelAt(double x) {
        int found = Arrays.binarySearch(edges, 0, panels + 1, x);
        int panel = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(panel, panels - 1));
    }

    private double position(int panel, double x) {
        double width = edges[panel + 1] - edges[panel];
        return (2 * x - edges[panel] - edges[panel + 1]) / width;
    }

    /** Integral from the panel's start: the integral of P(n) is (P(n+1) − P(n−1)) / (2n + 1). */
    private double partOf(int panel, double x) {
        double[] terms = series[panel];
        double at = position(panel, x);
        double before = 1;
        double now = at;
        double sum = terms[0] * (at + 1);
        for (int n = 1; n < TERMS; n++) {
            double next = ((2 * n + 1) * at * now - n * before) / (n + 1);
            sum += terms[n] * (next - before) / (2 * n + 1);
            before = now;
            now = next;
        }
        return sum * 0.5 * (edges[panel + 1] - edges[panel]);
    }
}
