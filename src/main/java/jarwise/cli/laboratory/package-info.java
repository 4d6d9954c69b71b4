/** Commands about the work at the sink and the microscope: washes, filters, readers. */
@NullMarked
package jarwise.cli.laboratory;

import org.jspecify.annotations.NullMarked;
