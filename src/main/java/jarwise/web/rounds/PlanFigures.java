package jarwise.web.rounds;

import jarwise.plan.BenchRings;
import jarwise.render.chart.Axis;
import jarwise.render.finding.FindingWords;
import jarwise.render.round.ChanceBars;
import jarwise.render.round.CurveChart;
import jarwise.render.round.Curves;
import jarwise.render.round.Curves.Line;
import jarwise.render.round.Curves.Point;
import jarwise.render.round.Curves.Scale;
import jarwise.render.round.Curves.Stroke;
import jarwise.render.round.RingChart;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import jarwise.stats.efficacy.EfficacyVerdict;
import jarwise.usecase.planning.Ask;
import jarwise.usecase.planning.PlanAnswer;
import jarwise.web.piece.Picture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/** Draws what a round can tell. */
final class PlanFigures {

    private static final double[] STEPS = {1, 2, 5};

    private final Words words;
    private final Figures figures;
    private final FindingWords say;

    PlanFigures(FindingWords say) {
        this.say = say;
        this.words = say.words();
        this.figures = say.figures();
    }

    Picture detect(Ask.Detect ask, PlanAnswer.Detect answer) {
        List<Line> lines = new ArrayList<>();
        answer.curves()
                .forEach(
                        (way, points) ->
                                lines.add(
                                        new Line(
                                                name(way, answer.jars()),
                                                stroke(lines.size()),
                                                points.stream().map(PlanFigures::plain).toList())));
        List<PlanAnswer.Point> first = answer.curves().values().iterator().next();
        double from = first.get(0).x();
        double to = first.get(first.size() - 1).x();
        Curves curves =
                new Curves(
                        new Scale(words.say("plan.axis.density"), from, to, true, ratio(from, to)),
                        chances(),
                        lines,
                        Optional.of(
                                new Axis.Tick(
                                        ask.density(),
                                        words.say(
                                                "plan.axis.asked",
                                                figures.exactly(ask.density())))));
        return both(
                curves,
                words.say(
                        "plan.picture.detect",
                        figures.jars(answer.jars()),
                        figures.percent(answer.chance()),
                        figures.exactly(ask.density())));
    }

    private String name(String way, int jars) {
        return way.equals("wash") ? figures.jars(jars) : words.say("plan.way." + way);
    }

    private static Stroke stroke(int number) {
        return number == 0 ? Stroke.WHOLE : number == 1 ? Stroke.DASHED : Stroke.DOTTED;
    }

    private static Point plain(PlanAnswer.Point point) {
        return new Point(point.x(), point.y(), "");
    }

    private Scale chances() {
        return new Scale(
                words.say("plan.axis.chance"),
                0,
                1,
                false,
                DoubleStream.of(0, 0.25, 0.5, 0.75, 1)
                        .mapToObj(share -> new Axis.Tick(share, figures.plain(100 * share)))
                        .toList());
    }

    private List<Axis.Tick> ratio(double from, double to) {
        List<Axis.Tick> ticks = new ArrayList<>();
        for (int power = -7; power <= 4; power++) {
            for (double step : STEPS) {
                double value = Double.parseDouble(step + "e" + power);
                if (value >= from * 0.999 && value <= to * 1.001) {
                    ticks.add(new Axis.Tick(value, figures.plain(value)));
                }
            }
        }
        return ticks;
    }

    /** Round numbers from 0 up to a most: five steps or so. */
    private List<Axis.Tick> even(double most) {
        double step = 1;
        for (int power = -7; power <= 6; power++) {
            for (double one : STEPS) {
                double value = Double.parseDouble(one + "e" + power);
                if (most / value > 6) {
                    step = Double.parseDouble(one + "e" + power);
                }
            }
        }
        double wide = step * (most / step > 12 ? 2.5 : most / step > 8 ? 2 : 1);
        List<Axis.Tick> ticks = new ArrayList<>();
        for (int i = 0; i * wide <= most * 1.0001; i++) {
            ticks.add(new Axis.Tick(i * wide, figures.plain(i * wide)));
        }
        return ticks;
    }

    Picture estimate(Ask.Estimate ask, PlanAnswer.Estimate answer) {
        List<Point> upper = new ArrayList<>();
        List<Point> lower = new ArrayList<>();
        for (PlanAnswer.EstimateRow row : answer.rows()) {
            String tip = row.jars() == answer.jars() ? limits(row) : "";
            upper.add(new Point(row.jars(), row.upper(), tip));
            lower.add(new Point(row.jars(), row.lower(), ""));
        }
        double most =
                answer.rows().stream().mapToDouble(PlanAnswer.EstimateRow::upper).max().orElse(1);
        int first = answer.rows().get(0).jars();
        int last = answer.rows().get(answer.rows().size() - 1).jars();
        List<Axis.Tick> ticks =
                answer.rows().stream()
                        .map(row -> new Axis.Tick(row.jars(), figures.whole(row.jars())))
                        .toList();
        List<Point> middle =
                List.of(new Point(first, ask.density(), ""), new Point(last, ask.density(), ""));
        Curves curves =
                new Curves(
                        new Scale(
                                words.say("plan.axis.jars"),
                                first,
                                Math.max(first + 1, last),
                                false,
                                ticks),
                        new Scale(
                                words.say("plan.axis.density"), 0, most * 1.05, false, even(most)),
                        List.of(
                                new Line(words.say("plan.line.upper"), Stroke.DASHED, upper),
                                new Line(words.say("plan.line.expected"), Stroke.WHOLE, middle),
                                new Line(words.say("plan.line.lower"), Stroke.DASHED, lower)),
                        Optional.empty());
        return both(
                curves,
                words.say(
                        "plan.picture.estimate",
                        figures.jars(answer.jars()),
                        limits(answer.row())));
    }

    private String limits(PlanAnswer.EstimateRow row) {
        return figures.range(row.lower(), row.upper());
    }

    Picture decide(Ask.Decide ask, PlanAnswer.Decide answer) {
        List<Point> above = new ArrayList<>();
        List<Point> average = new ArrayList<>();
        double most = 1;
        for (PlanAnswer.DecideRow row : answer.rows()) {
            boolean asked = row.density() == ask.low() || row.density() == ask.high();
            above.add(
                    new Point(
                            row.density(), row.below(), asked ? figures.percent(row.below()) : ""));
            average.add(
                    new Point(
                            row.density(),
                            row.averageJars(),
                            asked ? figures.density(row.averageJars()) : ""));
            most = Math.max(most, row.averageJars());
        }
        double to = answer.rows().get(answer.rows().size() - 1).density();
        Scale densities = new Scale(words.say("plan.axis.density"), 0, to, false, even(to));
        Curves characteristic =
                new Curves(
                        densities,
                        chances(),
                        List.of(new Line(words.say("plan.line.below"), Stroke.WHOLE, above)),
                        Optional.empty());
        Curves number =
                new Curves(
                        densities,
                        new Scale(
                                words.say("plan.axis.average"), 0, most * 1.05, false, even(most)),
                        List.of(new Line(words.say("plan.line.average"), Stroke.WHOLE, average)),
                        Optional.empty());
        List<Picture.Panel> panels = new ArrayList<>();
        panels.addAll(both(characteristic, words.say("plan.picture.decide")).panels());
        panels.addAll(both(number, words.say("plan.picture.average")).panels());
        return new Picture(panels);
    }

    Optional<Picture> compare(PlanAnswer.Compare answer) {
        return answer.outlook()
                .outlook()
                .map(
                        outlook -> {
                            List<ChanceBars.Bar> bars =
                                    java.util.Arrays.stream(EfficacyVerdict.values())
                                            .map(
                                                    verdict ->
                                                            new ChanceBars.Bar(
                                                                    verdict(verdict),
                                                                    outlook.probability(verdict),
                                                                    figures.percent(
                                                                            outlook.probability(
                                                                                    verdict))))
                                            .toList();
                            String label = words.say("plan.picture.compare");
                            return new Picture(
                                    List.of(
                                            new Picture.Panel(
                                                    ChanceBars.desk().draw(bars, label),
                                                    ChanceBars.phone().draw(bars, label))));
                        });
    }

    String verdict(EfficacyVerdict verdict) {
        return words.say("plan.verdict." + verdict.name().toLowerCase(java.util.Locale.ROOT));
    }

    Picture delimit(Ask.Delimit ask, PlanAnswer.Delimit answer, List<String> planted) {
        List<RingChart.Cell> cells =
                answer.rings().places().stream()
                        .map(place -> cell(place, ask, answer, planted))
                        .toList();
        String label =
                words.say(
                        "plan.picture.delimit",
                        ask.find(),
                        figures.jars(answer.jars()),
                        say.list(answer.sampled()));
        return new Picture(
                List.of(
                        new Picture.Panel(
                                RingChart.desk().draw(cells, label),
                                RingChart.phone().draw(cells, label))));
    }

    private RingChart.Cell cell(
            BenchRings.Place place,
            Ask.Delimit ask,
            PlanAnswer.Delimit answer,
            List<String> planted) {
        RingChart.Kind kind =
                place.ring() == 0
                        ? RingChart.Kind.FIND
                        : answer.sampled().contains(place.bench())
                                ? RingChart.Kind.JAR
                                : planted.contains(place.bench())
                                        ? RingChart.Kind.OUTSIDE
                                        : RingChart.Kind.NO_PLANTS;
        String tip =
                words.say(
                        "plan.ring." + kind.name().toLowerCase(java.util.Locale.ROOT),
                        place.bench(),
                        place.ring(),
                        ask.find());
        return new RingChart.Cell(place.bench(), place.bay(), place.row(), place.ring(), kind, tip);
    }

    private static Picture both(Curves curves, String label) {
        return new Picture(
                List.of(
                        new Picture.Panel(
                                CurveChart.desk().draw(curves, label),
                                CurveChart.phone().draw(curves, label))));
    }

    /** {@return the rings that are drawn, for the table} */
    static IntStream rings(PlanAnswer.Delimit answer) {
        return answer.rings().places().stream()
                .mapToInt(BenchRings.Place::ring)
                .distinct()
                .sorted();
    }
}
