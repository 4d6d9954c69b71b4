/** Pages: parse a request, call one use case, answer. Host check, form token, content policy. */
@NullMarked
package jarwise.web;

import org.jspecify.annotations.NullMarked;
