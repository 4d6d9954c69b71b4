/**
 * Negative binomial regression: how counts depend on factors and covariates, with one k for all.
 */
@NullMarked
package jarwise.stats.regression;

import org.jspecify.annotations.NullMarked;
