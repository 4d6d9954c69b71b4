package jarwise.usecase.pattern;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.stats.growth.GrowthTrend;
import jarwise.stats.growth.TimedCount;
import jarwise.usecase.ReadSheet;
import jarwise.usecase.SheetRequest;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.KnownColumn;
import jarwise.wire.sheet.RowGroup;
import jarwise.wire.sheet.SheetSelection;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Says how fast the density of a sheet grows.
 *
 * @param rounds days of sampling that were used
 * @param trend the trend, its time 0 the last of them
 * @param sampleSize samples used
 * @param samplingUnits sampling units in them
 * @param passing when it is above the threshold with a chance of 50 and of 90 per cent
 * @param notes what a person should know about how the sheet was read
 */
public record JudgeGrowth(
        List<LocalDate> rounds,
        GrowthTrend trend,
        long sampleSize,
        double samplingUnits,
        List<Passing> passing,
        List<Message> notes) {

    /** How far ahead is looked: 90 days, or 900 degree-days. */
    private static final int STEPS = 90;

    /**
     * When the threshold is passed with a chance.
     *
     * @param probability the chance
     * @param time days or degree-days after the last round; empty if not in the time looked at
     */
    public record Passing(double probability, OptionalDouble time) {}

    /**
     * Reads a sheet and judges its last rounds.
     *
     * @param request the sheet
     * @param options how to judge
     * @return the growth
     */
    public static JudgeGrowth run(SheetRequest request, GrowthOptions options) {
        SheetSelection read = request.selection();
        List<String> by = new ArrayList<>(List.of(KnownColumn.DATE.text()));
        options.degreeDays().ifPresent(by::add);
        GroupedRows groups =
                ReadSheet.run(
                        request.with(
                                new SheetSelection(
                                        read.where(), by, read.perSample(), read.fillZeros())));
        NavigableSet<LocalDate> days = new TreeSet<>();
        groups.groups().forEach(group -> group.rows().forEach(row -> days.add(day(row))));
        while (days.size() > options.rounds()) {
            days.pollFirst();
        }
        List<TimedCount> samples = new ArrayList<>();
        for (RowGroup group : groups.groups()) {
            for (CountRow row : group.rows()) {
                if (days.contains(day(row))) {
                    TimedCount sample =
                            new TimedCount(RowNumbers.observation(row), time(row, group, options));
                    samples.addAll(Collections.nCopies((int) row.frequency(), sample));
                }
            }
        }
        GrowthTrend trend = GrowthTrend.of(samples, options.confidenceLevel());
        double units = samples.stream().mapToDouble(s -> s.observation().samplingUnits()).sum();
        return new JudgeGrowth(
                List.copyOf(days),
                trend,
                samples.size(),
                units,
                passing(trend, options),
                groups.notes());
    }

    private static LocalDate day(CountRow row) {
        return row.date()
                .orElseThrow(
                        () ->
                                new InvalidInput(
                                        "Row %d has no date; growth needs one in every row."
                                                .formatted(row.row())));
    }

    private static double time(CountRow row, RowGroup group, GrowthOptions options) {
        Optional<String> column = options.degreeDays();
        return column.isPresent()
                ? RowNumbers.number(
                        row, column.get(), group.values().getOrDefault(column.get(), ""))
                : day(row).toEpochDay();
    }

    private static List<Passing> passing(GrowthTrend trend, GrowthOptions options) {
        List<Passing> passing = new ArrayList<>();
        double step = options.degreeDays().isPresent() ? 10 : 1;
        options.threshold()
                .ifPresent(
                        threshold -> {
                            for (double chance : new double[] {0.5, 0.9}) {
                                OptionalDouble time = trend.passes(threshold, chance, step, STEPS);
                                passing.add(new Passing(chance, time));
                            }
                        });
        return passing;
    }
}
