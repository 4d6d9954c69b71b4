package jarwise.usecase.pattern;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.stats.calibration.MethodRatio;
import jarwise.stats.calibration.PairedCount;
import jarwise.stats.count.Observation;
import jarwise.usecase.ReadSheet;
import jarwise.usecase.SheetRequest;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.KnownColumn;
import jarwise.wire.sheet.RowGroup;
import jarwise.wire.sheet.SheetSelection;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Holds two methods of a sheet against each other, bench by bench and day by day.
 *
 * @param groups one a group of the sheet, in the same order
 * @param notes what a person should know about how the sheet was read
 */
public record CompareMethods(List<CalibratedGroup> groups, List<Message> notes) {

    /**
     * Reads a sheet with the columns method, bench and date and compares.
     *
     * @param request the sheet with its grouping columns
     * @param options which methods
     * @return the comparison
     */
    public static CompareMethods run(SheetRequest request, CalibrationOptions options) {
        requireColumns(request);
        GroupedRows rows = ReadSheet.run(request);
        requireMethods(rows, options);
        return new CompareMethods(
                rows.groups().stream().map(group -> compared(group, options)).toList(),
                rows.notes());
    }

    private static void requireColumns(SheetRequest request) {
        SheetSelection read = request.selection();
        List<String> needed =
                List.of(
                        KnownColumn.METHOD.text(),
                        KnownColumn.BENCH.text(),
                        KnownColumn.DATE.text());
        ReadSheet.run(
                request.with(
                        new SheetSelection(
                                read.where(), needed, read.perSample(), read.fillZeros())));
    }

    private static void requireMethods(GroupedRows rows, CalibrationOptions options) {
        Set<String> there = new TreeSet<>();
        rows.groups().forEach(g -> g.rows().forEach(r -> there.add(r.text(KnownColumn.METHOD))));
        for (String method : List.of(options.first(), options.second())) {
            if (!there.contains(method)) {
                throw new InvalidInput(
                        "No row has the method \"%s\". Maybe: %s"
                                .formatted(method, String.join(", ", there)));
            }
        }
    }

    private static CalibratedGroup compared(RowGroup group, CalibrationOptions options) {
        List<PairedCount> samples = new ArrayList<>();
        for (CountRow row : group.rows()) {
            String method = row.text(KnownColumn.METHOD);
            boolean first = method.equals(options.first());
            if (first || method.equals(options.second())) {
                PairedCount sample = new PairedCount(pair(row), first, RowNumbers.observation(row));
                samples.addAll(Collections.nCopies((int) row.frequency(), sample));
            }
        }
        Optional<MethodRatio> ratio = ratio(samples, options);
        double pairs = samples.stream().map(PairedCount::pair).distinct().count();
        return new CalibratedGroup(
                group.values(),
                ratio,
                samples.size() / (2 * Math.max(1, pairs)),
                ratio.map(r -> thresholdCount(r, options)).orElse(OptionalDouble.empty()),
                ratio.map(r -> equivalent(r, samples, options)).orElse(OptionalDouble.empty()));
    }

    /** A group without a find is an ordinary outcome, no fault of the sheet. */
    private static Optional<MethodRatio> ratio(
            List<PairedCount> samples, CalibrationOptions options) {
        return MethodRatio.canTell(samples)
                ? Optional.of(MethodRatio.of(samples, options.confidenceLevel()))
                : Optional.empty();
    }

    private static String pair(CountRow row) {
        return String.join(
                "\u0000",
                row.text(KnownColumn.HOUSE),
                row.text(KnownColumn.BENCH),
                row.date().map(String::valueOf).orElse(row.text(KnownColumn.DATE)));
    }

    private static OptionalDouble thresholdCount(MethodRatio ratio, CalibrationOptions options) {
        return ratio.ratio().isPresent() && options.threshold().isPresent()
                ? OptionalDouble.of(ratio.ratio().getAsDouble() * options.threshold().getAsDouble())
                : OptionalDouble.empty();
    }

    private static OptionalDouble equivalent(
            MethodRatio ratio, List<PairedCount> samples, CalibrationOptions options) {
        List<Observation> first = of(samples, true);
        List<Observation> second = of(samples, false);
        double found = second.stream().mapToDouble(Observation::individuals).sum();
        double exposure = second.stream().mapToDouble(Observation::exposure).sum();
        double density = options.threshold().orElse(found / exposure);
        return density > 0
                ? ratio.equivalentSamples(
                        options.samples(), density, meanExposure(first), meanExposure(second))
                : OptionalDouble.empty();
    }

    private static List<Observation> of(List<PairedCount> samples, boolean first) {
        return samples.stream()
                .filter(s -> s.first() == first)
                .map(PairedCount::observation)
                .toList();
    }

    private static double meanExposure(List<Observation> samples) {
        return samples.stream().mapToDouble(Observation::exposure).average().orElse(1);
    }
}
