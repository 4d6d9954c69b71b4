package jarwise.sample;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A share that this site has adopted: what a fluid washes off, or what a reader sees of what is on
 * the filter. Either as found of known individuals, or as one number taken as known.
 *
 * @param kind of what
 * @param subject fluid in lower case, or reader code
 * @param pest pest code
 * @param stageGroup stages it holds for
 * @param found individuals found, where it was measured
 * @param known individuals that were there, where it was measured
 * @param value share taken as known, above 0 and at most 1, where it was not
 * @param holdsFrom first day
 * @param withdrawnOn day from which it no longer holds
 * @param source where it comes from
 */
public record DetectionValue(
        Kind kind,
        String subject,
        String pest,
        String stageGroup,
        OptionalDouble found,
        OptionalDouble known,
        OptionalDouble value,
        LocalDate holdsFrom,
        Optional<LocalDate> withdrawnOn,
        String source) {

    /** What the share is of. */
    public enum Kind {
        EXTRACTION,
        READER
    }

    public DetectionValue {
        Require.notBlank("source", source);
        boolean measured = found.isPresent() && known.isPresent();
        if (measured == value.isPresent()) {
            throw new InvalidInput(
                    "A share is given either as found of known, or as one number; not both, not"
                            + " neither.");
        }
        if (measured && !(found.getAsDouble() >= 0 && found.getAsDouble() <= known.getAsDouble())) {
            throw new InvalidInput(
                    "found is %s of %s known; it must be 0 or more and not above known."
                            .formatted(found.getAsDouble(), known.getAsDouble()));
        }
        value.ifPresent(share -> Require.share("share", share));
    }

    /** {@return whether it holds on {@code day}} */
    public boolean holdsOn(LocalDate day) {
        return !day.isBefore(holdsFrom) && withdrawnOn.map(day::isBefore).orElse(true);
    }
}
