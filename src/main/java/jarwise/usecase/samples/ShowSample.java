package jarwise.usecase.samples;

import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.sample.Life;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.SampleCode;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SettingsStore;
import jarwise.store.work.PhotoStore;
import jarwise.tally.SampleFold;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Looks up everything about one sample.
 *
 * @param events what happened to it
 * @param settings the protocol of its day
 * @param pests what was counted
 * @param photos of finds that were kept
 */
public record ShowSample(
        EventStore events, SettingsStore settings, PestStore pests, PhotoStore photos) {

    /**
     * One sample, whole.
     *
     * @param fold what is known of it, and its history
     * @param protocol the protocol of the day on which it was cut
     * @param life when it may be read and by when
     * @param pests all pests, to name what was counted
     * @param photosHere hashes of the site's photos that have arrived
     */
    public record Shown(
            SampleFold fold,
            ProtocolVersion protocol,
            Life life,
            Pests pests,
            Set<String> photosHere) {

        /** {@return pests of which something was read, in the order of the list} */
        public List<Pest> pestsRead() {
            return pests.all().stream()
                    .filter(
                            pest ->
                                    fold.tally().individuals().keySet().stream()
                                            .anyMatch(key -> key.pest().equals(pest.code())))
                    .toList();
        }
    }

    /** {@return the sample; empty where there is none with this code} */
    public Optional<Shown> run(String nursery, SampleCode code, LocalDate today) {
        return events.fold(nursery, code)
                .map(
                        fold -> {
                            LocalDate day = fold.sample().collectedOn().orElse(today);
                            ProtocolVersion protocol = settings.protocolOn(nursery, day);
                            Life life = Life.of(fold.sample().times(), protocol);
                            return new Shown(
                                    fold, protocol, life, pests.pests(), photos.hashes(nursery));
                        });
    }
}
