/** What a site chooses for itself: each choice dated, with its reason, and the old ones kept. */
@NullMarked
package jarwise.usecase.settings;

import org.jspecify.annotations.NullMarked;
