/** Every sentence a person reads, from one message file a language; numbers in words. */
@NullMarked
package jarwise.render.words;

import org.jspecify.annotations.NullMarked;
