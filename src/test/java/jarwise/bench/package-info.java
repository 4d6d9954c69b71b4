/**
 * Measurements that are run by hand, `./dev bench`: how often intervals cover, how long work takes.
 */
@NullMarked
package jarwise.bench;

import org.jspecify.annotations.NullMarked;
