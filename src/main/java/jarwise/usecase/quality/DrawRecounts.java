package jarwise.usecase.quality;

import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.stats.count.SimulatedCounts;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.store.TalliedSample;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.samples.FirstCounts;
import jarwise.usecase.samples.SampleLog;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.zip.CRC32;

/**
 * Draws the filters that are counted again by somebody who does not know the first count, when
 * their first count comes in. Whether one is drawn follows from its code and the site, so nobody
 * chooses.
 *
 * @param log where recounts are registered
 * @param samples what is on record
 * @param sites by whose clocks it is which day
 * @param counts what the site has chosen
 */
public record DrawRecounts(SampleLog log, SampleStore samples, SiteStore sites, SiteCounts counts)
        implements FirstCounts {

    /** A note of a recount: who counted first, and should not count again if another can. */
    public static final String NOT_BY = "recount_not_by";

    /** What the code of a recount adds to that of its filter. */
    public static final String SUFFIX = ".r1";

    private static final Set<SampleState> READ =
            EnumSet.of(SampleState.READ, SampleState.PARTLY_READ);

    /** Filters of so many days before say how common those near a decision are. */
    private static final int DAYS_BEFORE = 60;

    private static final String NOBODY = "desk";

    @Override
    public void around(String nursery, Collection<SampleCode> codes, Runnable writing) {
        List<SampleCode> all = codes.stream().distinct().toList();
        Set<SampleCode> readBefore = new HashSet<>();
        read(nursery, all).forEach(one -> readBefore.add(one.sample().code()));
        writing.run();
        read(nursery, all).stream()
                .filter(one -> !readBefore.contains(one.sample().code()))
                .filter(one -> isOfCrop(one.sample()))
                .forEach(one -> draw(nursery, one));
    }

    private List<TalliedSample> read(String nursery, List<SampleCode> codes) {
        return samples.tallied(nursery, codes).stream()
                .filter(one -> READ.contains(one.sample().state()))
                .toList();
    }

    private static boolean isOfCrop(CollectedSample sample) {
        return sample.role() == SampleRole.CROP
                && sample.method() == SamplingMethod.WASH
                && sample.collectedOn().isPresent();
    }

    private void draw(String nursery, TalliedSample filter) {
        CollectedSample sample = filter.sample();
        SampleCode again = new SampleCode(sample.code().text() + SUFFIX);
        LocalDate day = sample.collectedOn().orElseThrow();
        Predicate<TalliedSample> counts =
                one -> READ.contains(one.sample().state()) && isOfCrop(one.sample());
        List<TalliedSample> before =
                samples.tallied(nursery, day.minusDays(DAYS_BEFORE), day.minusDays(1)).stream()
                        .filter(counts)
                        .toList();
        double chance = new RecountChance(this.counts.rules(nursery)).of(filter, before);
        if (number(nursery, sample.code()) < chance && samples.find(nursery, again).isEmpty()) {
            Deed registered =
                    new Deed.StepTaken(
                            Step.REGISTERED,
                            facts(nursery, sample),
                            Optional.empty(),
                            Optional.empty());
            log.append(nursery, NOBODY, again, List.of(registered));
        }
    }

    /** A number from 0 to 1 that belongs to a filter of a site and to nothing else. */
    private static double number(String nursery, SampleCode code) {
        CRC32 sum = new CRC32();
        sum.update((nursery + "\n" + code.text()).getBytes(StandardCharsets.UTF_8));
        return new SimulatedCounts(sum.getValue()).uniform();
    }

    private Map<String, String> facts(String nursery, CollectedSample first) {
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.METHOD, "wash");
        facts.put(Facts.ROLE, "recount");
        facts.put(Facts.RECOUNT_OF, first.code().text());
        facts.put(Facts.COLLECTED_ON, log.now().atZone(zone(nursery)).toLocalDate().toString());
        facts.put(Facts.SAMPLING_UNITS, number(first.samplingUnits()));
        first.place().house().ifPresent(house -> facts.put(Facts.HOUSE, house));
        first.place().bench().ifPresent(bench -> facts.put(Facts.BENCH, bench));
        first.place().cropLot().ifPresent(lot -> facts.put(Facts.CROP_LOT, lot));
        first.place().crop().ifPresent(crop -> facts.put(Facts.CROP, crop));
        first.place().variety().ifPresent(variety -> facts.put(Facts.VARIETY, variety));
        first.reading().reader().ifPresent(reader -> facts.put(Facts.OTHER + NOT_BY, reader));
        return facts;
    }

    private ZoneId zone(String nursery) {
        return sites.nurseries().stream()
                .filter(site -> site.slug().equals(nursery))
                .findFirst()
                .map(Nursery::zone)
                .orElse(ZoneOffset.UTC);
    }

    private static String number(double units) {
        return units == Math.rint(units) ? String.valueOf((long) units) : String.valueOf(units);
    }
}
