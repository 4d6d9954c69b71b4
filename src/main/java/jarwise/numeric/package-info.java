/**
 * What the numerical library lacks: negative binomial with real k, quadrature, profile search,
 * seeded random. No word of the trade.
 */
@NullMarked
package jarwise.numeric;

import org.jspecify.annotations.NullMarked;
