package jarwise.web.today;

import jarwise.decision.Finding;
import jarwise.plan.Round;
import jarwise.render.chart.DayBar;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.usecase.findings.Today;
import jarwise.usecase.findings.Today.Due;
import jarwise.web.Frame;
import jarwise.web.piece.StripRow.Lines;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What is due, as rows by the clock: at most seven, two solid buttons at most. */
final class ClockRows {

    private static final int MOST_ROWS = 7;

    /** Taller than any row: the page cuts it off. */
    private static final double ROW_HEIGHT = 160;

    private static final LocalTime DAY_ENDS = LocalTime.of(20, 0);
    private static final LocalTime WORK_ENDS = LocalTime.of(17, 0);

    private final Frame frame;
    private final FindingWords say;
    private final Figures figures;
    private final Days days;
    private final ZonedDateTime now;
    private final DayBar bar;
    private boolean solidRead;
    private boolean solidDecide;

    ClockRows(Frame frame, FindingWords say) {
        this.frame = frame;
        this.say = say;
        this.figures = say.figures();
        this.days = new Days(frame.words());
        this.now = frame.now();
        this.bar = new DayBar(now.toLocalTime(), frame.words());
    }

    String head() {
        return bar.head();
    }

    List<TodayView.Row> rows(Today today) {
        List<TodayView.Row> rows = new ArrayList<>();
        for (Due due : today.due()) {
            if (rows.size() < MOST_ROWS) {
                rows.add(row(due));
            }
        }
        return rows;
    }

    private TodayView.Row row(Due due) {
        if (due instanceof Due.NoEntry stop) {
            return noEntry(stop);
        }
        if (due instanceof Due.Read read) {
            return read(read);
        }
        if (due instanceof Due.Decide decide) {
            return decide(decide.finding());
        }
        if (due instanceof Due.Recount recount) {
            return sometime(
                    new Lines(
                            figures.counted("today.recount", recount.filters()),
                            frame.say("today.recount.sub")),
                    microscope(false));
        }
        if (due instanceof Due.Answer answer) {
            return sometime(
                    new Lines(
                            figures.counted("today.questions", answer.samples()),
                            frame.say("today.questions.sub")),
                    new TodayView.Button(
                            frame.say("today.button.samples"), frame.to("samples"), false));
        }
        return walk((Due.Walk) due);
    }

    private TodayView.Row noEntry(Due.NoEntry stop) {
        Application application = stop.application();
        String where =
                application.benches().isEmpty()
                        ? application.house()
                        : say.list(List.copyOf(application.benches()));
        String products =
                application.products().stream()
                        .map(ProductUse::product)
                        .collect(Collectors.joining(" + "));
        String until =
                stop.until()
                        .map(end -> frame.say("today.until", clock(end)))
                        .orElseGet(() -> frame.say("today.no-entry"));
        String sub =
                application
                        .reentryEnds()
                        .map(end -> interval(products, application.ended().orElseThrow(), end))
                        .orElseGet(() -> unknownEnd(products, application));
        LocalTime end = stop.until().map(this::untilOnThisDay).orElse(DAY_ENDS);
        return new TodayView.Row(
                TodayView.Kind.STOP,
                new Lines(until, frame.say("today.no-entry")),
                new Lines(frame.say("today.no-entry.what", where), sub),
                bar.row(
                        DayBar.Kind.NO_ENTRY,
                        Optional.empty(),
                        end,
                        ROW_HEIGHT,
                        frame.say("today.no-entry.what", where) + ", " + until),
                new TodayView.Button(
                        frame.say("today.button.bench"),
                        frame.to("findings") + bench(application),
                        false));
    }

    private String interval(String products, Instant ended, Instant end) {
        return frame.say(
                "today.no-entry.sub",
                products,
                days.weekday(day(ended)),
                days.time(local(ended).toLocalTime()),
                figures.minutes(Duration.between(ended, end).toMinutes()));
    }

    /**
     * The interval runs from the end of the application, so that its end is said if it is known.
     */
    private String unknownEnd(String products, Application application) {
        Instant said = application.ended().orElse(application.started());
        return frame.say(
                application.ended().isPresent()
                        ? "today.no-entry.open.ended"
                        : "today.no-entry.open",
                products,
                days.weekday(day(said)),
                days.time(local(said).toLocalTime()));
    }

    private static String bench(Application application) {
        return application.benches().size() == 1
                ? "?bench=" + Addresses.encoded(application.benches().iterator().next())
                : "?house=" + Addresses.encoded(application.house());
    }

    private TodayView.Row read(Due.Read read) {
        boolean late = read.window().readBy().isBefore(now.toInstant());
        boolean first = urgent(read) && !solidRead;
        solidRead |= first;
        String by = frame.say(late ? "today.dried" : "today.by", clock(read.window().readBy()));
        String wait =
                late
                        ? frame.say("today.late")
                        : frame.say("today.in", span(now.toInstant(), read.window().readBy()));
        String sub =
                frame.say(
                        late ? "today.read.late" : "today.read.sub",
                        days.weekday(day(read.window().washed())),
                        days.time(local(read.window().washed()).toLocalTime()),
                        figures.minutes(read.needed().toMinutes()));
        String early =
                read.window().earliest().isAfter(now.toInstant())
                        ? " " + frame.say("today.read.early", clock(read.window().earliest()))
                        : "";
        String what =
                frame.say(
                        "today.read",
                        figures.counted("today.filters", read.filters()),
                        say.place(read.stand()));
        return new TodayView.Row(
                late || today(read.window().readBy()) ? TodayView.Kind.PLAIN : TodayView.Kind.LATER,
                new Lines(by, wait),
                new Lines(what, sub + early),
                today(read.window().readBy()) ? window(read, what + ", " + by) : "",
                microscope(first));
    }

    private TodayView.Button microscope(boolean solid) {
        return new TodayView.Button(
                frame.say("today.button.microscope"), frame.to("microscope"), solid);
    }

    private String window(Due.Read read, String label) {
        Instant start =
                read.window().earliest().isAfter(now.toInstant())
                        ? read.window().earliest()
                        : now.toInstant();
        return bar.row(
                DayBar.Kind.DEADLINE,
                Optional.of(today(start) ? local(start).toLocalTime() : now.toLocalTime()),
                untilOnThisDay(read.window().readBy()),
                ROW_HEIGHT,
                label);
    }

    /** {@return whether filters dry out before the day is over, or have} */
    boolean urgent(Due.Read read) {
        return !day(read.window().readBy()).isAfter(now.toLocalDate());
    }

    private TodayView.Row decide(Finding finding) {
        boolean first = !solidDecide;
        solidDecide = true;
        String what = frame.say("today.decide", say.place(finding.stand()));
        String sub =
                frame.say(
                        "today.decide.sub",
                        say.start(say.subject(finding.subject())),
                        say.inWords(finding));
        return new TodayView.Row(
                TodayView.Kind.PLAIN,
                new Lines(frame.say("today.today"), say.firmness(finding)),
                new Lines(what, sub),
                sometimeBar(what),
                new TodayView.Button(
                        frame.say("today.button.letter"),
                        frame.to("report") + Addresses.of(finding.subject()),
                        first));
    }

    private TodayView.Row sometime(Lines what, TodayView.Button button) {
        return new TodayView.Row(
                TodayView.Kind.PLAIN,
                new Lines(frame.say("today.today"), ""),
                what,
                sometimeBar(what.first()),
                button);
    }

    private String sometimeBar(String label) {
        return now.toLocalTime().isBefore(WORK_ENDS)
                ? bar.row(
                        DayBar.Kind.SOMETIME,
                        Optional.of(now.toLocalTime()),
                        WORK_ENDS,
                        ROW_HEIGHT,
                        label)
                : "";
    }

    private TodayView.Row walk(Due.Walk walk) {
        Round round = walk.round();
        long ahead = ChronoUnit.DAYS.between(now.toLocalDate(), round.day());
        boolean onThisDay = ahead == 0;
        String benches = figures.counted("findings.benches", round.stops().size());
        return new TodayView.Row(
                onThisDay ? TodayView.Kind.PLAIN : TodayView.Kind.LATER,
                new Lines(
                        onThisDay ? frame.say("today.today") : days.weekday(round.day()),
                        onThisDay ? "" : figures.counted("today.days", ahead)),
                new Lines(
                        figures.counted(
                                "today.walk." + Addresses.word(round.method()), round.samples()),
                        benches),
                onThisDay ? sometimeBar(benches) : "",
                walk.name()
                        .map(name -> button("today.button.walk", "walk/" + name))
                        .orElseGet(() -> button("today.button.map", "map")));
    }

    private TodayView.Button button(String key, String page) {
        return new TodayView.Button(frame.say(key), frame.to(page), false);
    }

    /** {@return "10:20", with its weekday where it is not this day} */
    String clock(Instant at) {
        String time = days.time(local(at).toLocalTime());
        return today(at) ? time : days.weekday(day(at)) + ", " + time;
    }

    private String span(Instant from, Instant to) {
        Duration span = Duration.between(from, to);
        return span.toHours() >= 48
                ? figures.counted("today.span.days", span.toDays())
                : figures.minutes(span.toMinutes());
    }

    private LocalTime untilOnThisDay(Instant end) {
        return day(end).isAfter(now.toLocalDate()) ? DAY_ENDS : local(end).toLocalTime();
    }

    private boolean today(Instant at) {
        return day(at).equals(now.toLocalDate());
    }

    private LocalDate day(Instant at) {
        return local(at).toLocalDate();
    }

    private ZonedDateTime local(Instant at) {
        return at.atZone(now.getZone());
    }
}
