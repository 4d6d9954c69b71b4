package jarwise.tally;

import java.util.List;
import java.util.Optional;

/**
 * One count that was not taken back.
 *
 * @param id of its event
 * @param counted what was counted
 * @param aside why it is in no estimate; empty where it is in use
 */
public record Press(EventId id, Deed.Counted counted, Optional<AsideReason> aside) {

    /** {@return the counts of a sample, by identity} */
    public static List<Press> of(SampleFold fold) {
        List<SampleEvent> standing = fold.standing();
        FilterCells cells = FilterCells.of(standing, fold.walk());
        return standing.stream()
                .filter(event -> event.deed() instanceof Deed.Counted)
                .map(event -> of(event.id(), (Deed.Counted) event.deed(), cells))
                .toList();
    }

    private static Press of(EventId id, Deed.Counted counted, FilterCells cells) {
        return new Press(id, counted, cells.aside(id.device(), counted));
    }
}
