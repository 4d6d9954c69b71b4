/** SQL and nothing but SQL; migrations; one class per small group of tables. */
@NullMarked
package jarwise.store;

import org.jspecify.annotations.NullMarked;
