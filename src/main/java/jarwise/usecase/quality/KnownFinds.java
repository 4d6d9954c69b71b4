package jarwise.usecase.quality;

import jarwise.base.InvalidInput;
import java.time.LocalDate;
import java.util.Collection;

/**
 * What was found of individuals that were known to be there, in one reading or in several together.
 *
 * @param readings how many readings
 * @param found individuals found again
 * @param known individuals that were there
 * @param falseFinds individuals counted that were not there, or were of another stage
 * @param first day of the first reading
 * @param last day of the last reading
 */
public record KnownFinds(
        int readings, long found, long known, long falseFinds, LocalDate first, LocalDate last) {

    /** {@return both together} */
    KnownFinds plus(KnownFinds other) {
        return new KnownFinds(
                readings + other.readings,
                found + other.found,
                known + other.known,
                falseFinds + other.falseFinds,
                first.isBefore(other.first) ? first : other.first,
                last.isAfter(other.last) ? last : other.last);
    }

    /** {@return all of them together; at least one} */
    static KnownFinds sum(Collection<KnownFinds> all) {
        return all.stream()
                .reduce(KnownFinds::plus)
                .orElseThrow(() -> new InvalidInput("There is no reading; at least 1 is needed."));
    }
}
