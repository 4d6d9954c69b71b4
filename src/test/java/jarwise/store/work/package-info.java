@NullMarked
package jarwise.store.work;

import org.jspecify.annotations.NullMarked;
