package jarwise.cli.climate;

import jarwise.cli.print.Figures;
import jarwise.phenology.LogGap;
import jarwise.phenology.TemperatureLog.SensorDoubt;
import jarwise.phenology.TemperatureUnit;
import jarwise.wire.climate.ReadClimate;
import java.util.ArrayList;
import java.util.List;

/** What a person should know about a log, a sentence each. */
final class LogWarnings {

    private static final int SHOWN = 5;

    /** A house is hardly ever so hot, a day in °F mostly is. */
    private static final double HOT_C = 50;

    private LogWarnings() {}

    static List<String> of(ReadClimate climate) {
        List<String> warnings = new ArrayList<>();
        if (climate.unitAssumed()) {
            warnings.add(
                    "The log does not say its unit; it was taken as °C. Say --unit C or F to be"
                            + " sure.");
        }
        if (climate.unit() == TemperatureUnit.CELSIUS && climate.log().highest() > HOT_C) {
            warnings.add(
                    "The log goes up to %s °C. Maybe it is in °F, or the sensor hangs in the sun."
                            .formatted(Figures.of(climate.log().highest())));
        }
        climate.offset()
                .ifPresent(
                        offset ->
                                warnings.add(
                                        ("All times and days are those of a clock at %s from UTC,"
                                                        + " the offset of the first row.")
                                                .formatted(offset.getId())));
        if (climate.blanks() > 0) {
            warnings.add(
                    "%d row(s) without a temperature were left out.".formatted(climate.blanks()));
        }
        warnings.addAll(doubts(climate.log().doubts()));
        return warnings;
    }

    private static List<String> doubts(List<SensorDoubt> doubts) {
        List<String> sentences = new ArrayList<>();
        doubts.stream().limit(SHOWN).map(LogWarnings::sentence).forEach(sentences::add);
        if (doubts.size() > SHOWN) {
            sentences.add(
                    "The sensor looks doubtful %d more time(s).".formatted(doubts.size() - SHOWN));
        }
        return sentences;
    }

    private static String sentence(SensorDoubt doubt) {
        return switch (doubt.kind()) {
            case STUCK ->
                    "From %s to %s the log shows %s °C without a change. Maybe the sensor is stuck."
                            .formatted(doubt.from(), doubt.to(), Figures.of(doubt.celsius()));
            case JUMP ->
                    ("From %s to %s the temperature jumps by %s °C. Maybe the sensor was moved or"
                                    + " is failing.")
                            .formatted(
                                    doubt.from(),
                                    doubt.to(),
                                    Figures.of(Math.abs(doubt.celsius())));
        };
    }

    /** {@return one sentence about the gaps that were filled, one about those left out} */
    static List<String> gaps(List<LogGap> gaps) {
        List<String> sentences = new ArrayList<>();
        for (boolean filled : new boolean[] {true, false}) {
            List<LogGap> some = gaps.stream().filter(gap -> gap.filled() == filled).toList();
            if (!some.isEmpty()) {
                sentences.add(
                        "%d gap(s) in the log %s, the first from %s to %s."
                                .formatted(
                                        some.size(),
                                        filled
                                                ? "of up to 6 hours were filled by a line"
                                                : "were left out: no heat is counted there",
                                        some.get(0).from(),
                                        some.get(0).to()));
            }
        }
        return sentences;
    }
}
