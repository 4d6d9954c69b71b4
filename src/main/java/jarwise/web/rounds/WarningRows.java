package jarwise.web.rounds;

import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.usecase.planning.PlannedRound;
import jarwise.usecase.planning.RoundWarning;
import jarwise.usecase.planning.StandThere;
import jarwise.web.Frame;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Warnings of a plan in words, each with its way out. */
final class WarningRows {

    private final Frame frame;
    private final FindingWords say;
    private final Figures figures;
    private final PlannedRound planned;

    WarningRows(Frame frame, FindingWords say, PlannedRound planned) {
        this.frame = frame;
        this.say = say;
        this.figures = say.figures();
        this.planned = planned;
    }

    List<AnswerView.Warning> rows() {
        return planned.warnings().stream().map(this::row).toList();
    }

    private AnswerView.Warning row(RoundWarning warning) {
        if (warning instanceof RoundWarning.NobodyReads late) {
            return nobodyReads(late);
        }
        if (warning instanceof RoundWarning.NoEntry entry) {
            return noEntry(entry);
        }
        if (warning instanceof RoundWarning.NotToCut cut) {
            return without(
                    cut.stands(),
                    frame.say("plan.warn.not-to-cut", names(cut.stands())),
                    frame.say("plan.warn.not-to-cut.text"));
        }
        if (warning instanceof RoundWarning.ThinCheck thin) {
            return plain(
                    frame.say("plan.warn.thin", name(thin.check())),
                    frame.say("plan.warn.thin.text", figures.density(thin.expected())));
        }
        if (warning instanceof RoundWarning.VarietyIsBench both) {
            return plain(
                    frame.say("plan.warn.variety"),
                    frame.say("plan.warn.variety.text", name(both.treated()), name(both.check())));
        }
        if (warning instanceof RoundWarning.FreezerFull full) {
            return freezer(full);
        }
        RoundWarning.SizesUnknown sizes = (RoundWarning.SizesUnknown) warning;
        return new AnswerView.Warning(
                frame.say("plan.warn.sizes"),
                frame.say("plan.warn.sizes.text", names(sizes.stands())),
                frame.say("plan.warn.sizes.out"),
                frame.to("settings#place"),
                false);
    }

    private AnswerView.Warning plain(String title, String text) {
        return new AnswerView.Warning(title, text, "", "", false);
    }

    private AnswerView.Warning nobodyReads(RoundWarning.NobodyReads late) {
        String text =
                frame.say(
                        late.minutesThere() == 0
                                ? "plan.warn.days-off.text"
                                : "plan.warn.short.text",
                        moment(late.from()),
                        moment(late.to()),
                        figures.minutes(late.minutesThere()),
                        figures.minutes(late.minutesNeeded()));
        String title =
                frame.say(late.minutesThere() == 0 ? "plan.warn.days-off" : "plan.warn.short");
        return late.instead()
                .map(
                        day ->
                                new AnswerView.Warning(
                                        title,
                                        text,
                                        frame.say(
                                                "plan.warn.days-off.out",
                                                new Days(frame.words()).weekday(day)),
                                        changed(Map.of("day", day.toString())),
                                        false))
                .orElseGet(() -> plain(title, text));
    }

    private String moment(Instant at) {
        ZonedDateTime local = at.atZone(frame.now().getZone());
        Days days = new Days(frame.words());
        return frame.say(
                "plan.moment", days.weekday(local.toLocalDate()), days.time(local.toLocalTime()));
    }

    private AnswerView.Warning noEntry(RoundWarning.NoEntry entry) {
        Application application = entry.application();
        Optional<ZonedDateTime> end =
                application.reentryEnds().map(at -> at.atZone(frame.now().getZone()));
        String products =
                application.products().stream()
                        .map(ProductUse::product)
                        .collect(Collectors.joining(" + "));
        String title =
                end.map(
                                at ->
                                        frame.say(
                                                "plan.warn.entry",
                                                names(entry.stands()),
                                                moment(at.toInstant())))
                        .orElseGet(() -> frame.say("plan.warn.entry.open", names(entry.stands())));
        String text =
                frame.say("plan.warn.entry.text", products) + " " + frame.say("caution.label");
        Optional<ZonedDateTime> after = end.map(at -> at.plusMinutes(5));
        return after.map(
                        at ->
                                new AnswerView.Warning(
                                        title,
                                        text,
                                        frame.say("plan.warn.entry.out", moment(at.toInstant())),
                                        changed(
                                                Map.of(
                                                        "day",
                                                        at.toLocalDate().toString(),
                                                        "start",
                                                        later(at.toLocalTime()))),
                                        entry.blocks()))
                .orElseGet(() -> without(entry.stands(), title, text));
    }

    private static String later(LocalTime time) {
        return "%02d:%02d".formatted(time.getHour(), time.getMinute());
    }

    private AnswerView.Warning without(List<StandThere> stands, String title, String text) {
        List<String> left = stands.stream().map(StandThere::key).toList();
        String kept =
                Arrays.stream(planned.typed().getOrDefault("stand", "").split(","))
                        .filter(key -> !left.contains(key))
                        .collect(Collectors.joining(","));
        return new AnswerView.Warning(
                title, text, frame.say("plan.warn.without"), changed(Map.of("stand", kept)), true);
    }

    private AnswerView.Warning freezer(RoundWarning.FreezerFull full) {
        String text =
                frame.say(
                        "plan.warn.freezer.text",
                        figures.whole(full.places()),
                        figures.whole(full.taken()),
                        figures.whole(full.wanted()));
        int free = Math.max(0, full.places() - full.taken());
        int extras = planned.request().map(request -> request.extras().jars()).orElse(0);
        return free > extras
                ? new AnswerView.Warning(
                        frame.say("plan.warn.freezer"),
                        text,
                        frame.say("plan.warn.freezer.out", figures.jars(free - extras)),
                        changed(Map.of("jars", String.valueOf(free - extras))),
                        false)
                : plain(frame.say("plan.warn.freezer"), text);
    }

    private String changed(Map<String, String> changes) {
        return frame.to("rounds/new") + Queries.with(planned.typed(), changes);
    }

    private String names(List<StandThere> stands) {
        return say.list(stands.stream().map(stand -> stand.bench().code()).distinct().toList());
    }

    private String name(StandThere stand) {
        return say.place(stand.stand());
    }
}
