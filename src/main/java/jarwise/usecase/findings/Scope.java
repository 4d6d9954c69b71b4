package jarwise.usecase.findings;

import jarwise.decision.Finding.Subject;
import jarwise.sample.CollectedSample;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What Findings shows.
 *
 * @param subject which animals
 * @param variety only this cultivar
 * @param house only this greenhouse
 * @param bench only this bench
 * @param from first day
 * @param to last day
 */
public record Scope(
        Subject subject,
        Optional<String> variety,
        Optional<String> house,
        Optional<String> bench,
        LocalDate from,
        LocalDate to) {

    /** {@return whether a sample was cut where this looks} */
    public boolean holds(CollectedSample sample) {
        CollectedSample.Place place = sample.place();
        return matches(variety, place.variety())
                && matches(house, place.house())
                && matches(bench, place.bench());
    }

    private static boolean matches(Optional<String> wanted, Optional<String> there) {
        return wanted.isEmpty() || wanted.equals(there);
    }
}
