package jarwise.stats.efficacy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/**
 * The model's columns: one for each bench, then treated, after, and both together; those that
 * follow from the ones before are left out.
 */
final class TrialColumns {

    private static final double DEPENDENT = 1e-9;

    private final List<double[]> columns = new ArrayList<>();
    private final List<double[]> orthogonal = new ArrayList<>();
    private boolean hasInteraction;

    private TrialColumns() {}

    /** {@return the columns of these cells} */
    static TrialColumns of(List<TrialCell> cells) {
        TrialColumns made = new TrialColumns();
        Set<String> benches = new LinkedHashSet<>();
        cells.forEach(cell -> benches.add(cell.bench()));
        for (String bench : benches) {
            made.add(cells, cell -> cell.bench().equals(bench) ? 1 : 0);
        }
        made.add(cells, cell -> cell.treated() ? 1 : 0);
        made.add(cells, cell -> cell.after() ? 1 : 0);
        made.hasInteraction = made.add(cells, cell -> cell.isTreatedAfter() ? 1 : 0);
        return made;
    }

    private boolean add(List<TrialCell> cells, ToDoubleFunction<TrialCell> value) {
        double[] column = cells.stream().mapToDouble(value).toArray();
        double[] rest = column.clone();
        for (double[] other : orthogonal) {
            double share = dot(rest, other) / dot(other, other);
            for (int i = 0; i < rest.length; i++) {
                rest[i] -= share * other[i];
            }
        }
        if (dot(rest, rest) < DEPENDENT) {
            return false;
        }
        columns.add(column);
        orthogonal.add(rest);
        return true;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    /** {@return whether these cells can tell the interaction from everything else} */
    boolean hasInteraction() {
        return hasInteraction;
    }

    /** {@return the same without the interaction} */
    TrialColumns withoutInteraction() {
        TrialColumns fewer = new TrialColumns();
        fewer.columns.addAll(columns.subList(0, columns.size() - (hasInteraction ? 1 : 0)));
        return fewer;
    }

    /** {@return number of columns; the interaction is the last} */
    int width() {
        return columns.size();
    }

    /** {@return what a cell has in a column} */
    double value(int cell, int column) {
        return columns.get(column)[cell];
    }
}
