package jarwise.stats.efficacy;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The efficacy of a treatment with its interval.
 *
 * @param efficacy most likely efficacy, at most 1, negative where the treated did worse; empty
 *     where the samples give none
 * @param lower lower limit; empty where there is none
 * @param upper upper limit; empty where there is none
 * @param interaction change in ln density on the treated less that on the check; empty where it is
 *     endless or not there
 * @param standardError its standard error, expected information at the most likely k
 * @param k most likely common dispersion; empty for Poisson counts
 * @param logLikelihood natural logarithm of the likelihood, all constants included
 * @param pValue chance of such a likelihood ratio or a larger one if the treatment did nothing
 * @param hendersonTilton from densities, totals over sampling units; empty where a divisor is 0
 * @param abbott from densities after alone; empty where the check has none
 * @param verdict against the target
 * @param warnings what a reader of the figure has to know, each one sentence or two
 */
public record EfficacyEstimate(
        OptionalDouble efficacy,
        OptionalDouble lower,
        OptionalDouble upper,
        OptionalDouble interaction,
        OptionalDouble standardError,
        OptionalDouble k,
        double logLikelihood,
        OptionalDouble pValue,
        OptionalDouble hendersonTilton,
        OptionalDouble abbott,
        EfficacyVerdict verdict,
        List<String> warnings) {

    /** Keeps the warnings from being changed. */
    public EfficacyEstimate {
        warnings = List.copyOf(warnings);
    }
}
