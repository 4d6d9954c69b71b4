package jarwise.usecase.model;

import jarwise.base.InvalidInput;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * Which rows of a sheet are treated, which the check, which from before, which from after.
 *
 * @param treated rows of the treated benches
 * @param after rows from after the treatment
 * @param check rows of the check; empty where the column of {@code treated} has one other value
 * @param before rows from before; empty where the column of {@code after} has one other value
 * @param by one estimate for each value of these columns
 * @param block column that says which bench; empty to take each arm as one
 */
public record TrialQuestion(
        ColumnValue treated,
        ColumnValue after,
        Optional<ColumnValue> check,
        Optional<ColumnValue> before,
        List<String> by,
        Optional<String> block) {

    /** Checks that no column has two tasks; throws {@link InvalidInput} naming it. */
    public TrialQuestion {
        by = List.copyOf(by);
        List<String> tasks = new ArrayList<>(by);
        tasks.add(treated.column());
        tasks.add(after.column());
        block.ifPresent(tasks::add);
        for (int i = 0; i < tasks.size(); i++) {
            if (tasks.indexOf(tasks.get(i)) < i) {
                throw new InvalidInput(
                        ("Column %s is given two tasks; --treated, --after, --by and --block need a"
                                        + " column each. Maybe one of them means another column.")
                                .formatted(tasks.get(i)));
            }
        }
        check.filter(treated::equals).ifPresent(c -> refuseSame("--check", "--treated", c));
        before.filter(after::equals).ifPresent(c -> refuseSame("--before", "--after", c));
    }

    private static void refuseSame(String option, String other, ColumnValue both) {
        throw new InvalidInput(
                "%s is %s=%s, the same as %s; they must differ. Maybe leave %s out."
                        .formatted(option, both.column(), both.value(), other, option));
    }

    /** {@return the columns to group the sheet by: those of the answer first} */
    public List<String> columns() {
        LinkedHashSet<String> columns = new LinkedHashSet<>(by);
        columns.add(treated.column());
        columns.add(after.column());
        check.ifPresent(c -> columns.add(c.column()));
        before.ifPresent(c -> columns.add(c.column()));
        block.ifPresent(columns::add);
        return List.copyOf(columns);
    }
}
