package jarwise.usecase.paper;

import jarwise.base.Message;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.sample.Fluid;
import jarwise.tally.Facts;
import jarwise.usecase.form.Fields;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.TreeMap;

/**
 * One row of the paper sheet that something was written in.
 *
 * @param jar which
 * @param day on which it was cut
 * @param cut growing points really cut, as text; empty in a control
 * @param fluid what it was washed in
 * @param shakeSeconds how long it was shaken, as text
 * @param washedAt when
 * @param frozenAt when its filter went into the freezer
 * @param remarks anything else
 */
record PaperRow(
        PlannedJar jar,
        LocalDate day,
        Optional<String> cut,
        Optional<Fluid> fluid,
        Optional<String> shakeSeconds,
        Optional<Instant> washedAt,
        Optional<Instant> frozenAt,
        Optional<String> remarks) {

    static final String CUT = "cut";
    static final String FLUID = "fluid";
    static final String SHAKE = "shake";
    static final String WASHED = "washed";
    static final String FROZEN = "frozen";
    static final String REMARKS = "remarks";

    private static final List<String> FIELDS = List.of(CUT, FLUID, SHAKE, WASHED, FROZEN, REMARKS);
    private static final double MOST_POINTS = 100_000;
    private static final long MOST_SECONDS = 3_600;

    /** The day of the sheet; times are those of its clocks and none is still to come. */
    record Day(LocalDate date, ZoneId zone, Instant now) {}

    static Day day(Fields fields, RoundPlan plan, ZoneId zone, Instant now) {
        LocalDate date = fields.pastDay("day", LocalDate.ofInstant(now, zone)).orElse(plan.day());
        if (fields.text("day").isEmpty()) {
            fields.fault("day", Message.of("form.needed"));
        }
        return new Day(date, zone, now);
    }

    static String field(String name, PlannedJar jar) {
        return name + ":" + jar.code().text();
    }

    String field(String name) {
        return field(name, jar);
    }

    /** Reads one row; empty where all of it was left blank. */
    static Optional<PaperRow> of(Fields fields, PlannedJar jar, Day day) {
        if (FIELDS.stream().allMatch(name -> fields.text(field(name, jar)).isEmpty())) {
            return Optional.empty();
        }
        OptionalLong shaken = fields.whole(field(SHAKE, jar), 0, MOST_SECONDS);
        PaperRow row =
                new PaperRow(
                        jar,
                        day.date,
                        points(fields, jar),
                        fields.word(field(FLUID, jar), Fluid.class),
                        shaken.isPresent()
                                ? Optional.of(String.valueOf(shaken.getAsLong()))
                                : Optional.empty(),
                        time(fields, field(WASHED, jar), day),
                        time(fields, field(FROZEN, jar), day),
                        Optional.of(fields.text(field(REMARKS, jar)))
                                .filter(text -> !text.isEmpty()));
        row.checkOrder(fields);
        return Optional.of(row);
    }

    /** A jar of plants whose growing points nobody counted says nothing of a density. */
    private static Optional<String> points(Fields fields, PlannedJar jar) {
        String name = field(CUT, jar);
        if (jar.isOfCrop() && fields.text(name).isEmpty()) {
            fields.fault(name, Message.of("form.needed"));
        }
        OptionalDouble points = fields.number(name, 0, MOST_POINTS);
        if (!jar.isOfCrop() && points.isPresent()) {
            fields.fault(name, Message.of("paper.control-cut"));
        }
        return points.isPresent()
                ? Optional.of(
                        BigDecimal.valueOf(points.getAsDouble())
                                .stripTrailingZeros()
                                .toPlainString())
                : Optional.empty();
    }

    private static Optional<Instant> time(Fields fields, String name, Day day) {
        String text = fields.text(name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        Optional<LocalTime> time = clockTime(text);
        if (time.isEmpty()) {
            fields.fault(name, Message.of("paper.time", text));
            return Optional.empty();
        }
        Instant at = day.date.atTime(time.get()).atZone(day.zone).toInstant();
        if (at.isAfter(day.now)) {
            fields.fault(name, Message.of("paper.future", text));
        }
        return Optional.of(at);
    }

    /** 14:05, 14.05, 1405, 9:05 and 905 are times of the day. */
    private static Optional<LocalTime> clockTime(String text) {
        String digits = text.replaceFirst("^([0-9]{1,2})[:.hH ]([0-9]{2})$", "$1$2");
        if (!digits.matches("[0-9]{3,4}")) {
            return Optional.empty();
        }
        try {
            int number = Integer.parseInt(digits);
            return Optional.of(LocalTime.of(number / 100, number % 100));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    private void checkOrder(Fields fields) {
        if (frozenAt.isPresent() && !isWashed()) {
            fields.fault(field(WASHED), Message.of("paper.frozen-unwashed"));
        }
        if (frozenAt.isPresent()
                && washedAt.isPresent()
                && frozenAt.get().isBefore(washedAt.get())) {
            fields.fault(field(FROZEN), Message.of("paper.order"));
        }
    }

    boolean isWashed() {
        return fluid.isPresent() || shakeSeconds.isPresent() || washedAt.isPresent();
    }

    Map<String, String> cutFacts() {
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.COLLECTED_ON, day.toString());
        cut.ifPresent(number -> facts.put(Facts.SAMPLING_UNITS, number));
        if (!isWashed()) {
            remarks.ifPresent(text -> facts.put(Facts.OTHER + REMARKS, text));
        }
        return facts;
    }

    Map<String, String> washFacts() {
        Map<String, String> facts = new TreeMap<>();
        fluid.ifPresent(used -> facts.put(Facts.FLUID, Fields.wordOf(used)));
        shakeSeconds.ifPresent(seconds -> facts.put(Facts.SHAKE_SECONDS, seconds));
        remarks.ifPresent(text -> facts.put(Facts.CONDITION, text));
        return facts;
    }
}
