/** Models of the counts of a sheet: comparing levels, regression, efficacy. */
@NullMarked
package jarwise.usecase.model;

import org.jspecify.annotations.NullMarked;
