package jarwise.stats.efficacy;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sentences that go with an efficacy. */
final class EfficacyWarnings {

    static final String NONE_TREATED_AFTER =
            "None was found on the treated benches after: the efficacy is 1 as far as these samples"
                    + " go, and the lower limit says what could be missed.";
    static final String NONE_ON_CHECK_AFTER =
            "None was found on the check after: they went away by themselves, so there is no"
                    + " efficacy and no lower limit.";
    static final String NONE_AFTER =
            "None was found after, neither on the treated benches nor on the check: nothing can be"
                    + " said of the treatment.";
    static final String NONE_BEFORE =
            "A group had no find before the treatment, so there is nothing to compare with:"
                    + " no efficacy and no limits.";
    static final String NOT_ON_THE_SAME_BENCHES =
            "No bench was sampled both before and after, so a change cannot be told from a"
                    + " difference between benches. Maybe leave --block out.";
    static final String LIMIT_MISSING =
            "These samples set no limit on one side or both. Take more samples.";
    static final String ONE_BENCH =
            "The interval covers the sampling of jars on these benches, not other benches: what one"
                    + " bench did by itself cannot be told from the treatment.";
    static final String SEVERAL_BENCHES =
            "Bench is a fixed factor: the interval is about these benches, and takes the treatment"
                    + " to do the same on each.";
    static final String BLOCKS_TOO_FEW =
            "Blocks need two or more benches in each arm; with one they change nothing.";

    private static final int NEARLY_EMPTY = 10;
    private static final double NOT_COMPARABLE = 2;
    private static final double DEVIATIONS = 1.96;

    private EfficacyWarnings() {}

    /** {@return what the samples before and after give cause to say, whatever came out} */
    static List<String> ofDesign(EfficacyTrial trial, OptionalDouble k) {
        List<String> warnings = new ArrayList<>();
        nearlyEmpty("before", trial.checkBefore()).ifPresent(warnings::add);
        nearlyEmpty("after", trial.checkAfter()).ifPresent(warnings::add);
        notComparable(trial, k).ifPresent(warnings::add);
        boolean several = trial.treated().size() > 1 && trial.check().size() > 1;
        warnings.add(several ? SEVERAL_BENCHES : ONE_BENCH);
        if (!several && trial.treated().size() + trial.check().size() > 2) {
            warnings.add(BLOCKS_TOO_FEW);
        }
        return warnings;
    }

    private static Optional<String> nearlyEmpty(String time, List<Observation> observations) {
        long individuals = GroupTotals.individuals(observations);
        return individuals >= NEARLY_EMPTY
                ? Optional.empty()
                : Optional.of(
                        ("The check is nearly empty (%d counted %s): it hardly shows what would"
                                        + " have happened without treatment.")
                                .formatted(individuals, time));
    }

    private static Optional<String> notComparable(EfficacyTrial trial, OptionalDouble k) {
        List<Observation> treated = trial.treatedBefore();
        List<Observation> check = trial.checkBefore();
        if (GroupTotals.individuals(treated) == 0 || GroupTotals.individuals(check) == 0) {
            return Optional.empty();
        }
        double ratio = GroupTotals.density(treated) / GroupTotals.density(check);
        double dispersion = k.orElse(Double.POSITIVE_INFINITY);
        double error =
                Math.sqrt(
                        1 / information(treated, dispersion) + 1 / information(check, dispersion));
        double apart = Math.abs(Math.log(ratio));
        if (apart < Math.log(NOT_COMPARABLE) || apart < DEVIATIONS * error) {
            return Optional.empty();
        }
        return Optional.of(
                ("The check was not comparable before the treatment: the treated benches had %s"
                                + " times its density.")
                        .formatted(String.format(Locale.ROOT, "%.3g", ratio)));
    }

    private static double information(List<Observation> observations, double k) {
        CountLikelihood likelihood = new CountLikelihood(CountData.of(observations));
        return likelihood.informationOnLogDensity(likelihood.mostLikelyLogDensity(k), k);
    }
}
