package jarwise.usecase.findings;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A sample as a test tells it: cut at 8, washed at 10, frozen at 11, read two days later. */
public final class Jar {

    private final String code;
    private final LocalDate day;
    private final Map<String, String> facts = new HashMap<>();
    private final Map<String, Long> counts = new TreeMap<>();
    private String pest = "FRANOC";
    private Duration readAfterWash = Duration.ofDays(2);
    private String device = "test";
    private boolean read;
    private Optional<Step> end = Optional.empty();

    private Jar(String code, LocalDate day) {
        this.code = code;
        this.day = day;
        facts.put(Facts.METHOD, "wash");
        facts.put(Facts.SAMPLING_UNITS, "10");
        facts.put(Facts.FLUID, "soap");
        facts.put(Facts.READER, "SC-1");
    }

    /** {@return a random wash of ten growing points, soap, by SC-1} */
    public static Jar of(String code, LocalDate day) {
        return new Jar(code, day);
    }

    /** Sets one fact. */
    public Jar with(String fact, String value) {
        facts.put(fact, value);
        return this;
    }

    /** Says where it was cut. */
    public Jar at(String house, String bench, String variety) {
        return with(Facts.HOUSE, house).with(Facts.BENCH, bench).with(Facts.VARIETY, variety);
    }

    /** Says how many of a stage were counted. */
    public Jar counted(String stage, long individuals) {
        read = true;
        counts.put(stage, individuals);
        return this;
    }

    /** Says which pest was counted. */
    public Jar of(String pestCode) {
        pest = pestCode;
        return this;
    }

    /** Says how long after the wash it was read. */
    public Jar readAfter(Duration afterWash) {
        readAfterWash = afterWash;
        return this;
    }

    /** Says which device recorded it. */
    public Jar by(String deviceName) {
        device = deviceName;
        return this;
    }

    /** Says that it ended without a count. */
    public Jar ended(Step step) {
        end = Optional.of(step);
        return this;
    }

    List<SampleEvent> events() {
        facts.put(Facts.COLLECTED_ON, day.toString());
        Instant cut = day.atTime(8, 0).toInstant(ZoneOffset.UTC);
        Instant washed = cut.plus(Duration.ofHours(2));
        List<SampleEvent> events = new ArrayList<>();
        add(events, cut, step(Step.CUT, facts));
        add(events, washed, step(Step.WASHED, Map.of()));
        add(events, washed.plus(Duration.ofHours(1)), step(Step.FREEZER_IN, Map.of()));
        end.ifPresent(step -> add(events, washed, step(step, Map.of())));
        if (read) {
            Instant at = washed.plus(readAfterWash);
            add(events, at, step(Step.READ, Map.of()));
            counts.forEach(
                    (stage, n) ->
                            add(events, at, new Deed.Counted(pest, stage, n, Optional.empty())));
            add(events, at, new Deed.FilterDone(Set.of(pest)));
        }
        return events;
    }

    private void add(List<SampleEvent> events, Instant at, Deed deed) {
        events.add(
                new SampleEvent(
                        new EventId(device + "-" + code, events.size() + 1),
                        new SampleCode(code),
                        at,
                        "SC-1",
                        Optional.empty(),
                        deed));
    }

    private static Deed step(Step step, Map<String, String> facts) {
        return new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty());
    }
}
