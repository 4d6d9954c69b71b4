package jarwise.usecase.samples;

import jarwise.pest.Pests;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.site.CropLot;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.ReaderStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.tally.StageKey;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lists samples page by page, and what a person may want to write about a new one.
 *
 * @param samples what is on record
 * @param sites places to offer
 * @param pests what can be counted
 * @param readers who reads
 * @param events which sample came with a sheet
 * @param numbers how many samples there are
 */
public record ListSamples(
        SampleStore samples,
        SiteStore sites,
        PestStore pests,
        ReaderStore readers,
        EventStore events,
        SampleNumbers numbers) {

    /** Lists what is in these stores. */
    public ListSamples(
            SampleStore samples,
            SiteStore sites,
            PestStore pests,
            ReaderStore readers,
            EventStore events) {
        this(samples, sites, pests, readers, events, new SampleNumbers(samples, events));
    }

    /** Samples on one page. */
    public static final int PAGE = 50;

    private static final Pattern NUMBERED = Pattern.compile("(.*?)([0-9]{1,9})");

    /**
     * One page of samples.
     *
     * @param rows the samples with what was counted in them
     * @param page which page, from 1
     * @param found how many samples the filter lets through
     * @param days days on which samples were cut, the newest first
     */
    public record Listed(List<Row> rows, int page, int found, List<LocalDate> days) {

        /** {@return how many pages there are} */
        public int pages() {
            return Math.max(1, (found + PAGE - 1) / PAGE);
        }
    }

    /** A sample and its counts. */
    public record Row(CollectedSample sample, SortedMap<StageKey, Long> counts) {}

    /**
     * What can be offered while a sample is typed in.
     *
     * @param nextCode the code after the newest one
     * @param benches bench codes
     * @param cropLots lots with their varieties
     * @param pests what can be counted
     * @param readers role codes of those who read
     */
    public record Offers(
            String nextCode,
            List<String> benches,
            List<CropLot> cropLots,
            Pests pests,
            List<String> readers) {}

    /** {@return a page of samples, those cut last first} */
    public Listed run(String nursery, SampleFilter filter, int page) {
        int found = numbers.of(nursery, filter);
        int last = Math.max(1, (found + PAGE - 1) / PAGE);
        int shown = Math.max(1, Math.min(page, last));
        List<Row> rows =
                samples.list(nursery, filter, (shown - 1) * PAGE, PAGE).stream()
                        .map(sample -> new Row(sample, samples.countsOf(nursery, sample.code())))
                        .toList();
        return new Listed(rows, shown, found, samples.days(nursery));
    }

    /** {@return what to offer for a new sample} */
    public Offers offers(String nursery) {
        return new Offers(
                nextCode(nursery),
                sites.benches(nursery).stream().map(bench -> bench.code()).toList(),
                sites.cropLots(nursery),
                pests.pests(),
                readers.readers(nursery).stream()
                        .filter(reader -> reader.active())
                        .map(reader -> reader.code())
                        .toList());
    }

    /** A sheet goes on with its own numbers when it grows, so they are left to it. */
    private boolean cameWithASheet(String nursery, SampleCode code) {
        return events.ofSample(nursery, code).stream().anyMatch(event -> event.batch().isPresent());
    }

    private String nextCode(String nursery) {
        String newest =
                samples.list(nursery, SampleFilter.ALL, 0, PAGE).stream()
                        .filter(sample -> !cameWithASheet(nursery, sample.code()))
                        .findFirst()
                        .map(sample -> lastOfItsDay(nursery, sample))
                        .orElse("S-000");
        Matcher numbered = NUMBERED.matcher(newest);
        if (!numbered.matches()) {
            return "";
        }
        BigInteger number = new BigInteger(numbered.group(2));
        for (int tries = 0; tries < 1_000; tries++) {
            number = number.add(BigInteger.ONE);
            String digits = number.toString();
            String zeros = "0".repeat(Math.max(0, numbered.group(2).length() - digits.length()));
            String code = numbered.group(1) + zeros + digits;
            if (code.length() <= 60 && samples.find(nursery, new SampleCode(code)).isEmpty()) {
                return code;
            }
        }
        return "";
    }

    /** The highest number of that day's codes that begin as this one does. */
    private String lastOfItsDay(String nursery, CollectedSample sample) {
        Matcher numbered = NUMBERED.matcher(sample.code().text());
        if (!numbered.matches() || sample.collectedOn().isEmpty()) {
            return sample.code().text();
        }
        return samples.codes(nursery, sample.collectedOn().get()).stream()
                .filter(code -> numberAfter(numbered.group(1), code).isPresent())
                .max(
                        Comparator.comparing(
                                code -> numberAfter(numbered.group(1), code).orElseThrow()))
                .orElse(sample.code().text());
    }

    private static Optional<BigInteger> numberAfter(String beginning, String code) {
        Matcher numbered = NUMBERED.matcher(code);
        return numbered.matches() && numbered.group(1).equals(beginning)
                ? Optional.of(new BigInteger(numbered.group(2)))
                : Optional.empty();
    }
}
