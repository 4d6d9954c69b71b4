package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.sample.DetectionValue;
import jarwise.sample.DetectionValue.Kind;
import jarwise.stats.count.FoundShare;
import jarwise.stats.estimate.DetectionShare;
import jarwise.usecase.findings.SiteRules;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
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
    List<MeasuredShare> of(List<KnownReading> seeded, List<KnownReading> spikes) {
        List<MeasuredShare> shares = new ArrayList<>();
        byOwner(seeded).forEach((owner, all) -> shares.add(share(Kind.READER, owner, all)));
        byOwner(spikes).forEach((owner, all) -> shares.add(share(Kind.EXTRACTION, owner, all)));
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

    private MeasuredShare share(Kind kind, Owner owner, List<KnownReading> readings) {
        KnownFinds finds = KnownFinds.sum(readings.stream().map(KnownReading::finds).toList());
        FoundShare share = FoundShare.of(finds.found(), finds.known(), EnoughReadings.LEVEL);
        boolean tells = EnoughReadings.tells(finds.readings(), share.lower(), share.upper());
        return new MeasuredShare(
                kind,
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
                months(readings),
                tells ? OptionalInt.empty() : EnoughReadings.needed(finds),
                inUse(kind, owner));
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
