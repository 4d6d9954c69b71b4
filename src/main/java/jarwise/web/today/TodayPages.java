package jarwise.web.today;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import jarwise.decision.Finding;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import jarwise.usecase.ShowToday;
import jarwise.usecase.findings.Today;
import jarwise.usecase.findings.Today.Due;
import jarwise.web.Frame;
import jarwise.web.Frames;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.Templates;
import jarwise.web.piece.Notes;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Today: what can't wait, and what is known. */
public final class TodayPages implements Pages {

    private final Templates templates;
    private final Frames frames;
    private final ShowToday showToday;

    /** Answers with what {@code showToday} finds. */
    public TodayPages(Server.Kit kit, ShowToday showToday) {
        this.templates = kit.templates();
        this.frames = kit.frames();
        this.showToday = showToday;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/today", this::page);
    }

    private void page(Context http) {
        Frame frame = frames.ofSite(http, "today");
        Nursery nursery = frame.nursery().orElseThrow();
        Today today = showToday.run(nursery, frame.now());
        templates.answer(http, "today.jte", Map.of("frame", frame, "view", view(frame, today)));
    }

    /**
     * {@return the state of a site in a sentence, in its own language: what the program says in its
     * window when it starts}
     */
    public static String greeting(ShowToday showToday, Nursery nursery, Instant instant) {
        ZonedDateTime now = instant.atZone(nursery.zone());
        Language language = Language.of(nursery.language()).orElse(Language.ENGLISH);
        Frame frame = Frame.withoutPage(Words.of(language), nursery, now);
        Today today = showToday.run(nursery, now);
        FindingWords say = new FindingWords(frame.words(), today.rules().pests());
        return answer(frame, today, say, new ClockRows(frame, say));
    }

    private static TodayView view(Frame frame, Today today) {
        FindingWords say = new FindingWords(frame.words(), today.rules().pests());
        ClockRows clock = new ClockRows(frame, say);
        Days days = new Days(frame.words());
        return new TodayView(
                frame.say(
                        "today.moment",
                        days.full(frame.now().toLocalDate()),
                        days.time(frame.now().toLocalTime())),
                answer(frame, today, say, clock),
                new TodayView.Clock(clock.head(), clock.rows(today), notes(frame, today, say)),
                new KnownRows(frame, say).known(today),
                today.empty());
    }

    /** The state in a sentence: what dries out, what is above the line. */
    private static String answer(Frame frame, Today today, FindingWords say, ClockRows clock) {
        if (today.empty()) {
            return frame.say("findings.empty");
        }
        List<String> parts = new ArrayList<>();
        for (Due due : today.due()) {
            if (due instanceof Due.Read read && clock.urgent(read)) {
                boolean late = read.window().readBy().isBefore(frame.now().toInstant());
                parts.add(
                        frame.say(
                                late ? "today.part.late" : "today.part.read",
                                say.figures().counted("today.filters", read.filters()),
                                clock.clock(read.window().readBy())));
            } else if (due instanceof Due.Decide decide) {
                Finding finding = decide.finding();
                parts.add(
                        frame.say(
                                "today.part.decide",
                                say.animals(finding.subject()),
                                say.shortPlace(finding.stand())));
            }
        }
        return parts.isEmpty()
                ? frame.say("today.answer.none")
                : frame.say(
                        "today.answer.wait",
                        parts.size(),
                        say.figures().whole(parts.size()),
                        say.list(parts.subList(0, Math.min(3, parts.size()))));
    }

    private static Notes notes(Frame frame, Today today, FindingWords say) {
        List<Notes.Note> notes = new ArrayList<>();
        today.round()
                .ifPresent(
                        round ->
                                notes.add(
                                        Notes.Note.of(
                                                frame.say("today.notes.round"),
                                                frame.say(
                                                        "today.notes.round.text",
                                                        say.figures().jars(round.cut()),
                                                        new Days(frame.words())
                                                                .dayMonth(round.day()),
                                                        say.figures().whole(round.read()),
                                                        say.figures().whole(round.toRead())))));
        notes.add(
                Notes.Note.of(frame.say("today.notes.entry"), frame.say("today.notes.entry.text")));
        return Notes.of(notes);
    }
}
