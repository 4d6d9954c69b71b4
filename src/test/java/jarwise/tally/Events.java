package jarwise.tally;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/** Events for tests. */
public final class Events {

    public static final SampleCode JAR = new SampleCode("J-1");
    public static final Instant AT = Instant.parse("2026-05-07T05:40:00.123456Z");
    public static final Map<String, List<String>> STAGES =
            Map.of(
                    "FRANOC", List.of("larva1", "larva2", "pupal", "adult"),
                    "TETRUR", List.of("egg", "motile"));
    private static final List<Step> STEPS = List.of(Step.values());
    private static final List<String> CELLS = List.of("A1", "A2", "B1", "B2", "C1");

    private Events() {}

    public static SampleEvent event(String device, long sequence, Deed deed) {
        EventId id = new EventId(device, sequence);
        return new SampleEvent(id, JAR, AT.plusSeconds(sequence), "SC-1", Optional.empty(), deed);
    }

    public static SampleEvent step(
            String device, long sequence, Step step, Map<String, String> facts) {
        return event(
                device,
                sequence,
                new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty()));
    }

    public static SampleEvent correction(
            String device, long sequence, Step step, Map<String, String> facts, EventId replaces) {
        return event(
                device,
                sequence,
                new Deed.StepTaken(step, facts, Optional.of(replaces), Optional.of("misread")));
    }

    /** {@return 1 to 60 events of every kind from three devices, each identity once} */
    public static List<SampleEvent> random(Random random) {
        List<SampleEvent> events = new ArrayList<>();
        int number = 1 + random.nextInt(60);
        for (int i = 1; i <= number; i++) {
            String device = "device-" + random.nextInt(3);
            events.add(event(device, i, deed(random, events)));
        }
        return events;
    }

    private static Deed deed(Random random, List<SampleEvent> earlier) {
        String pest = random.nextInt(4) > 0 ? "FRANOC" : "TETRUR";
        List<String> stages = STAGES.getOrDefault(pest, List.of());
        String stage = stages.get(random.nextInt(stages.size()));
        Optional<String> cell = Optional.of(CELLS.get(random.nextInt(CELLS.size())));
        EventId any =
                earlier.isEmpty()
                        ? new EventId("nobody", 1)
                        : earlier.get(random.nextInt(earlier.size())).id();
        return switch (random.nextInt(12)) {
            case 0 -> new Deed.Voided(any, "slip");
            case 1 -> new Deed.FilterDone(Set.of(pest));
            case 2 -> new Deed.Reopened(any, "again");
            case 3 -> new Deed.CellDone(cell.get(), random.nextInt(4) == 0);
            case 4 ->
                    new Deed.StepTaken(
                            STEPS.get(random.nextInt(STEPS.size())),
                            Map.of(Facts.SAMPLING_UNITS, String.valueOf(1 + random.nextInt(12))),
                            random.nextBoolean() ? Optional.of(any) : Optional.empty(),
                            Optional.empty());
            case 5 ->
                    new Deed.VoucherKept(
                            cell.get(),
                            1 + random.nextInt(3),
                            random.nextBoolean() ? Optional.of(any) : Optional.empty());
            case 6 ->
                    new Deed.PhotoTaken(
                            any, "%064x".formatted(random.nextInt()), 1 + random.nextInt(90_000));
            default -> new Deed.Counted(pest, stage, random.nextInt(3), cell);
        };
    }
}
