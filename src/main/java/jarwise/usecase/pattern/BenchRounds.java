package jarwise.usecase.pattern;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.stats.space.BenchCount;
import jarwise.usecase.ReadSheet;
import jarwise.usecase.SheetRequest;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.KnownColumn;
import jarwise.wire.sheet.RowGroup;
import jarwise.wire.sheet.SheetColumns;
import jarwise.wire.sheet.SheetSelection;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Counts of benches, round by round, with their places on the map.
 *
 * @param rounds benches by house and name, by round in the order of time
 * @param notes what a person should know about how the sheet was read
 */
record BenchRounds(TreeMap<RoundName, Map<String, BenchCount>> rounds, List<Message> notes) {

    private static final RoundName ONLY = RoundName.of("");

    static BenchRounds read(SheetRequest request, SpreadOptions options) {
        SheetColumns columns = columns(request);
        List<String> by = new ArrayList<>();
        if (columns.index(KnownColumn.HOUSE).isPresent()) {
            by.add(KnownColumn.HOUSE.text());
        }
        by.add(KnownColumn.BENCH.text());
        by.addAll(options.position());
        options.round().ifPresent(by::add);
        boolean dated = options.round().isEmpty() && columns.index(KnownColumn.DATE).isPresent();
        if (dated) {
            by.add(KnownColumn.DATE.text());
        }
        GroupedRows groups = ReadSheet.run(request.with(grouped(request, by)));
        return new BenchRounds(rounds(groups, options, dated), groups.notes());
    }

    /** The sheet is read once to see what columns it has. */
    private static SheetColumns columns(SheetRequest request) {
        List<String> bench = List.of(KnownColumn.BENCH.text());
        GroupedRows rows = ReadSheet.run(request.with(grouped(request, bench)));
        return rows.groups().get(0).rows().get(0).columns();
    }

    private static SheetSelection grouped(SheetRequest request, List<String> by) {
        SheetSelection selection = request.selection();
        return new SheetSelection(
                selection.where(), by, selection.perSample(), selection.fillZeros());
    }

    private static TreeMap<RoundName, Map<String, BenchCount>> rounds(
            GroupedRows groups, SpreadOptions options, boolean dated) {
        TreeMap<RoundName, Map<String, BenchCount>> rounds = new TreeMap<>();
        Map<String, BenchCount> places = new HashMap<>();
        for (RowGroup group : groups.groups()) {
            BenchCount bench = bench(group, options);
            RoundName round = round(group, options, dated);
            String name = name(bench);
            requireSamePlace(places.putIfAbsent(name, bench), bench, group);
            Map<String, BenchCount> benches = rounds.computeIfAbsent(round, r -> new TreeMap<>());
            benches.merge(name, bench, BenchRounds::together);
        }
        return rounds;
    }

    private static RoundName round(RowGroup group, SpreadOptions options, boolean dated) {
        CountRow first = group.rows().get(0);
        if (dated) {
            return first.date().map(RoundName::of).orElse(ONLY);
        }
        return options.round().map(c -> RoundName.of(value(group, c))).orElse(ONLY);
    }

    private static String name(BenchCount bench) {
        return bench.house().isEmpty() ? bench.bench() : bench.house() + " " + bench.bench();
    }

    private static BenchCount bench(RowGroup group, SpreadOptions options) {
        long individuals = 0;
        double effort = 0;
        List<CountRow> rows = new ArrayList<>(group.rows());
        rows.sort((a, b) -> Double.compare(effort(a), effort(b)));
        for (CountRow row : rows) {
            individuals += row.frequency() * row.count().individuals();
            effort += effort(row);
        }
        return new BenchCount(
                value(group, KnownColumn.HOUSE.text()),
                value(group, KnownColumn.BENCH.text()),
                coordinate(group, options.position().get(0)),
                coordinate(group, options.position().get(1)),
                individuals,
                effort);
    }

    private static String value(RowGroup group, String column) {
        return group.values().getOrDefault(column, "");
    }

    private static double effort(CountRow row) {
        return row.frequency() * row.units() * row.filterShare();
    }

    private static double coordinate(RowGroup group, String column) {
        String text = value(group, column);
        try {
            double value = Double.parseDouble(text.replace(',', '.'));
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // said below
        }
        throw new InvalidInput(
                ("Row %d has \"%s\" in %s; a place on the map must be a number. Maybe number the"
                                + " rows and columns of benches from 1.")
                        .formatted(group.rows().get(0).row(), text, column));
    }

    private static void requireSamePlace(
            @Nullable BenchCount before, BenchCount now, RowGroup group) {
        if (before != null && (before.x() != now.x() || before.y() != now.y())) {
            throw new InvalidInput(
                    ("Row %d has bench %s at %s, %s, and another row at %s, %s; a bench has one"
                                    + " place. Maybe name the house, too.")
                            .formatted(
                                    group.rows().get(0).row(),
                                    now.bench(),
                                    now.x(),
                                    now.y(),
                                    before.x(),
                                    before.y()));
        }
    }

    private static BenchCount together(BenchCount a, BenchCount b) {
        return new BenchCount(
                a.house(),
                a.bench(),
                a.x(),
                a.y(),
                a.individuals() + b.individuals(),
                a.effort() + b.effort());
    }
}
