package jarwise.usecase.model;

import jarwise.base.CodePointOrder;
import jarwise.base.InvalidInput;
import jarwise.stats.count.Observation;
import jarwise.stats.efficacy.EfficacyEstimator;
import jarwise.stats.efficacy.EfficacyTrial;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.RowGroup;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Estimates the efficacy of a treatment from a sheet with treated and check rows.
 *
 * @param question which rows are which
 * @param estimator how the efficacy is estimated
 */
public record EstimateEfficacy(TrialQuestion question, EfficacyEstimator estimator) {

    /**
     * What came out.
     *
     * @param groups one a group that has samples in all four parts, in the order of the sheet
     * @param warnings groups that were left out, rows that were not used
     */
    public record Done(List<GroupEfficacy> groups, List<String> warnings) {}

    /**
     * Estimates.
     *
     * @param rows the sheet, grouped by {@link TrialQuestion#columns()}
     * @return the efficacy of each group
     * @throws InvalidInput if a value does not occur, or no group is complete
     */
    public Done run(GroupedRows rows) {
        SortedSet<String> arms = values(rows, question.treated().column());
        question.treated().requireAmong("--treated", arms);
        ColumnValue check = question.treated().opposite(question.check(), "--check", arms);
        check.requireAmong("--check", values(rows, check.column()));
        SortedSet<String> times = values(rows, question.after().column());
        question.after().requireAmong("--after", times);
        ColumnValue before = question.after().opposite(question.before(), "--before", times);
        before.requireAmong("--before", values(rows, before.column()));
        Map<Map<String, String>, TrialRows> trials = new LinkedHashMap<>();
        long unused = 0;
        for (RowGroup group : rows.groups()) {
            Map<String, String> key = new LinkedHashMap<>();
            question.by().forEach(column -> key.put(column, value(group, column)));
            TrialRows trial = trials.computeIfAbsent(key, k -> new TrialRows());
            unused += trial.add(group, check, before) ? 0 : group.rows().size();
        }
        return done(trials, unused);
    }

    private static SortedSet<String> values(GroupedRows rows, String column) {
        SortedSet<String> values = new TreeSet<>(CodePointOrder.OF_TEXT);
        rows.groups().forEach(group -> values.add(value(group, column)));
        return values;
    }

    private static String value(RowGroup group, String column) {
        return group.values().getOrDefault(column, "");
    }

    private Done done(Map<Map<String, String>, TrialRows> trials, long unused) {
        List<GroupEfficacy> groups = new ArrayList<>();
        List<String> warnings = new ArrayList<>();
        if (unused > 0) {
            warnings.add(
                    "%d rows are neither treated nor check, or neither before nor after: not used."
                            .formatted(unused));
        }
        trials.forEach(
                (key, rows) -> {
                    if (rows.missing().isEmpty()) {
                        EfficacyTrial trial = rows.trial();
                        groups.add(new GroupEfficacy(key, trial, estimator.estimate(trial)));
                    } else if (question.by().isEmpty() || trials.size() == 1) {
                        throw new InvalidInput(incomplete(key, rows));
                    } else {
                        warnings.add(incomplete(key, rows) + " Left out.");
                    }
                });
        if (groups.isEmpty()) {
            throw new InvalidInput(String.join(" ", warnings));
        }
        return new Done(groups, warnings);
    }

    private static String incomplete(Map<String, String> key, TrialRows rows) {
        String name = GroupEfficacy.name(key);
        return ("%sThere are no samples of %s; all four groups need some. Maybe a missing row means"
                        + " zero: then add --fill-zeros.")
                .formatted(name.isEmpty() ? "" : name + ": ", String.join(", ", rows.missing()));
    }

    /** The rows of one group of the answer, sorted into arms, times and benches. */
    private final class TrialRows {

        private final TrialArm treated = new TrialArm();
        private final TrialArm check = new TrialArm();

        boolean add(RowGroup group, ColumnValue checkValue, ColumnValue beforeValue) {
            boolean isTreated = question.treated().matches(group.values());
            boolean isAfter = question.after().matches(group.values());
            boolean isCheck = checkValue.matches(group.values());
            boolean isBefore = beforeValue.matches(group.values());
            refuseBoth(isTreated && isCheck, "treated and check", group);
            refuseBoth(isAfter && isBefore, "before and after", group);
            if (!(isTreated || isCheck) || !(isAfter || isBefore)) {
                return false;
            }
            String bench = question.block().map(column -> value(group, column)).orElse("");
            (isTreated ? treated : check).add(bench, isAfter, observations(group.rows()));
            return true;
        }

        private void refuseBoth(boolean both, String what, RowGroup group) {
            if (both) {
                throw new InvalidInput(
                        "Row %d is both %s. Maybe --check and --before name the wrong column."
                                .formatted(group.rows().get(0).row(), what));
            }
        }

        List<String> missing() {
            List<String> missing = new ArrayList<>();
            treated.missing("treated").forEach(missing::add);
            check.missing("check").forEach(missing::add);
            return missing;
        }

        EfficacyTrial trial() {
            return new EfficacyTrial(treated.benches(), check.benches());
        }
    }

    private static List<Observation> observations(List<CountRow> rows) {
        List<Observation> observations = new ArrayList<>();
        for (CountRow row : rows) {
            Observation observation =
                    new Observation(row.count().individuals(), row.units(), row.filterShare());
            observations.addAll(Collections.nCopies((int) row.frequency(), observation));
        }
        return observations;
    }
}
