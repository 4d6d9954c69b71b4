/**
 * What the numerical library lacks: negative binomial with real k, functions kept on panels for
 * integrals and quantiles, averages over a Beta distribution, roots by walking, seeded random. No
 * word of the trade.
 */
@NullMarked
package jarwise.numeric;

import org.jspecify.annotations.NullMarked;
