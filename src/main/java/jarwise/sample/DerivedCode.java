package jarwise.sample;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A code that a device makes without a server: another reading of a known filter, such as {@code
 * 7K4-M9QX.s-3f0c9a-1}, or a further wash of a jar, such as {@code 7K4-M9QX.w2}.
 *
 * @param base code on the label
 * @param role {@code SEEDED} or {@code REPEAT_WASH}
 * @param number which reading on that device, from 1; or which wash, 2 to 9
 */
public record DerivedCode(SampleCode base, SampleRole role, int number) {

    private static final Pattern READING = Pattern.compile("(.+)\\.s-[0-9a-f]{6}-([1-9]\\d{0,5})");
    private static final Pattern WASH = Pattern.compile("(.+)\\.w([2-9])");

    /** {@return what a code is made of; empty for one that stands on a label itself} */
    public static Optional<DerivedCode> of(SampleCode code) {
        return of(code, READING, SampleRole.SEEDED)
                .or(() -> of(code, WASH, SampleRole.REPEAT_WASH));
    }

    private static Optional<DerivedCode> of(SampleCode code, Pattern form, SampleRole role) {
        Matcher parts = form.matcher(code.text());
        return parts.matches()
                ? Optional.of(
                        new DerivedCode(
                                new SampleCode(parts.group(1)),
                                role,
                                Integer.parseInt(parts.group(2))))
                : Optional.empty();
    }
}
