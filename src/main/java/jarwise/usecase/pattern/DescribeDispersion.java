package jarwise.usecase.pattern;

import jarwise.base.InvalidInput;
import jarwise.stats.count.Observation;
import jarwise.stats.dispersion.CountDispersion;
import jarwise.stats.dispersion.MeanAndVariance;
import jarwise.stats.dispersion.MeanVarianceLines;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.RowGroup;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Says how clumped the groups of a sheet are.
 *
 * @param groups one a group of the sheet, in the same order
 * @param lines how variance and crowding go with the mean; empty for one group
 */
public record DescribeDispersion(List<GroupDispersion> groups, Optional<MeanVarianceLines> lines) {

    /**
     * Describes.
     *
     * @param rows groups of counted rows, all of the same size
     * @return the indices
     * @throws InvalidInput naming the rows if their sampling units or shares read differ
     */
    public static DescribeDispersion run(GroupedRows rows) {
        requireSameSize(rows.groups());
        List<GroupDispersion> groups =
                rows.groups().stream()
                        .map(
                                group ->
                                        new GroupDispersion(
                                                group.values(),
                                                CountDispersion.of(observations(group.rows()))))
                        .toList();
        List<MeanAndVariance> points =
                groups.stream()
                        .flatMap(g -> MeanAndVariance.of(g.name(), g.dispersion()).stream())
                        .toList();
        return new DescribeDispersion(
                groups,
                groups.size() > 1 ? Optional.of(MeanVarianceLines.of(points)) : Optional.empty());
    }

    private static void requireSameSize(List<RowGroup> groups) {
        CountRow first = groups.get(0).rows().get(0);
        for (RowGroup group : groups) {
            for (CountRow row : group.rows()) {
                requireSame("sampling units", first, row, first.units(), row.units());
                requireSame(
                        "of the filter read", first, row, first.filterShare(), row.filterShare());
            }
        }
    }

    private static void requireSame(
            String what, CountRow first, CountRow row, double one, double other) {
        if (one != other) {
            throw new InvalidInput(
                    ("Row %d has %s %s and row %d has %s; indices of dispersion need samples that"
                                    + " are all the same size. Maybe keep those of one size with"
                                    + " --where.")
                            .formatted(first.row(), one, what, row.row(), other));
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
