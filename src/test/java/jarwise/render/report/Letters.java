package jarwise.render.report;

import jarwise.decision.Verdict;
import jarwise.render.chart.Axis;
import jarwise.render.chart.SmallTrend.Happening;
import jarwise.render.chart.Trend;
import jarwise.render.report.Letter.Going;
import jarwise.render.report.Letter.Paragraph;
import jarwise.render.report.Letter.Row;
import jarwise.render.words.Figures;
import jarwise.render.words.Interval;
import jarwise.render.words.Language;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Invented letters to print; evidence for nothing but the printing. */
final class Letters {

    private static final LocalDate FIRST = LocalDate.of(2026, 3, 2);

    private Letters() {}

    /** A usual letter: four places, three trends, four paragraphs. */
    static Letter usual(Language language) {
        return letter(
                language,
                "Decide on ‘Cloudmarsh’ today. Take 20 more jars from ‘Pellam Pink’ on Monday. "
                        + "‘Rubia Tarn’ can wait: P1-B3 is below your line, and P1-B4 is falling.",
                rows(),
                paragraphs());
    }

    /** One with far more to say than a page holds. */
    static Letter farTooLong(Language language) {
        List<Row> rows = new ArrayList<>();
        List<Paragraph> paragraphs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            rows.addAll(rows());
            paragraphs.addAll(paragraphs());
        }
        String answer = String.join(" ", Collections.nCopies(9, "Decide on ‘Cloudmarsh’ today."));
        return letter(language, answer, rows, paragraphs);
    }

    private static Letter letter(
            Language language, String answer, List<Row> rows, List<Paragraph> paragraphs) {
        return new Letter(
                language,
                new Letter.Head(
                        "Quillback Lane Nursery",
                        10,
                        LocalDate.of(2026, 5, 7),
                        "HG-1, head grower",
                        "SC-1, scout",
                        "Western flower thrips, round of 4 May: 34 of 37 jars read."),
                answer,
                "Larvae per growing point",
                Axis.density(0.1, Figures.of(language)),
                "The line is yours: 0.1 larvae per growing point (1 in 10), set on 2 March.",
                rows,
                goings(),
                paragraphs,
                "Washing frees about 58 % of larvae and the reader sees 91 % of those; the figures"
                        + " allow for both. Had only 25 % come off, P1-B3 would be a “cannot"
                        + " tell”. ‘Copper Wren’ is being read.",
                List.of(
                        new Paragraph(
                                "No entry to H2-B6 until 19:30 today",
                                "(DEMO Stage-M, sprayed Wednesday 19:30, 24 h).")),
                true,
                "Counted by SC-1 (24 filters) and SC-2 (10). Letter QL-2026-10.");
    }

    private static List<Row> rows() {
        return List.of(
                new Row(
                        "‘Cloudmarsh’, P1-B5",
                        "10 larvae in 6 jars, about 1 in 3",
                        Interval.found(0.31, 0.13, 0.86),
                        Optional.of(Verdict.ABOVE_THE_LINE),
                        "99 % sure",
                        "Decide on a treatment",
                        "today, by 12:00"),
                new Row(
                        "‘Pellam Pink’, H2-B4",
                        "5 larvae in 6 jars, about 1 in 6",
                        Interval.found(0.157, 0.05, 0.49),
                        Optional.of(Verdict.CANNOT_TELL),
                        "81 % likely above",
                        "20 more jars",
                        "Mon 11 May, pots stay"),
                new Row(
                        "‘Rubia Tarn’, P1-B3",
                        "none in 8 jars, fewer than 1 in 12",
                        Interval.noneFound(0.0788),
                        Optional.of(Verdict.BELOW_THE_LINE),
                        "95 % sure",
                        "Nothing this week",
                        "usual 8 jars, Mon 11 May"),
                new Row(
                        "‘Tessellate’, H2-D1",
                        "no jars",
                        new Interval.NotSampled(),
                        Optional.empty(),
                        "",
                        "Plan 4 jars",
                        "Mon 11 May"));
    }

    private static List<Paragraph> paragraphs() {
        return List.of(
                new Paragraph(
                        "‘Cloudmarsh’", "has risen for nine weeks, doubling about every 17 days."),
                new Paragraph(
                        "‘Pellam Pink’",
                        "showed none in eight rounds. Larvae came 13 days after 180 pots from"
                                + " P1-B3 were set on its bench. That fits the pots (lot L-117);"
                                + " its own lot, L-121, showed none on arrival."),
                new Paragraph(
                        "The spray of 8 April",
                        "took 85 % of the larvae on P1-B3 (61 to 94 %), against the unsprayed"
                                + " P1-B4. Your target is 60 %: it worked."),
                new Paragraph(
                        "Uses on your record,",
                        "DEMO Stage-L, group 15: P1-B5 none, P1-B4 one, P1-B3 two, of three"
                                + " allowed per crop."));
    }

    private static List<Going> goings() {
        Trend.Treatment spray = new Trend.Treatment(FIRST.plusDays(37).atTime(18, 0), "15");
        return List.of(
                new Going(
                        trend("P1-B5", "‘Cloudmarsh’", List.of(), 0, 1, 1, 2, 4, 4, 5, 7, 7, 10),
                        Optional.empty()),
                new Going(
                        trend("H2-B4", "‘Pellam Pink’", List.of(), 0, 0, 0, 0, 0, 0, 0, 0, 2, 5),
                        Optional.of(new Happening(FIRST.plusDays(43), "pots in"))),
                new Going(
                        trend(
                                "P1-B3",
                                "‘Rubia Tarn’",
                                List.of(spray),
                                0,
                                4,
                                12,
                                41,
                                49,
                                83,
                                17,
                                5,
                                2,
                                0),
                        Optional.empty()));
    }

    private static Trend trend(
            String place, String note, List<Trend.Treatment> treatments, int... found) {
        List<Trend.Round> rounds = new ArrayList<>();
        for (int i = 0; i < found.length; i++) {
            double density = found[i] / 35.0;
            double spread = Math.exp(0.5 + 0.8 / Math.sqrt(Math.max(1, found[i])));
            Interval interval =
                    found[i] == 0
                            ? Interval.noneFound(0.0788)
                            : Interval.found(density, density / spread, density * spread);
            rounds.add(new Trend.Round(FIRST.plusWeeks(i), interval, found[i] + " larvae"));
        }
        return new Trend(place, note, Optional.empty(), rounds, treatments, List.of());
    }
}
