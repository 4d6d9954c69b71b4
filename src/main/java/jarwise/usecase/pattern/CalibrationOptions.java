package jarwise.usecase.pattern;

import jarwise.base.InvalidInput;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Which methods are held against each other.
 *
 * @param first the method to be judged, say tap
 * @param second the method it is judged by, say wash
 * @param samples samples of the second method to find the equal effort for
 * @param threshold density by the second method at which it matters; the mean if empty
 * @param confidenceLevel level of the limits, between 0 and 1
 */
public record CalibrationOptions(
        String first,
        String second,
        double samples,
        OptionalDouble threshold,
        double confidenceLevel) {

    /** Refuses cards, and a method against itself. */
    public CalibrationOptions {
        for (String method : List.of(first, second)) {
            if (method.toLowerCase(Locale.ROOT).equals("card")) {
                throw new InvalidInput(
                        "A method is \"card\"; cards are never turned into densities, because what"
                                + " they catch is flight and weather over days, not what sits on"
                                + " the plants. Maybe: --pair tap,wash");
            }
        }
        if (first.equals(second)) {
            throw new InvalidInput(
                    "Both methods are \"%s\"; two are needed. Maybe: --pair tap,wash"
                            .formatted(first));
        }
    }
}
