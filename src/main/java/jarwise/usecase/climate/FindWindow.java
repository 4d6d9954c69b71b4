package jarwise.usecase.climate;

import jarwise.base.InvalidInput;
import jarwise.phenology.LogGap;
import jarwise.phenology.TemperatureCourse;
import jarwise.phenology.window.SetWindow;
import jarwise.phenology.window.ThermalLibrary;
import jarwise.phenology.window.TreatmentWindow;
import jarwise.phenology.window.WindowConstants;
import jarwise.wire.climate.LogTime;
import jarwise.wire.climate.ReadClimate;
import jarwise.wire.climate.ShippedThermals;
import java.time.LocalDateTime;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Finds when to treat again with a product that kills one stage.
 *
 * @param request temperature log of the house
 * @param pest code of the pest
 * @param treatedAt time of the first treatment, by the log's clock unless it has an offset
 * @param stage stage that the product kills
 */
public record FindWindow(LogRequest request, String pest, String treatedAt, String stage) {

    /** Days of the log whose mean is taken for what nobody knows. */
    public static final int DAYS_OF_MEAN = 7;

    /**
     * When to treat again.
     *
     * @param climate the log as it was read
     * @param treatedAt time of the first treatment
     * @param window the windows
     * @param warmer the same at one degree more, all the time
     * @param cooler the same at one degree less, all the time
     * @param assumption what was assumed of the temperature
     */
    public record Found(
            ReadClimate climate,
            LocalDateTime treatedAt,
            TreatmentWindow window,
            TreatmentWindow warmer,
            TreatmentWindow cooler,
            Assumption assumption) {}

    /**
     * What was assumed where the log tells nothing.
     *
     * @param afterLog mean of the log's last days in °C; empty if the log reaches far enough
     * @param logEnd where the log ends
     * @param meanDays days that are in the mean, {@value #DAYS_OF_MEAN} if the log is long enough
     * @param gaps holes in the log that were filled with the mean
     */
    public record Assumption(
            OptionalDouble afterLog, LocalDateTime logEnd, double meanDays, List<LogGap> gaps) {}

    /**
     * {@return the window}
     *
     * @throws InvalidInput if the log, the pest, the stage or the time cannot be used
     */
    public Found run() {
        ThermalLibrary library = ShippedThermals.read();
        List<WindowConstants> sets = library.sets(pest, stage);
        ReadClimate climate = request.read();
        TemperatureCourse log = climate.log().course(climate.log().usualMethod());
        LocalDateTime treated = treatedAt(climate, log);
        double mean = log.meanSince(log.to().minusDays(DAYS_OF_MEAN));
        // A day more than is looked at: what ends on the last day must not depend on the log's end.
        TemperatureCourse course = log.assuming(mean, treated.plus(SetWindow.FARTHEST).plusDays(1));
        TreatmentWindow window = TreatmentWindow.of(course, sets, treated);
        return new Found(
                climate,
                treated,
                window,
                TreatmentWindow.of(course.warmedBy(1), sets, treated),
                TreatmentWindow.of(course.warmedBy(-1), sets, treated),
                assumption(log, window, treated, mean));
    }

    private LocalDateTime treatedAt(ReadClimate climate, TemperatureCourse log) {
        LogTime time =
                LogTime.read(treatedAt)
                        .orElseThrow(
                                () ->
                                        new InvalidInput(
                                                ("--treated-at is \"%s\"; times like"
                                                                + " 2026-05-04T18:00 are allowed.")
                                                        .formatted(treatedAt)));
        if (time.offset().isPresent() && climate.offset().isEmpty()) {
            throw new InvalidInput(
                    ("--treated-at is \"%s\", with an offset, but the times of the log have none."
                                    + " Maybe leave the offset out.")
                            .formatted(treatedAt));
        }
        LocalDateTime at = time.at(climate.offset());
        if (at.isBefore(log.from()) || at.isAfter(log.to().plusDays(DAYS_OF_MEAN))) {
            throw new InvalidInput(
                    ("--treated-at is \"%s\"; the log goes from %s to %s, and a time from its"
                                    + " beginning to %d days after its end is allowed. Maybe it"
                                    + " is another year's log.")
                            .formatted(treatedAt, log.from(), log.to(), DAYS_OF_MEAN));
        }
        return at;
    }

    private static Assumption assumption(
            TemperatureCourse log, TreatmentWindow window, LocalDateTime treated, double mean) {
        LocalDateTime end = window.end().orElse(treated.plus(SetWindow.FARTHEST));
        List<LogGap> gaps =
                log.gaps().stream()
                        .filter(gap -> !gap.filled())
                        .filter(gap -> gap.to().isAfter(treated) && gap.from().isBefore(end))
                        .toList();
        return new Assumption(
                end.isAfter(log.to()) ? OptionalDouble.of(mean) : OptionalDouble.empty(),
                log.to(),
                log.daysKnownSince(log.to().minusDays(DAYS_OF_MEAN)),
                gaps);
    }
}
