package jarwise.sample;

import jarwise.base.Require;

/**
 * A person of the site, by role code and never by name.
 *
 * @param code such as SC-1
 * @param role what they do here
 * @param language ISO 639-1 code of the pages they see
 * @param active whether they still work here
 */
public record Reader(String code, String role, String language, boolean active) {

    public Reader {
        Require.notBlank("person", code);
    }
}
