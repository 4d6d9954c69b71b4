@NullMarked
package jarwise.usecase.exchange;

import org.jspecify.annotations.NullMarked;
