package jarwise.usecase.planning;

import jarwise.base.Message;
import jarwise.decision.Finding.Subject;
import jarwise.plan.BenchRings;
import jarwise.plan.RoundQuestion;
import jarwise.site.Bench;
import jarwise.stats.design.Workload;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import jarwise.usecase.form.Fields;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads what was typed into the form of a round; a blank field is the habit of the site.
 *
 * @param fields what was typed, habits filled in
 * @param typed what was typed itself
 * @param there stands of the day
 * @param benches every bench of the site
 */
record PlanFields(
        Fields fields, Map<String, String> typed, List<StandThere> there, List<Bench> benches) {

    private static final Pattern MEASURED = Pattern.compile("([0-9]{1,9})\\s*/\\s*([0-9]{1,9})");
    private static final double MOST_DENSITY = 1_000;
    private static final int MOST_POINTS = 1_000;

    /** What a whole form says, or nothing where a field of it can't be read. */
    PlanRequest request(RoundQuestion question, Subject subject, LocalDate day, long seed) {
        Ask ask = ask(question);
        Assumed assumed = assumed();
        OptionalInt wanted = whole("jars", Answers.MOST_JARS);
        LocalTime start = start();
        PlanRequest.Extras extras = extras();
        fields.refuseIfAny();
        return new PlanRequest(
                ask, subject, day, start, stands(ask), wanted, assumed, extras, seed, exception());
    }

    private Ask ask(RoundQuestion question) {
        return switch (question) {
            case DETECT -> new Ask.Detect(number("density", MOST_DENSITY), percent("confidence"));
            case ESTIMATE ->
                    new Ask.Estimate(number("density", MOST_DENSITY), percent("precision"));
            case COMPARE ->
                    new Ask.Compare(
                            number("density", MOST_DENSITY),
                            percent("efficacy"),
                            whole("each", Answers.MOST_JARS / 2).orElse(1),
                            fields.text("check"));
            case DECIDE -> decide();
            case DELIMIT -> new Ask.Delimit(fields.text("find"), whole("rings", 9).orElse(1));
        };
    }

    private Ask.Decide decide() {
        double low = number("low", MOST_DENSITY);
        double high = number("high", MOST_DENSITY);
        double risk = percent("risk");
        if (!(low < high)) {
            fields.fault("high", Message.of("plan.fault.high"));
        }
        if (!(risk < 0.5)) {
            fields.fault("risk", Message.of("plan.fault.risk"));
        }
        return new Ask.Decide(low, high, risk, whole("most", Answers.MOST_JARS).orElse(1));
    }

    private Assumed assumed() {
        return new Assumed(
                k(),
                new Detection(share("efficiency"), share("sensitivity")),
                whole("points", MOST_POINTS).orElse(1),
                new Workload(minutes("cut"), minutes("wash"), minutes("read"), 1));
    }

    private double k() {
        if (fields.text("k").equalsIgnoreCase("inf")) {
            return Double.POSITIVE_INFINITY;
        }
        return number("k", 1_000_000);
    }

    private double number(String name, double most) {
        return fields.number(name, 0, most).orElseGet(() -> missing(name));
    }

    /** Typed in per cent, read as a share. */
    private double percent(String name) {
        return fields.number(name, 0, 99.99).orElseGet(() -> missing(name)) / 100;
    }

    private double minutes(String name) {
        return fields.text(name).matches("0+([.,]0+)?") ? 0 : number(name, 1_000);
    }

    /** A fault is noted, so that the value is never used. */
    private double missing(String name) {
        if (fields.text(name).isEmpty()) {
            fields.fault(name, Message.of("form.needed"));
        }
        return 1;
    }

    private OptionalInt whole(String name, long most) {
        OptionalLong number = fields.whole(name, 1, most);
        return number.isPresent() ? OptionalInt.of((int) number.getAsLong()) : OptionalInt.empty();
    }

    private DetectionShare share(String name) {
        Matcher measured = MEASURED.matcher(fields.text(name));
        if (measured.matches()) {
            return fields.checked(
                            name,
                            () ->
                                    DetectionShare.measured(
                                            Long.parseLong(measured.group(1)),
                                            Long.parseLong(measured.group(2))))
                    .orElse(DetectionShare.known(1));
        }
        return DetectionShare.known(number(name, 1));
    }

    private LocalTime start() {
        try {
            return LocalTime.parse(fields.text("start"));
        } catch (DateTimeException e) {
            fields.fault("start", Message.of("plan.fault.start", fields.text("start")));
            return LocalTime.MIDNIGHT;
        }
    }

    private PlanRequest.Extras extras() {
        OptionalInt spiked =
                typed.containsKey("spike") ? whole("spiked", MOST_POINTS) : OptionalInt.empty();
        // A form that was never sent has the blank wash; one that was sent says so.
        boolean blank = typed.containsKey("blank") || !typed.containsKey("sent");
        return new PlanRequest.Extras(blank, spiked, chosen("hot"));
    }

    private List<StandThere> chosen(String name) {
        List<String> keys = List.of(typed.getOrDefault(name, "").split(","));
        return there.stream().filter(stand -> keys.contains(stand.key())).toList();
    }

    private List<StandThere> stands(Ask ask) {
        if (ask instanceof Ask.Delimit delimit) {
            return around(delimit);
        }
        List<StandThere> chosen = chosen("stand");
        String check = ask instanceof Ask.Compare compare ? compare.check() : "";
        return there.stream()
                .filter(stand -> chosen.contains(stand) || stand.key().equals(check))
                .toList();
    }

    private List<StandThere> around(Ask.Delimit ask) {
        if (benches.stream().noneMatch(bench -> bench.code().equals(ask.find()))) {
            return List.of();
        }
        List<String> near = BenchRings.around(benches, ask.find()).within(ask.rings());
        return there.stream().filter(stand -> near.contains(stand.bench().code())).toList();
    }

    private Optional<PlanRequest.EntryException> exception() {
        String by = fields.text("exception_by");
        String reason = fields.text("exception_reason");
        return by.isEmpty() || reason.isEmpty()
                ? Optional.empty()
                : Optional.of(new PlanRequest.EntryException(by, reason));
    }
}
