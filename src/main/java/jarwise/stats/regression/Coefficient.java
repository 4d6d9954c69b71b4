package jarwise.stats.regression;

import java.util.Optional;

/**
 * What a coefficient stands for.
 *
 * @param term column, columns joined by colons, or {@code intercept}
 * @param level level of the factor, levels joined by colons; empty for a covariate
 */
public record Coefficient(String term, Optional<String> level) {

    /** The constant. */
    public static final Coefficient INTERCEPT = new Coefficient("intercept", Optional.empty());

    @Override
    public String toString() {
        return level.map(text -> term + " " + text).orElse(term);
    }
}
