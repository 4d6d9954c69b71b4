/** What must hold before data are opened: a whole file of ours, and one server at a time. */
@NullMarked
package jarwise.store.guard;

import org.jspecify.annotations.NullMarked;
