package jarwise.usecase.planning;

import jarwise.plan.BenchRings;
import jarwise.plan.ComparisonOutlook;
import jarwise.stats.sequential.SequentialPlan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** What a round can tell, with what its picture and its table show. */
public sealed interface PlanAnswer {

    /** {@return jars at random places} */
    int jars();

    /** A point of a curve. */
    record Point(double x, double y) {}

    /**
     * Is it here?
     *
     * @param jars jars that are cut
     * @param needed jars that reach the wanted chance; empty if no number does
     * @param chance of a find with these jars at the density asked for
     * @param bound density that is ruled out if none is found; empty where there is none
     * @param curves chance of a find by density, by way of looking
     * @param rows other numbers of jars
     */
    record Detect(
            int jars,
            OptionalLong needed,
            double chance,
            OptionalDouble bound,
            Map<String, List<Point>> curves,
            List<DetectRow> rows)
            implements PlanAnswer {}

    /** Another number of jars. */
    record DetectRow(int jars, OptionalDouble bound, double chance, double minutes) {}

    /**
     * How many are there?
     *
     * @param jars jars that are cut
     * @param needed jars that reach the wanted precision; empty if no number does
     * @param row what these jars give
     * @param rows other numbers of jars
     */
    record Estimate(int jars, OptionalLong needed, EstimateRow row, List<EstimateRow> rows)
            implements PlanAnswer {}

    /**
     * What a number of jars gives, at the density that is expected.
     *
     * @param jars jars
     * @param precision standard error as a share of the mean
     * @param lower lower limit of the interval, roughly
     * @param upper upper limit, roughly
     * @param minutes cost
     */
    record EstimateRow(int jars, double precision, double lower, double upper, double minutes) {}

    /**
     * Does the treatment work?
     *
     * @param jars jars of this round, before the treatment, on both sides
     * @param outlook chance of each verdict, as far as it has been drawn
     * @param target efficacy that the site wants
     */
    record Compare(int jars, Drawn outlook, double target) implements PlanAnswer {}

    /**
     * A simulation, perhaps still running.
     *
     * @param done trials drawn
     * @param trials trials in all
     * @param outlook the result, once all are drawn
     */
    record Drawn(int done, int trials, Optional<ComparisonOutlook> outlook) {}

    /**
     * Act or wait?
     *
     * @param jars jars to have ready
     * @param plan the sequential plan, in counted densities
     * @param rows what becomes of it at some densities, the two asked for among them
     */
    record Decide(int jars, SequentialPlan plan, List<DecideRow> rows) implements PlanAnswer {

        /** {@return what becomes of it at a density on the plants, one of the rows} */
        public DecideRow at(double density) {
            return rows.stream().filter(row -> row.density() == density).findFirst().orElseThrow();
        }
    }

    /**
     * A sequential plan at one density on the plants.
     *
     * @param density per growing point
     * @param below chance of "below"
     * @param above chance of "above"
     * @param undecided chance of neither
     * @param averageJars jars read on average
     */
    record DecideRow(
            double density, double below, double above, double undecided, double averageJars) {}

    /**
     * Where does it stop?
     *
     * @param jars jars that are cut, one a bench
     * @param rings benches around the find
     * @param sampled benches with a jar
     * @param boundOfOne density ruled out on a bench whose one jar is empty; empty for none
     * @param boundOfAll density ruled out over all of them together, if all are empty
     */
    record Delimit(
            int jars,
            BenchRings rings,
            List<String> sampled,
            OptionalDouble boundOfOne,
            OptionalDouble boundOfAll)
            implements PlanAnswer {}
}
