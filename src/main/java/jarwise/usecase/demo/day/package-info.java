/** The days of the demo nursery: what its people and devices did, event by event. */
@NullMarked
package jarwise.usecase.demo.day;

import org.jspecify.annotations.NullMarked;
