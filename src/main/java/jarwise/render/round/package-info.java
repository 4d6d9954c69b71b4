/**
 * Pictures of a round that is planned: chances by density, verdicts to expect, rings of benches.
 */
@NullMarked
package jarwise.render.round;

import org.jspecify.annotations.NullMarked;
