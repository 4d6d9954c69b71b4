package jarwise.web.rounds;

import jarwise.plan.BenchRings;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Figures;
import jarwise.stats.efficacy.EfficacyVerdict;
import jarwise.usecase.planning.Ask;
import jarwise.usecase.planning.PlanAnswer;
import jarwise.usecase.planning.PlanRequest;
import jarwise.web.Frame;
import jarwise.web.piece.Table;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/** The table behind each picture of a plan. */
final class PlanTables {

    private final Frame frame;
    private final FindingWords say;
    private final Figures figures;
    private final PlanRequest request;

    PlanTables(Frame frame, FindingWords say, PlanRequest request) {
        this.frame = frame;
        this.say = say;
        this.figures = say.figures();
        this.request = request;
    }

    Optional<Table> of(PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Detect detect) {
            return Optional.of(detect(detect));
        }
        if (answer instanceof PlanAnswer.Estimate estimate) {
            return Optional.of(estimate(estimate));
        }
        if (answer instanceof PlanAnswer.Compare compare) {
            return compare(compare);
        }
        if (answer instanceof PlanAnswer.Decide decide) {
            return Optional.of(decide(decide));
        }
        return Optional.of(delimit((PlanAnswer.Delimit) answer));
    }

    private List<String> head(String... columns) {
        return Stream.of(columns).map(column -> frame.say("plan.table." + column)).toList();
    }

    private Table detect(PlanAnswer.Detect answer) {
        String density = figures.exactly(((Ask.Detect) request.ask()).density());
        List<List<String>> rows =
                answer.rows().stream()
                        .map(
                                row ->
                                        List.of(
                                                figures.jars(row.jars()),
                                                bound(row.bound()),
                                                figures.percent(floor(row.chance())),
                                                figures.minutes(Math.round(row.minutes()))))
                        .toList();
        List<String> head =
                List.of(
                        frame.say("plan.table.jars"),
                        frame.say("plan.table.bound"),
                        frame.say("plan.table.found", density),
                        frame.say("plan.table.minutes"));
        return new Table(frame.say("plan.table.caption"), head, rows);
    }

    /** A chance is never shown greater than it is. */
    private static double floor(double chance) {
        return Math.floor(100 * chance + 1e-9) / 100;
    }

    private String bound(OptionalDouble bound) {
        return bound.isPresent()
                ? frame.say(
                        "finding.bound",
                        figures.fewerThan(bound.getAsDouble()),
                        figures.upper(bound.getAsDouble()))
                : frame.say("figure.no-bound");
    }

    private Table estimate(PlanAnswer.Estimate answer) {
        List<List<String>> rows =
                answer.rows().stream()
                        .map(
                                row ->
                                        List.of(
                                                figures.jars(row.jars()),
                                                figures.percent(
                                                        Math.ceil(100 * row.precision() - 1e-9)
                                                                / 100),
                                                figures.range(row.lower(), row.upper()),
                                                figures.minutes(Math.round(row.minutes()))))
                        .toList();
        return new Table(
                frame.say("plan.table.caption"),
                head("jars", "precision", "interval", "minutes"),
                rows);
    }

    private Optional<Table> compare(PlanAnswer.Compare answer) {
        PlanFigures words = new PlanFigures(say);
        return answer.outlook()
                .outlook()
                .map(
                        outlook ->
                                new Table(
                                        frame.say("plan.table.caption"),
                                        head("verdict", "chance"),
                                        Arrays.stream(EfficacyVerdict.values())
                                                .map(
                                                        verdict ->
                                                                List.of(
                                                                        words.verdict(verdict),
                                                                        figures.percent(
                                                                                outlook.probability(
                                                                                        verdict))))
                                                .toList()));
    }

    private Table decide(PlanAnswer.Decide answer) {
        List<List<String>> rows =
                answer.rows().stream()
                        .map(
                                row ->
                                        List.of(
                                                figures.density(row.density()),
                                                figures.percent(row.below()),
                                                figures.percent(row.above()),
                                                figures.percent(row.undecided()),
                                                figures.density(row.averageJars())))
                        .toList();
        return new Table(
                frame.say("plan.table.caption"),
                head("density", "below", "above", "undecided", "average"),
                rows);
    }

    private Table delimit(PlanAnswer.Delimit answer) {
        List<List<String>> rows =
                answer.rings().places().stream()
                        .filter(place -> answer.sampled().contains(place.bench()))
                        .sorted(
                                Comparator.comparingInt((BenchRings.Place place) -> place.ring())
                                        .thenComparing(place -> place.bench()))
                        .map(
                                place ->
                                        List.of(
                                                place.bench(),
                                                figures.whole(place.ring()),
                                                bound(answer.boundOfOne())))
                        .toList();
        return new Table(frame.say("plan.table.caption"), head("bench", "ring", "bound"), rows);
    }
}
