package jarwise.usecase.demo.day;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.stats.count.SimulatedCounts;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.StageKey;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.Stage;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One person reads one filter: what they see of what lies there, press by press.
 *
 * @param sample the filter
 * @param reader who reads
 * @param lookedFor pests on the list
 * @param filter what lies there
 * @param cellsLeftUnread cells after which the reader stops, in passes of every fourth cell
 * @param draws this reading's own sequence
 */
record Reading(
        SampleCode sample,
        String reader,
        Set<String> lookedFor,
        Filter filter,
        int cellsLeftUnread,
        SimulatedCounts draws) {

    private static final int PASSES = 4;
    private static final double SECONDS = 180;
    private static final double SECONDS_PER_INSECT = 2.5;
    private static final double SECONDS_PER_CELL_IN_DEBRIS = 6;
    private static final double SECOND_READER_SLOWER = 1.3;
    private static final double SLIP_SHARE = .01;

    private record Press(Deed deed, boolean slip) {}

    /** The end of a reading: when, by which event, and what that event noted. */
    record Done(Instant at, EventId event, Map<String, String> facts) {}

    /**
     * Writes the presses into the diary.
     *
     * @param start when the first cell comes under the lens
     * @return its end
     */
    Done write(Diary diary, Instant start) {
        Diary.Hand hand = new Diary.Hand(Cast.microscopeOf(reader), reader);
        List<Press> presses = presses();
        Instant end = start.plusMillis(Math.round(seconds(presses) * 1000));
        long between = Duration.between(start, end).toMillis() / (presses.size() + 2);
        Instant at = start;
        for (Press press : presses) {
            at = at.plusMillis(between);
            EventId id = diary.write(hand, at, sample, press.deed());
            if (press.slip()) {
                Deed undo = new Deed.Voided(id, "wrong key");
                diary.write(hand, at.plusMillis(between / 2), sample, undo);
            }
        }
        diary.write(hand, end, sample, new Deed.FilterDone(lookedFor));
        Map<String, String> facts = facts(Duration.between(start, end));
        Deed read = new Deed.StepTaken(Step.READ, facts, Optional.empty(), Optional.empty());
        return new Done(end, diary.write(hand, end, sample, read), facts);
    }

    private Map<String, String> facts(Duration taken) {
        String minutes = String.format(Locale.ROOT, "%.1f", taken.toSeconds() / 60.0);
        String cells = Integer.toString(FilterGrid.WALK.size());
        return Map.of(Facts.READER, reader, Facts.CELLS_READABLE, cells, Facts.MINUTES, minutes);
    }

    private double seconds(List<Press> presses) {
        long found = presses.stream().filter(p -> p.deed() instanceof Deed.Counted).count();
        long cells = presses.stream().filter(p -> p.deed() instanceof Deed.CellDone).count();
        double seconds =
                SECONDS
                        + SECONDS_PER_INSECT * found
                        + (filter.muchDebris() ? SECONDS_PER_CELL_IN_DEBRIS * cells : 0);
        return reader.equals(Cast.READER_B) ? SECOND_READER_SLOWER * seconds : seconds;
    }

    private List<Press> presses() {
        List<Press> presses = new ArrayList<>();
        for (String cell : cells()) {
            boolean obscured = filter.obscured().contains(cell);
            for (Filter.Insect insect : filter.insects()) {
                if (!obscured
                        && insect.cell().equals(cell)
                        && draws.happens(insect.stage().observed().seenBy(reader))) {
                    slipOfTheFinger(presses, cell);
                    presses.add(new Press(counted(takenFor(insect.stage()).key(), cell), false));
                }
            }
            presses.add(new Press(new Deed.CellDone(cell, obscured), false));
        }
        return presses;
    }

    /** Whole filters in the order of the walk; others pass by pass from a random start. */
    private List<String> cells() {
        if (cellsLeftUnread == 0) {
            return FilterGrid.WALK;
        }
        int start = draws.below(PASSES);
        List<String> cells = new ArrayList<>();
        for (int pass = 0; pass < PASSES; pass++) {
            for (int i = (start + pass) % PASSES; i < FilterGrid.WALK.size(); i += PASSES) {
                cells.add(FilterGrid.WALK.get(i));
            }
        }
        return cells.subList(0, cells.size() - cellsLeftUnread);
    }

    private void slipOfTheFinger(List<Press> presses, String cell) {
        if (draws.happens(SLIP_SHARE)) {
            presses.add(new Press(counted(Stage.ADULT.key(), cell), true));
        }
    }

    private static Deed counted(StageKey key, String cell) {
        return new Deed.Counted(key.pest(), key.lifeStage(), 1, Optional.of(cell));
    }

    /** What a stage is taken for: invented shares, the same for both readers. */
    private Stage takenFor(Stage truth) {
        double at = draws.uniform();
        if (truth.thrips()) {
            if (at < .03) {
                return Stage.UNSURE;
            }
            at -= .03;
        }
        return switch (truth) {
            case LARVA1 -> at < .04 ? Stage.LARVA2 : truth;
            case LARVA2 -> at < .04 ? Stage.LARVA1 : at < .07 ? Stage.PUPAL : truth;
            case CUCUMERIS, PERSIMILIS -> at < .02 ? Stage.LARVA1 : truth;
            default -> truth;
        };
    }
}
