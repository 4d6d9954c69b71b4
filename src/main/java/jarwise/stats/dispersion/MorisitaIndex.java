package jarwise.stats.dispersion;

/**
 * Morisita's index: how many times likelier than by chance two individuals taken at random are from
 * the same sample.
 *
 * @param index n Σx(x − 1) / (Σx (Σx − 1)): 1 if the individuals fell at random, above 1 if they
 *     are clumped, below 1 if they are spread evenly
 * @param test index × (Σx − 1) + n − Σx, chi-squared with n − 1 degrees of freedom if they fell at
 *     random; it is the same number as (n − 1) variance / mean
 */
public record MorisitaIndex(double index, ChiSquaredTest test) {}
