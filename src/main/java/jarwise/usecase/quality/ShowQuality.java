package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.pest.Pests;
import jarwise.sample.CollectedSample;
import jarwise.sample.DetectionValue;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SeededFilter;
import jarwise.stats.agreement.CountPair;
import jarwise.stats.agreement.CountingBand;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.store.TalliedSample;
import jarwise.store.work.SeededFilterStore;
import jarwise.tally.Facts;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Works out how far the counts of a site can be trusted.
 *
 * @param counts what the site has chosen
 * @param samples checks of the work
 * @param events what steps noted
 * @param seeded filters of which is known what lies on them
 */
public record ShowQuality(
        SiteCounts counts, SampleStore samples, EventStore events, SeededFilterStore seeded) {

    private static final Set<SampleRole> CHECKS =
            Set.of(
                    SampleRole.SEEDED,
                    SampleRole.SPIKE,
                    SampleRole.BLANK,
                    SampleRole.RECOUNT,
                    SampleRole.REPEAT_WASH);

    private static final Comparator<Recount> NEWEST =
            Comparator.comparing((Recount one) -> one.again().collectedOn().orElse(LocalDate.MIN))
                    .reversed()
                    .thenComparing(one -> one.again().code());

    /** {@return everything that is known of it on a day} */
    public Quality run(String nursery, LocalDate today) {
        SiteRules rules = counts.rules(nursery);
        List<TalliedSample> checks = samples.tallied(nursery, CHECKS);
        List<TalliedSample> known =
                checks.stream()
                        .filter(
                                one ->
                                        one.sample().role() == SampleRole.SEEDED
                                                || one.sample().role() == SampleRole.SPIKE)
                        .filter(one -> one.sample().state() != SampleState.PLANNED)
                        .toList();
        KnownSamples reads = new KnownSamples(rules.pests(), filters(nursery));
        List<KnownReading> readings =
                known.stream().flatMap(one -> reads.readings(one).stream()).toList();
        Map<SampleCode, SampleRole> roles =
                known.stream()
                        .map(TalliedSample::sample)
                        .collect(Collectors.toMap(CollectedSample::code, CollectedSample::role));
        Shares shares = new Shares(rules, today);
        List<MeasuredShare> measured =
                shares.of(
                        readings.stream().filter(is(roles, SampleRole.SEEDED)).toList(),
                        readings.stream().filter(is(roles, SampleRole.SPIKE)).toList(),
                        series(nursery, of(checks, SampleRole.REPEAT_WASH)));
        List<Recount> recounts = recounts(nursery, rules.pests(), of(checks, SampleRole.RECOUNT));
        return new Quality(
                measured,
                agreements(recounts, measured),
                recounts.stream().sorted(NEWEST).toList(),
                Blanks.of(of(checks, SampleRole.BLANK)),
                known.size() - (int) readings.stream().map(KnownReading::sample).distinct().count(),
                rules);
    }

    private Map<SampleCode, SeededFilter> filters(String nursery) {
        return seeded.all(nursery).stream()
                .collect(Collectors.toMap(SeededFilter::code, filter -> filter));
    }

    private static Predicate<KnownReading> is(Map<SampleCode, SampleRole> roles, SampleRole role) {
        return reading -> roles.get(reading.sample()) == role;
    }

    private static List<TalliedSample> of(List<TalliedSample> checks, SampleRole role) {
        return checks.stream().filter(one -> one.sample().role() == role).toList();
    }

    private List<WashSeries> series(String nursery, List<TalliedSample> further) {
        Map<WashSeries.Place, TalliedSample> washes = new HashMap<>();
        for (TalliedSample wash : further) {
            place(nursery, wash.sample().code()).ifPresent(place -> washes.put(place, wash));
        }
        return WashSeries.of(
                byCode(nursery, washes.keySet().stream().map(WashSeries.Place::base)), washes);
    }

    private Optional<WashSeries.Place> place(String nursery, SampleCode code) {
        Map<String, String> notes = events.fold(nursery, code).map(StepNotes::of).orElse(Map.of());
        String base = notes.getOrDefault(Facts.REPEAT_OF, "");
        String number = notes.getOrDefault(Facts.WASH_NUMBER, "");
        return base.isEmpty() || !number.matches("[2-9]")
                ? Optional.empty()
                : Optional.of(new WashSeries.Place(new SampleCode(base), Integer.parseInt(number)));
    }

    private Map<SampleCode, TalliedSample> byCode(String nursery, Stream<SampleCode> codes) {
        Map<SampleCode, TalliedSample> found = new TreeMap<>();
        samples.tallied(nursery, codes.distinct().toList())
                .forEach(one -> found.put(one.sample().code(), one));
        return found;
    }

    private List<Recount> recounts(String nursery, Pests pests, List<TalliedSample> again) {
        Map<SampleCode, TalliedSample> first =
                byCode(nursery, again.stream().flatMap(one -> one.sample().recountOf().stream()));
        return new Recounts(pests).of(again, first);
    }

    /** The reader whose code comes first stands first, whoever counted first. */
    private static List<ReaderAgreement> agreements(
            List<Recount> recounts, List<MeasuredShare> shares) {
        Map<ReaderAgreement.Key, List<CountPair>> pairs =
                new TreeMap<>(
                        Comparator.comparing((ReaderAgreement.Key key) -> key.subject().pest())
                                .thenComparing(key -> key.subject().stageGroup())
                                .thenComparing(ReaderAgreement.Key::one)
                                .thenComparing(ReaderAgreement.Key::other));
        for (Recount recount : recounts) {
            String one = recount.firstReader().orElse("");
            String other = recount.secondReader().orElse("");
            boolean swap = one.compareTo(other) > 0;
            recount.counts()
                    .forEach(
                            (subject, pair) ->
                                    pairs.computeIfAbsent(
                                                    new ReaderAgreement.Key(
                                                            subject,
                                                            swap ? other : one,
                                                            swap ? one : other),
                                                    key -> new ArrayList<>())
                                            .add(swap ? swapped(pair) : pair));
        }
        return pairs.entrySet().stream()
                .map(
                        entry ->
                                ReaderAgreement.of(
                                        entry.getKey(),
                                        entry.getValue(),
                                        band(entry.getKey(), shares)))
                .filter(agreement -> !agreement.pairs().isEmpty())
                .toList();
    }

    private static CountPair swapped(CountPair pair) {
        return new CountPair(/* first= */ pair.second(), /* second= */ pair.first());
    }

    private static Optional<CountingBand> band(
            ReaderAgreement.Key key, List<MeasuredShare> shares) {
        Optional<Double> one = sensitivity(key.one(), key.subject(), shares);
        Optional<Double> other = sensitivity(key.other(), key.subject(), shares);
        return one.isPresent() && other.isPresent()
                ? Optional.of(new CountingBand(true, one.get(), other.get()))
                : Optional.empty();
    }

    private static Optional<Double> sensitivity(
            String reader, Subject subject, List<MeasuredShare> shares) {
        return shares.stream()
                .filter(share -> share.kind() == DetectionValue.Kind.READER)
                .filter(share -> share.whose().equals(reader) && share.subject().equals(subject))
                .findFirst()
                .map(share -> share.estimate().share());
    }
}
