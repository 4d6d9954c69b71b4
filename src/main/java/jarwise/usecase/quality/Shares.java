package jarwise.usecase.quality;

import static java.util.stream.Collectors.toList;

import jarwise.decision.Finding.Subject;
import jarwise.sample.DetectionValue;
import jarwise.sample.DetectionValue.Kind;
import jarwise.stats.count.FoundShare;
import jarwise.stats.estimate.DetectionShare;
import jarwise.stats.removal.ExtractionEfficiency;
import jarwise.stats.removal.RemovalCatches;
import jarwise.stats.removal.SpikeFinds;
import jarwise.usecase.findings.SiteRules;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Adds readings of known numbers up to shares.
 *
 * @param rules what the site has chosen
 * @param today the day of the page
 */
record Shares(SiteRules rules, LocalDate today) {

    private record Owner(Subject subject, String whose) {}

    /** {@return the shares of readers and of fluids, animals with a line first} */
    List<MeasuredShare> of(
            List<KnownReading> seeded, List<KnownReading> spikes, List<WashSeries> series) {
        Map<Owner, List<KnownReading>> readers = byOwner(seeded);
        Map<Owner, List<KnownReading>> spiked = byOwner(spikes);
        Map<Owner, List<RemovalCatches>> washes = new HashMap<>();
        series.forEach(
                one ->
                        one.catches(rules.pests())
                                .forEach(
                                        (subject, catches) ->
                                                washes.computeIfAbsent(
                                                                new Owner(subject, one.fluid()),
                                                                owner -> new ArrayList<>())
                                                        .add(catches)));
        List<MeasuredShare> shares = new ArrayList<>();
        readers.forEach((owner, all) -> shares.add(reader(owner, all)));
        Set<Owner> fluids = new HashSet<>(spiked.keySet());
        fluids.addAll(washes.keySet());
        for (Owner owner : fluids) {
            Spiked all = new Spiked(spiked.getOrDefault(owner, List.of()), readers);
            shares.add(fluid(owner, all, washes.getOrDefault(owner, List.of())));
        }
        shares.sort(
                Comparator.comparing((MeasuredShare share) -> share.kind() != Kind.READER)
                        .thenComparing(share -> place(share.subject()))
                        .thenComparing(MeasuredShare::whose));
        return shares;
    }

    private static Map<Owner, List<KnownReading>> byOwner(List<KnownReading> readings) {
        return readings.stream()
                .collect(
                        Collectors.groupingBy(
                                reading -> new Owner(reading.subject(), reading.whose())));
    }

    /** Animals with a line come first, then the order of the pest list. */
    private int place(Subject subject) {
        List<Subject> lines = rules.subjectsWithLine(today);
        List<Subject> all =
                rules.pests().all().stream()
                        .flatMap(
                                pest ->
                                        pest.stageGroups().stream()
                                                .map(group -> new Subject(pest.code(), group)))
                        .toList();
        return lines.contains(subject) ? lines.indexOf(subject) : 1000 + all.indexOf(subject);
    }

    /** Spikes of one fluid, and what their readers were measured to find. */
    private record Spiked(List<KnownReading> readings, Map<Owner, List<KnownReading>> readers) {

        Optional<KnownFinds> finds() {
            return readings.isEmpty()
                    ? Optional.empty()
                    : Optional.of(KnownFinds.sum(finds(readings)));
        }

        boolean readersMeasured() {
            return readings.stream().allMatch(one -> readers.containsKey(reader(one)));
        }

        List<SpikeFinds> byReader() {
            return readings.stream()
                    .collect(Collectors.groupingBy(Spiked::reader, LinkedHashMap::new, toList()))
                    .entrySet()
                    .stream()
                    .map(entry -> spike(entry.getKey(), KnownFinds.sum(finds(entry.getValue()))))
                    .toList();
        }

        private SpikeFinds spike(Owner reader, KnownFinds finds) {
            List<KnownReading> seeded = readers.getOrDefault(reader, List.of());
            if (seeded.isEmpty()) {
                return new SpikeFinds(finds.found(), finds.known(), DetectionShare.known(1));
            }
            KnownFinds seen = KnownFinds.sum(finds(seeded));
            return new SpikeFinds(
                    finds.found(),
                    finds.known(),
                    DetectionShare.measured(seen.found(), seen.known()));
        }

        private static Owner reader(KnownReading reading) {
            return new Owner(reading.subject(), reading.reader());
        }

        private static List<KnownFinds> finds(List<KnownReading> readings) {
            return readings.stream().map(KnownReading::finds).toList();
        }
    }

    private MeasuredShare reader(Owner owner, List<KnownReading> readings) {
        KnownFinds finds = KnownFinds.sum(Spiked.finds(readings));
        FoundShare share = FoundShare.of(finds.found(), finds.known(), EnoughReadings.LEVEL);
        boolean tells = EnoughReadings.tells(finds.readings(), share.lower(), share.upper());
        return new MeasuredShare(
                Kind.READER,
                owner.whose(),
                owner.subject(),
                Optional.of(finds),
                0,
                new MeasuredShare.Estimate(
                        share.estimate(),
                        share.lower(),
                        share.upper(),
                        new DetectionShare.Measured(finds.found(), finds.known()),
                        tells),
                true,
                months(readings),
                tells ? OptionalInt.empty() : EnoughReadings.needed(finds),
                inUse(Kind.READER, owner));
    }

    private MeasuredShare fluid(Owner owner, Spiked spiked, List<RemovalCatches> washes) {
        ExtractionEfficiency share =
                ExtractionEfficiency.of(spiked.byReader(), washes, EnoughReadings.LEVEL);
        int readings = spiked.readings().size() + washes.size();
        boolean tells = EnoughReadings.tells(readings, share.lower(), share.upper());
        return new MeasuredShare(
                Kind.EXTRACTION,
                owner.whose(),
                owner.subject(),
                spiked.finds(),
                washes.size(),
                new MeasuredShare.Estimate(
                        share.estimate(), share.lower(), share.upper(), share.share(), tells),
                spiked.readersMeasured(),
                months(spiked.readings()),
                tells
                        ? OptionalInt.empty()
                        : spiked.finds().map(EnoughReadings::needed).orElse(OptionalInt.empty()),
                inUse(Kind.EXTRACTION, owner));
    }

    private static SortedMap<YearMonth, KnownFinds> months(List<KnownReading> readings) {
        SortedMap<YearMonth, KnownFinds> months = new TreeMap<>();
        readings.forEach(
                reading ->
                        months.merge(
                                YearMonth.from(reading.finds().first()),
                                reading.finds(),
                                KnownFinds::plus));
        return months;
    }

    private Optional<DetectionValue> inUse(Kind kind, Owner owner) {
        return rules.shares().stream()
                .filter(share -> share.kind() == kind && share.subject().equals(owner.whose()))
                .filter(share -> share.pest().equals(owner.subject().pest()))
                .filter(share -> share.stageGroup().equals(owner.subject().stageGroup()))
                .filter(share -> share.holdsOn(today))
                .findFirst();
    }
}
