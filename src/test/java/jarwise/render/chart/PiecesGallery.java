package jarwise.render.chart;

import jarwise.decision.Verdict;
import jarwise.pest.StageMark;
import jarwise.render.words.Figures;
import jarwise.render.words.Interval;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes target/pieces.html: every picture in each of its states, to be looked at. */
final class PiecesGallery {

    private final Words words;
    private final Figures figures;
    private final StringBuilder out = new StringBuilder();

    private PiecesGallery(Language language) {
        words = Words.of(language);
        figures = new Figures(words);
    }

    public static void main(String[] arguments) throws IOException {
        for (Language language : Language.values()) {
            Path file = Path.of("target", "pieces-" + language.code() + ".html");
            Files.writeString(file, new PiecesGallery(language).page());
        }
    }

    private String page() {
        out.append("<!doctype html><html lang=").append(words.language().code());
        out.append("><meta charset=utf-8><meta name=viewport content='width=device-width'>");
        out.append("<title>Pieces</title><style>").append(CSS).append("</style><body>");
        strips();
        marks();
        trends();
        rest();
        return out.append("</body></html>").toString();
    }

    private void strips() {
        heading("The strip");
        Axis axis = Axis.density(0.1, figures);
        List<Interval> intervals =
                List.of(
                        Interval.found(0.02, 0.009, 0.058),
                        Interval.found(0.31, 0.131, 0.86),
                        Interval.found(0.157, 0.05, 0.49),
                        Interval.noneFound(0.0788),
                        Interval.noneFound(0.15),
                        new Interval.AtLeast(0.4),
                        Interval.found(1.9, 0.7, 11),
                        new Interval.Found(0.31, 0.13, OptionalDouble.empty()),
                        Interval.found(0.04, 0.001, 0.3),
                        new Interval.NoneFound(OptionalDouble.empty()),
                        new Interval.NotSampled(),
                        new Interval.NotRead());
        table(Strip.desk(axis, words), intervals, Optional.empty());
        table(Strip.phone(axis, words), intervals, Optional.of(StageMark.LARVA));
        table(Strip.letter(axis, words), intervals, Optional.of(StageMark.LARVA));
        heading("Against each row's own line; times as many; efficacy");
        table(Strip.desk(Axis.relativeToTheLine(figures), words), intervals, Optional.empty());
        table(
                Strip.desk(Axis.timesAsMany(figures), words),
                List.of(Interval.found(7, 1.3, 40), new Interval.AtLeast(1.9)),
                Optional.empty());
        table(
                Strip.desk(Axis.efficacy(0.6, figures), words),
                List.of(
                        Interval.found(0.81, 0.2, 0.97),
                        Interval.found(0.14, -1.13, 0.65),
                        Interval.found(0.85, 0.61, 0.94)),
                Optional.of(StageMark.ADULT));
        table(
                Strip.desk(Axis.density(0.5, figures), words),
                List.of(Interval.found(0.93, 0.4, 3.2)),
                Optional.empty());
    }

    private void table(Strip strip, List<Interval> intervals, Optional<StageMark> mark) {
        out.append("<table><thead><tr><th>State<th class=strip>").append(strip.head());
        out.append("</thead>");
        for (Interval interval : intervals) {
            String text = figures.interval(interval);
            out.append("<tr><td>").append(text).append("<td class=strip>");
            out.append(strip.row(interval, text, mark));
        }
        out.append("</table>");
    }

    private void marks() {
        heading("Marks");
        for (Palette palette : List.of(Palette.DESK, Palette.DARK)) {
            out.append(palette.dark() ? "<p class='marks dark'>" : "<p class=marks>");
            for (StageMark mark : StageMark.values()) {
                out.append(StageMarks.draw(mark, 26, palette));
                out.append(' ').append(mark.name()).append(' ');
            }
            for (Verdict verdict : Verdict.values()) {
                out.append(VerdictMarks.draw(verdict, 39, palette)).append(verdict.text());
            }
            out.append(VerdictMarks.unknown(39, palette)).append(VerdictMarks.worked(39, palette));
            out.append(VerdictMarks.failed(39, palette)).append(VerdictMarks.more(39, palette));
            out.append(VerdictMarks.fewer(39, palette)).append("</p>");
        }
    }

    private void trends() {
        heading("The trend");
        Axis axis = Axis.density(0.1, figures);
        Language language = words.language();
        for (Trend trend : List.of(Examples.treated(language), Examples.check(language))) {
            out.append("<div class=desk>");
            out.append(TrendChart.desk(axis, words).draw(trend, "Larvae")).append("</div>");
            out.append("<div class=phone>");
            out.append(TrendChart.phone(axis, words).draw(trend, "Larvae")).append("</div>");
        }
    }

    private void rest() {
        heading("Stages");
        StageBars.Mix mix = Examples.mix();
        out.append("<div class=desk>").append(StageBars.desk(words).draw(mix, "Stages"));
        out.append("</div><div class=phone>").append(StageBars.phone(words).draw(mix, "Stages"));
        out.append("</div>");
        heading("The day");
        DayBar day = new DayBar(LocalTime.of(7, 40), words);
        Optional<LocalTime> now = Optional.of(day.now());
        LocalTime until = LocalTime.of(10, 20);
        out.append("<table><tr><td class=strip>").append(day.head());
        for (DayBar.Kind kind : DayBar.Kind.values()) {
            Optional<LocalTime> from = kind == DayBar.Kind.NO_ENTRY ? Optional.empty() : now;
            out.append("<tr><td class=strip>").append(day.row(kind, from, until, 60, "a window"));
            until = until.plusHours(5);
        }
        out.append("</table>");
        heading("Emblem");
        for (double size : new double[] {16, 24, 40, 84}) {
            out.append(FilterEmblem.draw(size, Palette.DESK)).append(' ');
        }
        out.append(FilterEmblem.unread(84, Palette.DESK));
        heading("Small trends");
        SmallTrend small = new SmallTrend(Axis.density(0.1, figures), words);
        Language language = words.language();
        out.append(small.draw(Examples.treated(language), Optional.empty(), true));
        out.append(small.draw(Examples.check(language), Examples.potsIn(), false));
    }

    private void heading(String text) {
        out.append("<h2>").append(text).append("</h2>");
    }

    private static final String CSS =
            """
            body{margin:0 auto;max-width:1040px;padding:16px;background:#FCFBF7;color:#17212B;
            font:17px/26px "Liberation Sans",Arial,sans-serif}
            h2{font:700 22px/30px Palatino,"TeX Gyre Pagella",Georgia,serif;margin:48px 0 8px}
            svg{overflow:visible} td svg,th svg{display:block}
            table{border-collapse:collapse;margin:16px 0} td,th{text-align:left;padding:0 24px 0 0}
            th{font-weight:400;font-size:14px;vertical-align:bottom;border-bottom:1px solid #85817A}
            td{border-bottom:1px solid #D9D6CB} .marks svg{vertical-align:-6px;margin-left:14px}
            .dark{background:#0D0E0B;color:#E6DFC8;padding:16px}
            .phone{display:none}
            @media(max-width:720px){.desk{display:none}.phone{display:block}}
            """;
}
