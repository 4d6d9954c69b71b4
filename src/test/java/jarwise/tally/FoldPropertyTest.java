package jarwise.tally;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.wire.DeedJson;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FoldPropertyTest {

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void orderAndRepeatsOfEventsMakeNoDifference(long seed) {
        Random random = new Random(seed);
        List<SampleEvent> events = Events.random(random);
        List<SampleEvent> delivered = new ArrayList<>(events);
        delivered.addAll(events.subList(0, random.nextInt(events.size())));
        Collections.shuffle(delivered, random);

        assertThat(SampleFold.of(Events.JAR, delivered, Events.STAGES))
                .isEqualTo(SampleFold.of(Events.JAR, events, Events.STAGES));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void aPressAddsOneAndItsSlipTakesItBack(long seed) {
        Random random = new Random(seed);
        List<SampleEvent> events = new ArrayList<>(Events.random(random));
        Tally before = Tally.of(events, Events.STAGES);
        StageKey key = new StageKey("FRANOC", "adult");

        events.add(
                Events.event("new", 1, new Deed.Counted("FRANOC", "adult", 1, Optional.of("F6"))));
        Tally pressed = Tally.of(events, Events.STAGES);
        events.add(Events.event("new", 2, new Deed.Voided(new EventId("new", 1), "slip")));

        assertThat(pressed.of(key).orElseThrow()).isEqualTo(before.of(key).orElse(0) + 1);
        assertThat(pressed.aside()).isEqualTo(before.aside());
        assertThat(Tally.of(events, Events.STAGES)).isEqualTo(before);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void aPressIsInUseOrAsideAndNeverBothOrLost(long seed) {
        Random random = new Random(seed);
        List<SampleEvent> events = new ArrayList<>(Events.random(random));
        Tally before = Tally.of(events, Events.STAGES);

        events.add(
                Events.event("new", 1, new Deed.Counted("FRANOC", "adult", 2, Optional.of("A1"))));

        assertThat(everything(Tally.of(events, Events.STAGES))).isEqualTo(everything(before) + 2);
    }

    private static long everything(Tally tally) {
        return Stream.of(tally.individuals(), tally.aside())
                .flatMap(counts -> counts.values().stream())
                .mapToLong(Long::longValue)
                .sum();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void everyDeedReadsBackAsItWasWritten(long seed) {
        for (SampleEvent event : Events.random(new Random(seed))) {
            String text = DeedJson.write(event.deed());

            assertThat(DeedJson.read(text)).isEqualTo(event.deed());
            assertThat(DeedJson.write(DeedJson.read(text))).isEqualTo(text);
        }
    }
}
