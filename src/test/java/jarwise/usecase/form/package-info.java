/** What people type into forms. */
@NullMarked
package jarwise.usecase.form;

import org.jspecify.annotations.NullMarked;
