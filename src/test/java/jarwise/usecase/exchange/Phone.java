package jarwise.usecase.exchange;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.wire.exchange.EventBatch;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A phone that walks a round: what it records, and the batches in which it sends that. */
public final class Phone {

    public static final SampleCode JAR = new SampleCode("J-1");
    public static final String ONE = "phone-00112233445566aa";
    public static final String OTHER = "phone-ffeeddccbbaa9988";
    private static final Instant AT = Instant.parse("2026-05-11T06:00:00Z");

    private Phone() {}

    /** {@return the {@code sequence}th step of a device: so many growing points cut} */
    public static SampleEvent cut(String device, long sequence, String growingPoints) {
        return event(
                device,
                sequence,
                step(Step.CUT, Map.of(Facts.SAMPLING_UNITS, growingPoints)),
                AT.plusSeconds(60 * sequence));
    }

    public static SampleEvent event(String device, long sequence, Deed deed, Instant at) {
        return new SampleEvent(
                new EventId(device, sequence), JAR, at, "SC-1", Optional.empty(), deed);
    }

    public static Deed step(Step step, Map<String, String> facts) {
        return new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty());
    }

    public static Instant at(long minutes) {
        return AT.plusSeconds(60 * minutes);
    }

    public static EventBatch batch(SampleEvent... events) {
        return new EventBatch(events[0].id().device(), List.of(events));
    }
}
