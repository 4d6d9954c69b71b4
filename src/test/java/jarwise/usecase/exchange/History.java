package jarwise.usecase.exchange;

import jarwise.sample.SampleCode;
import jarwise.tally.SampleEvent;
import java.util.List;
import java.util.Map;

/**
 * What several devices recorded about several filters.
 *
 * @param cells of each filter
 * @param passes in which the filters are walked; 0 where nobody noted any
 * @param filters their codes
 * @param devices with all that each recorded
 */
public record History(
        int cells, int passes, List<SampleCode> filters, List<ReadingDevice> devices) {

    /** What is read at the microscope in these histories, and the stages of each. */
    public static final Map<String, List<String>> STAGES =
            Map.of(
                    "FRANOC", List.of("larva1", "larva2", "pupal", "adult"),
                    "TETRUR", List.of("egg", "motile"),
                    "unsure", List.of("any"));

    /** {@return the history of a seed: 2 to 4 devices, 1 to 3 filters, passes for even seeds} */
    public static History of(long seed) {
        return new HistoryMaker(seed).make();
    }

    /** {@return everything anybody recorded about a filter} */
    public List<SampleEvent> eventsOf(SampleCode filter) {
        return devices.stream()
                .flatMap(device -> device.log().stream())
                .filter(event -> event.sample().equals(filter))
                .toList();
    }
}
