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
 * series are small against the whole integral. The integral over a panel is then Gauss's rule,
 * exact for polynomials of degree 23. Outside its panels the function is 0.
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
    private double[] integralAtEdge;
    private int panels;

    private PanelFunction(int capacity) {
        edges = new double[capacity + 1];
        series = new double[capacity][];
        integralAtEdge = new double[capacity + 1];
    }

    /**
     * Takes a function on panels.
     *
     * @param function smooth inside each panel
     * @param edges panel edges to start with, rising, at least 2
     * @param tolerance largest last term, times the panel's width, that is left alone; absolute, so
     *     give a small share of the integral expected
     * @return the function on these panels, or on halves of them where it needs them
     */
    public static PanelFunction of(DoubleUnaryOperator function, double[] edges, double tolerance) {
        PanelFunction result = new PanelFunction(edges.length * 2);
        result.edges[0] = edges[0];
        for (int i = 1; i < edges.length; i++) {
            result.add(function, edges[i - 1], edges[i], tolerance, MOST_HALVINGS);
        }
        return result;
    }

    private void add(
            DoubleUnaryOperator function, double from, double to, double tolerance, int halvings) {
        double[] terms = seriesOf(function, from, to);
        double last = Math.abs(terms[TERMS - 1]) + Math.abs(terms[TERMS - 2]);
        if (halvings > 0 && last * (to - from) > tolerance) {
            double middle = 0.5 * (from + to);
            add(function, from, middle, tolerance, halvings - 1);
            add(function, middle, to, tolerance, halvings - 1);
            return;
        }
        if (panels == series.length) {
            edges = Arrays.copyOf(edges, 2 * panels + 1);
            series = Arrays.copyOf(series, 2 * panels);
            integralAtEdge = Arrays.copyOf(integralAtEdge, 2 * panels + 1);
        }
        series[panels] = terms;
        edges[panels + 1] = to;
        integralAtEdge[panels + 1] = integralAtEdge[panels] + terms[0] * (to - from);
        panels++;
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
        int panel = panelOf(edges, x);
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
        return integralAtEdge[panels];
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
        int panel = panelOf(edges, x);
        return integralAtEdge[panel] + partOf(panel, x);
    }

    /**
     * The point up to which the integral has a given value.
     *
     * @param target between 0 and {@link #integral()}; the function must be positive around there
     * @return a point between start and end
     */
    public double inverseIntegral(double target) {
        int panel = panelOf(integralAtEdge, target);
        double rest = target - integralAtEdge[panel];
        double low = edges[panel];
        double high = edges[panel + 1];
        if (!(rest > 0)) {
            return low;
        }
        if (!(partOf(panel, high) > rest)) {
            return high;
        }
        return Roots.between(x -> partOf(panel, x) - rest, low, high);
    }

    private int panelOf(double[] sorted, double x) {
        int found = Arrays.binarySearch(sorted, 0, panels + 1, x);
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
