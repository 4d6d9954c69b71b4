/**
 * What is looked for: pests with their EPPO code where there is one, and their life stages, as
 * data.
 */
@NullMarked
package jarwise.pest;

import org.jspecify.annotations.NullMarked;
