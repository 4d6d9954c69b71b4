/** What a person typed into a form, read field by field; every fault is said beside its field. */
@NullMarked
package jarwise.usecase.form;

import org.jspecify.annotations.NullMarked;
