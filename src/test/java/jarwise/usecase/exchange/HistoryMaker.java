package jarwise.usecase.exchange;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.stats.filter.CellWalk;
import jarwise.stats.filter.FilterCell;
import jarwise.stats.filter.FilterLayout;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Makes up what people do at several microscopes, everything they may and nothing sensible. */
final class HistoryMaker {

    private static final List<String> PESTS = History.STAGES.keySet().stream().sorted().toList();

    private final long seed;
    private final Random random;
    private final int cells;
    private final int passes;
    private final CellWalk walk;
    private final List<SampleCode> filters = new ArrayList<>();
    private final List<ReadingDevice> devices = new ArrayList<>();

    HistoryMaker(long seed) {
        this.seed = seed;
        random = new Random(seed);
        cells = one(List.of(4, 10, 40));
        passes = seed % 2 == 0 ? 1 + random.nextInt(4) : 0;
        walk = CellWalk.from(FilterLayout.ofCells(cells), Math.max(1, passes), start());
        for (int i = random.nextInt(3); i >= 0; i--) {
            filters.add(new SampleCode("S%d-%d".formatted(seed, i)));
        }
        for (int i = 1 + random.nextInt(3); i >= 0; i--) {
            devices.add(
                    new ReadingDevice("phone-%08x%08x".formatted(random.nextInt(), 9 * seed + i)));
        }
    }

    private int start() {
        return (int) (seed % Math.max(1, passes));
    }

    History make() {
        for (int deeds = 20 + random.nextInt(60); deeds > 0; deeds--) {
            act(one(devices), one(filters));
        }
        return new History(cells, passes, List.copyOf(filters), List.copyOf(devices));
    }

    private void act(ReadingDevice device, SampleCode filter) {
        switch (random.nextInt(20)) {
            case 0, 1 -> hear(device);
            case 2, 3 -> slip(device, filter);
            case 4, 5 -> device.record(filter, cellDone(cell()));
            case 6, 7 -> readPass(device, filter);
            case 8 -> finish(device, filter);
            case 9 -> reopen(device, filter);
            case 10 -> step(device, filter);
            default -> device.record(filter, press(Optional.of(cell())));
        }
    }

    private void hear(ReadingDevice device) {
        ReadingDevice other = one(devices);
        if (other != device) {
            device.hear(other, random.nextInt(other.log().size() + 1));
        }
    }

    /** Presses, cells, filters and steps are taken back, and slips too. */
    private void slip(ReadingDevice device, SampleCode filter) {
        known(device, filter, event -> true)
                .ifPresent(event -> device.record(filter, new Deed.Voided(event.id(), "a slip")));
    }

    private void readPass(ReadingDevice device, SampleCode filter) {
        for (FilterCell cell : one(walk.passes())) {
            if (random.nextInt(4) == 0) {
                device.record(filter, press(Optional.of(cell.name())));
            }
            device.record(filter, cellDone(cell.name()));
        }
    }

    private void finish(ReadingDevice device, SampleCode filter) {
        List<String> lookedFor = PESTS.subList(random.nextInt(PESTS.size()), PESTS.size());
        device.record(filter, new Deed.FilterDone(java.util.Set.copyOf(lookedFor)));
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.READER, "SC-1");
        facts.put(Facts.CELLS_READABLE, String.valueOf(cells));
        if (passes > 0) {
            facts.put(Facts.PASSES, String.valueOf(passes));
            facts.put(Facts.PASS_START, String.valueOf(start()));
        }
        device.record(filter, Phone.step(Step.READ, facts));
    }

    private void reopen(ReadingDevice device, SampleCode filter) {
        known(device, filter, event -> event.deed() instanceof Deed.FilterDone)
                .ifPresent(
                        event -> device.record(filter, new Deed.Reopened(event.id(), "one more")));
    }

    private void step(ReadingDevice device, SampleCode filter) {
        Step step = one(List.of(Step.WASHED, Step.FREEZER_IN, Step.FREEZER_OUT));
        Map<String, String> facts = Map.of(Facts.LID, "L" + random.nextInt(3));
        Optional<SampleEvent> earlier =
                known(device, filter, event -> isStep(event, step))
                        .filter(event -> random.nextBoolean());
        device.record(
                filter,
                new Deed.StepTaken(
                        step,
                        facts,
                        earlier.map(SampleEvent::id),
                        earlier.map(event -> "misread")));
    }

    private static boolean isStep(SampleEvent event, Step wanted) {
        return event.deed() instanceof Deed.StepTaken taken && taken.step() == wanted;
    }

    private Optional<SampleEvent> known(
            ReadingDevice device, SampleCode filter, Predicate<SampleEvent> wanted) {
        List<SampleEvent> known = device.known(filter).stream().filter(wanted).toList();
        return known.isEmpty() ? Optional.empty() : Optional.of(one(known));
    }

    private Deed press(Optional<String> cell) {
        String pest = one(PESTS);
        String stage = one(History.STAGES.getOrDefault(pest, List.of()));
        long individuals = random.nextInt(10) == 0 ? random.nextInt(30) : 1;
        return new Deed.Counted(
                pest, stage, individuals, cell.filter(known -> random.nextInt(10) > 0));
    }

    private Deed cellDone(String cell) {
        return new Deed.CellDone(cell, random.nextInt(8) == 0);
    }

    private String cell() {
        return one(one(walk.passes())).name();
    }

    private <T> T one(List<T> some) {
        return some.get(random.nextInt(some.size()));
    }
}
