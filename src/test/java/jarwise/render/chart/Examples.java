package jarwise.render.chart;

import jarwise.pest.StageMark;
import jarwise.render.chart.Trend.Round;
import jarwise.render.chart.Trend.Row;
import jarwise.render.chart.Trend.Treatment;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Interval;
import jarwise.render.words.Language;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Invented numbers to draw; evidence for nothing but the drawing. */
final class Examples {

    static final LocalDate FIRST = LocalDate.of(2026, 3, 2);

    private Examples() {}

    static Trend treated(Language language) {
        return trend(
                language,
                "P1-B3",
                "sprayed three times",
                new int[] {0, 4, 12, 41, 49, 83, 17, 5, 2, 0},
                List.of(treatment(3, 27, "6"), treatment(4, 8, "15"), treatment(4, 13, "15")));
    }

    static Trend check(Language language) {
        return trend(
                language,
                "P1-B4",
                "unsprayed check until 16 April",
                new int[] {-1, -1, 10, 34, 47, 44, 61, 19, 7, 2},
                List.of(treatment(4, 16, "15 + 6")));
    }

    private static Treatment treatment(int month, int day, String group) {
        return new Treatment(LocalDateTime.of(2026, month, day, 18, 0), group);
    }

    static Trend trend(
            Language language, String place, String note, int[] found, List<Treatment> treatments) {
        Figures figures = Figures.of(language);
        Days days = Days.of(language);
        List<Round> rounds = new ArrayList<>();
        List<String> jars = new ArrayList<>();
        List<String> counts = new ArrayList<>();
        for (int i = 0; i < found.length; i++) {
            LocalDate day = FIRST.plusWeeks(i);
            Interval interval = interval(found[i]);
            String tip = "%s, %s: %s".formatted(place, days.brief(day), figures.interval(interval));
            rounds.add(new Round(day, interval, tip));
            jars.add(found[i] < 0 ? "–" : "8");
            counts.add(found[i] < 0 ? "–" : Integer.toString(found[i]));
        }
        return new Trend(
                place,
                note,
                Optional.of(StageMark.LARVA),
                rounds,
                treatments,
                List.of(
                        new Row("jars washed", "jars", false, jars),
                        new Row("larvae found", "found", true, counts)));
    }

    static Optional<SmallTrend.Happening> potsIn() {
        return Optional.of(new SmallTrend.Happening(FIRST.plusDays(43), "pots in"));
    }

    static StageBars.Mix mix() {
        return new StageBars.Mix(
                treated(Language.ENGLISH).rounds().stream().map(Round::day).toList(),
                List.of(
                        stage("adult", StageMark.ADULT, 0, 1, 3, 16, 4, 24, 8, 3, 1, 1),
                        stage("pupal stages", StageMark.PUPAL, 0, 0, 1, 2, 3, 4, 2, 1, 0, 0),
                        stage("larva 2", StageMark.LARVA, 0, 2, 5, 20, 24, 43, 9, 3, 1, 0),
                        stage("larva 1", StageMark.LARVA1, 0, 2, 7, 21, 25, 40, 8, 2, 1, 0)),
                treated(Language.ENGLISH).treatments(),
                "larvae among all",
                List.of(StageMark.LARVA1, StageMark.LARVA));
    }

    private static StageBars.Stage stage(String name, StageMark mark, int... counts) {
        return new StageBars.Stage(
                name, mark, Arrays.stream(counts).mapToObj(OptionalInt::of).toList());
    }

    static Interval interval(int found) {
        if (found < 0) {
            return new Interval.NotSampled();
        }
        if (found == 0) {
            return Interval.noneFound(0.079);
        }
        double density = found / 42.0;
        double spread = Math.exp(0.5 + 0.8 / Math.sqrt(found));
        return Interval.found(density, density / spread, density * spread);
    }
}
