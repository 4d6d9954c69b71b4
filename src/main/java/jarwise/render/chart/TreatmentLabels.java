package jarwise.render.chart;

import jarwise.render.chart.Trend.Treatment;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Dotted lines of treatments with their group and day; labels of neighbours turn away from each
 * other, and one that is crowded from both sides keeps only its group.
 *
 * @param placed from left to right
 * @param twoLines whether the day stands under the group
 */
record TreatmentLabels(List<Placed> placed, boolean twoLines) {

    /** A label with its place; {@code anchor} as in SVG. */
    record Placed(double x, String group, String day, String anchor, double width) {
        double left() {
            return switch (anchor) {
                case "start" -> x - 5;
                case "end" -> x + 5 - width;
                default -> x - width / 2;
            };
        }
    }

    static TreatmentLabels place(
            List<Treatment> treatments, TimeAxis time, boolean twoLines, Words words) {
        List<Treatment> inOrder = new ArrayList<>(treatments);
        inOrder.sort(Comparator.comparing(Treatment::at));
        double[] x = inOrder.stream().mapToDouble(t -> time.at(t.at())).toArray();
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < x.length; i++) {
            double roomLeft = i == 0 ? Double.POSITIVE_INFINITY : x[i] - x[i - 1];
            double roomRight = i == x.length - 1 ? Double.POSITIVE_INFINITY : x[i + 1] - x[i];
            placed.add(label(inOrder.get(i), x[i], roomLeft, roomRight, twoLines, words));
        }
        return new TreatmentLabels(List.copyOf(placed), twoLines);
    }

    private static Placed label(
            Treatment treatment,
            double x,
            double roomLeft,
            double roomRight,
            boolean twoLines,
            Words words) {
        String group = words.say("chart.group", treatment.group());
        String day = new Days(words).brief(treatment.at().toLocalDate());
        double width =
                Math.max(
                        Lettering.width(group, 14) * 1.08, twoLines ? Lettering.width(day, 14) : 0);
        double room = width + 8;
        boolean onlyCode = twoLines ? Math.max(roomLeft, roomRight) < room : roomLeft < room;
        if (onlyCode) {
            group = treatment.group();
            day = "";
            width = Lettering.width(group, 14) * 1.08;
            room = width + 4;
        }
        boolean turned = !Double.isInfinite(Math.min(roomLeft, roomRight));
        String anchor =
                !turned || Math.min(roomLeft, roomRight) >= room
                        ? "middle"
                        : roomRight < roomLeft ? "end" : "start";
        return new Placed(x, group, day, anchor, width);
    }

    double leftMost() {
        return placed.stream().mapToDouble(Placed::left).min().orElse(Double.POSITIVE_INFINITY);
    }

    void draw(Svg svg, double top, double foot, Palette palette) {
        for (Placed label : placed) {
            svg.line(
                    label.x,
                    top,
                    label.x,
                    foot,
                    "stroke",
                    palette.ink(),
                    "stroke-width",
                    1.6,
                    "stroke-dasharray",
                    "1.6 3.6",
                    "stroke-linecap",
                    "round");
            double x =
                    label.x
                            + (label.anchor.equals("end")
                                    ? 5
                                    : label.anchor.equals("start") ? -5 : 0);
            svg.open("g", "font-size", 14, "text-anchor", label.anchor);
            svg.text(
                    x,
                    top - (twoLines ? 20 : 5),
                    label.group,
                    "font-weight",
                    "700",
                    "fill",
                    palette.ink());
            if (twoLines && !label.day.isEmpty()) {
                svg.text(x, top - 5, label.day, "fill", palette.quiet());
            }
            svg.close();
        }
    }
}
