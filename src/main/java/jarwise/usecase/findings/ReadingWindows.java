package jarwise.usecase.findings;

import jarwise.sample.CollectedSample;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.usecase.findings.Today.Due;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;

/**
 * When filters may be read: from the end of the freezer time until the first has dried out.
 *
 * @param rules what the site has chosen
 * @param now the moment that counts for what is not dated
 */
public record ReadingWindows(SiteRules rules, ZonedDateTime now) {

    /** {@return whether a sample is a filter of the crop that was washed} */
    public static boolean hasOne(CollectedSample sample) {
        return sample.role() == SampleRole.CROP
                && sample.method() == SamplingMethod.WASH
                && sample.times().washed().isPresent();
    }

    /**
     * {@return the window of some filters together}
     *
     * @param filters at least one, each with a window
     */
    public Due.Window of(List<CollectedSample> filters) {
        ProtocolVersion protocol = rules.protocolOn(now.toLocalDate());
        Instant washed =
                filters.stream().map(ReadingWindows::washed).min(Instant::compareTo).orElseThrow();
        Instant earliest =
                filters.stream()
                        .map(f -> f.times().freezerIn().orElseGet(() -> washed(f)))
                        .max(Instant::compareTo)
                        .orElseThrow()
                        .plus(protocol.freeze());
        Instant readBy = filters.stream().map(this::readBy).min(Instant::compareTo).orElseThrow();
        return new Due.Window(washed, earliest, readBy);
    }

    /** {@return when a filter has dried out} */
    public Instant readBy(CollectedSample filter) {
        LocalDate day = filter.collectedOn().orElse(now.toLocalDate());
        return washed(filter).plus(rules.protocolOn(day).readWithin());
    }

    private static Instant washed(CollectedSample sample) {
        return sample.times().washed().orElseThrow();
    }
}
