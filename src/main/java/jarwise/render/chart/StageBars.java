package jarwise.render.chart;

import jarwise.base.InvalidInput;
import jarwise.pest.StageMark;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Animals counted by stage and round: stages are rows on one scale, the count stands over each bar.
 * Shares are given from ten animals up, because a share of five misleads.
 *
 * @param size measures for the desk or the phone
 * @param palette colours of the medium
 * @param words the language of what is written on it
 */
public record StageBars(TrendChart.Size size, Palette palette, Words words) {

    private static final int LEAST_FOR_A_SHARE = 10;
    private static final double TALLEST = 62;

    /**
     * One stage, a row of the picture.
     *
     * @param name what it is called
     * @param mark its mark
     * @param counts animals a round; empty where nobody sampled
     */
    public record Stage(String name, StageMark mark, List<OptionalInt> counts) {
        public Stage {
            counts = List.copyOf(counts);
        }
    }

    /**
     * What is drawn.
     *
     * @param days the rounds, in order
     * @param stages rows from top to bottom
     * @param treatments what was done to this place
     * @param shareName name of the row of shares, such as "larvae among all"
     * @param shareMarks stages whose share that row gives
     */
    public record Mix(
            List<LocalDate> days,
            List<Stage> stages,
            List<Trend.Treatment> treatments,
            String shareName,
            List<StageMark> shareMarks) {
        public Mix {
            days = List.copyOf(days);
            stages = List.copyOf(stages);
            treatments = List.copyOf(treatments);
            shareMarks = List.copyOf(shareMarks);
            for (Stage stage : stages) {
                if (stage.counts().size() != days.size()) {
                    throw new InvalidInput(
                            "'%s' has %d counts for %d rounds."
                                    .formatted(stage.name(), stage.counts().size(), days.size()));
                }
            }
        }
    }

    /** {@return stage bars for the desk} */
    public static StageBars desk(Words words) {
        return new StageBars(TrendChart.Size.DESK, Palette.DESK, words);
    }

    /** {@return stage bars for a phone} */
    public static StageBars phone(Words words) {
        return new StageBars(TrendChart.Size.PHONE, Palette.PHONE, words);
    }

    /**
     * Draws the stages of one place.
     *
     * @param mix counts by stage and round
     * @param label what the picture shows, for those who do not see it
     * @return the picture
     */
    public String draw(Mix mix, String label) {
        double left = left(mix);
        TimeAxis time = new TimeAxis(mix.days(), left + 28, size.right() - 14);
        TreatmentLabels labels =
                TreatmentLabels.place(mix.treatments(), time, !size.phone(), words);
        double top = mix.treatments().isEmpty() ? 8 : size.phone() ? 24 : 44;
        List<Double> feet = feet(mix, top);
        double foot = feet.get(feet.size() - 1);
        Svg svg = Svg.picture(size.width(), foot + 62, label);
        labels.draw(svg, top, foot, palette);
        for (int i = 0; i < feet.size(); i++) {
            stage(svg, mix.stages().get(i), time, feet.get(i), left, scale(mix));
        }
        dates(svg, mix, time, foot, left);
        return svg.end();
    }

    private double left(Mix mix) {
        if (size.phone()) {
            return 0;
        }
        double longest = Lettering.width(mix.shareName(), 14) + 12;
        for (Stage stage : mix.stages()) {
            longest = Math.max(longest, Lettering.width(stage.name(), 15) * 1.08 + 40);
        }
        return Math.max(128, longest);
    }

    private static double scale(Mix mix) {
        return TALLEST
                / Math.max(1, mix.stages().stream().mapToInt(StageBars::most).max().orElse(1));
    }

    private static int most(Stage stage) {
        return stage.counts().stream().mapToInt(count -> count.orElse(0)).max().orElse(0);
    }

    private List<Double> feet(Mix mix, double top) {
        List<Double> feet = new ArrayList<>();
        double y = top;
        for (Stage stage : mix.stages()) {
            y += Math.max(58, most(stage) * scale(mix) + 34) + (size.phone() ? 24 : 0);
            feet.add(y);
        }
        if (feet.isEmpty()) {
            throw new InvalidInput("There are no stages to draw; give at least one.");
        }
        return feet;
    }

    private void stage(
            Svg svg, Stage stage, TimeAxis time, double foot, double left, double scale) {
        svg.line(left, foot, size.right(), foot, "stroke", palette.edge());
        double nameY = foot - (size.phone() ? most(stage) * scale + 28 : 6);
        double nameWidth = Lettering.width(stage.name(), 15) * 1.08;
        double nameX = size.phone() ? 24 : left - 8;
        double markX = size.phone() ? 9 : left - 8 - nameWidth - 14;
        StageMarks.point(svg, java.util.Optional.of(stage.mark()), markX, nameY - 5, 6.2, palette);
        svg.text(
                nameX,
                nameY,
                stage.name(),
                "font-size",
                15,
                "font-weight",
                "700",
                "fill",
                palette.ink(),
                "text-anchor",
                size.phone() ? "start" : "end");
        double width = Math.min(18, time.step() * 0.6);
        for (int i : time.labelled(0)) {
            double x = time.at(time.days().get(i));
            bar(svg, stage, i, new double[] {x, foot, width, scale});
        }
    }

    private void bar(Svg svg, Stage stage, int round, double[] place) {
        OptionalInt count = stage.counts().get(round);
        double x = place[0];
        double foot = place[1];
        double width = place[2];
        double height = count.orElse(0) * place[3];
        if (count.isEmpty()) {
            Lettering.hatch(svg, x - 9, x + 9, foot - 3, palette);
            return;
        }
        if (height > 0) {
            svg.rect(
                    x - width / 2,
                    foot - height,
                    width,
                    height,
                    "fill",
                    StageMarks.fill(stage.mark(), palette),
                    "stroke",
                    palette.ink(),
                    "stroke-width",
                    1.1);
        }
        String text = Integer.toString(count.getAsInt());
        double half = Lettering.width(text, 14) / 2 + 2;
        double y = foot - height - 6;
        svg.rect(x - half, y - 13, 2 * half, 16, "fill", palette.paper());
        svg.text(
                x,
                y,
                text,
                "font-size",
                14,
                "text-anchor",
                "middle",
                "fill",
                height > 0 ? palette.ink() : palette.quiet(),
                "font-weight",
                height > 0 ? "700" : "400");
    }

    private void dates(Svg svg, Mix mix, TimeAxis time, double foot, double left) {
        List<Integer> labelled = time.labelled(size.phone() ? 24 : 30);
        Days days = new Days(words);
        for (int i = 0; i < labelled.size(); i++) {
            int round = labelled.get(i);
            double x = time.at(mix.days().get(round));
            String date =
                    size.phone()
                            ? Integer.toString(mix.days().get(round).getDayOfMonth())
                            : time.label(labelled, i, days);
            svg.open("g", "font-size", 14, "text-anchor", "middle");
            svg.text(x, foot + 20, date, "fill", palette.ink());
            if (!size.phone()) {
                svg.text(x, foot + 44, share(mix, round), "fill", palette.quiet());
            }
            svg.close();
        }
        if (!size.phone()) {
            svg.open("g", "font-size", 14, "text-anchor", "end");
            svg.text(left - 8, foot + 44, mix.shareName(), "fill", palette.quiet()).close();
        }
    }

    /** {@return the share as it is written under a round: a dash below ten animals} */
    String share(Mix mix, int round) {
        int all = 0;
        int chosen = 0;
        for (Stage stage : mix.stages()) {
            int count = stage.counts().get(round).orElse(0);
            all += count;
            chosen += mix.shareMarks().contains(stage.mark()) ? count : 0;
        }
        return all < LEAST_FOR_A_SHARE ? "–" : new Figures(words).percent((double) chosen / all);
    }
}
