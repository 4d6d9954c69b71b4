/** Events that devices bring from where there was no server. */
@NullMarked
package jarwise.usecase.exchange;

import org.jspecify.annotations.NullMarked;
