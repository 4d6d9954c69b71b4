package jarwise.usecase.microscope;

import jarwise.sample.CollectedSample;
import jarwise.sample.CollectedSample.Reading;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How long a reader takes for a cell.
 *
 * @param secondsPerCell seconds, everything that belongs to a filter included
 * @param filters filters that it was measured on; 0 where it is common practice
 */
public record ReadingSpeed(double secondsPerCell, int filters) {

    /** A filter of 40 cells in about seven minutes: common practice, no source. */
    public static final ReadingSpeed USUAL = new ReadingSpeed(10, 0);

    private static final int ENOUGH_FILTERS = 3;
    private static final int LAST_FILTERS = 20;
    private static final double SECONDS = 60;

    private record Read(Instant at, double secondsPerCell) {}

    /** {@return whether it was measured, and is not just common practice} */
    public boolean isMeasured() {
        return filters > 0;
    }

    /**
     * The speed of every reader on record: the median of the last 20 filters with minutes.
     *
     * @param samples in any order
     * @return by reader; {@link #USUAL} for one with fewer than 3 such filters
     */
    public static Map<String, ReadingSpeed> byReader(Collection<CollectedSample> samples) {
        Map<String, List<Read>> readings = new TreeMap<>();
        for (CollectedSample sample : samples) {
            Reading reading = sample.reading();
            if (reading.reader().isPresent()) {
                List<Read> own =
                        readings.computeIfAbsent(reading.reader().get(), r -> new ArrayList<>());
                if (reading.minutes().orElse(0) > 0 && reading.cellsRead() >= 1) {
                    own.add(
                            new Read(
                                    sample.times().read().orElse(Instant.MIN),
                                    reading.minutes().getAsDouble()
                                            * SECONDS
                                            / reading.cellsRead()));
                }
            }
        }
        Map<String, ReadingSpeed> speeds = new TreeMap<>();
        readings.forEach((reader, own) -> speeds.put(reader, of(own)));
        return speeds;
    }

    private static ReadingSpeed of(List<Read> readings) {
        if (readings.size() < ENOUGH_FILTERS) {
            return USUAL;
        }
        double[] last =
                readings.stream()
                        .sorted(Comparator.comparing(Read::at).reversed())
                        .limit(LAST_FILTERS)
                        .mapToDouble(Read::secondsPerCell)
                        .sorted()
                        .toArray();
        double median = (last[(last.length - 1) / 2] + last[last.length / 2]) / 2;
        return new ReadingSpeed(median, last.length);
    }
}
