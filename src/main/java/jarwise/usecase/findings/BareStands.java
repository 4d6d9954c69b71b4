package jarwise.usecase.findings;

import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.store.SiteStore;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Benches with a crop on them where nothing was sampled. */
public final class BareStands {

    private BareStands() {}

    /**
     * One bench with a crop and without a sample.
     *
     * @param house its greenhouse; empty where the bench is not on the map
     * @param stand bench and variety
     */
    public record Bare(Optional<String> house, Stand stand) {}

    /** {@return benches that stand full on a day and of which none of these samples was cut} */
    public static List<Bare> of(
            SiteStore site, String nursery, LocalDate day, List<CollectedSample> sampled) {
        Set<String> benches =
                sampled.stream()
                        .flatMap(sample -> sample.place().bench().stream())
                        .collect(Collectors.toSet());
        Map<String, String> varietyOf =
                site.cropLots(nursery).stream()
                        .collect(Collectors.toMap(CropLot::code, CropLot::variety));
        Map<String, String> houseOf =
                site.benches(nursery).stream().collect(Collectors.toMap(Bench::code, Bench::house));
        return site.occupancies(nursery).stream()
                .filter(there -> there.covers(day) && !benches.contains(there.bench()))
                .map(
                        there ->
                                new Bare(
                                        Optional.ofNullable(houseOf.get(there.bench())),
                                        new Stand(
                                                Optional.of(there.bench()),
                                                Optional.ofNullable(
                                                        varietyOf.get(there.cropLot())))))
                .distinct()
                .toList();
    }
}
