package jarwise.tally;

import static jarwise.tally.Events.correction;
import static jarwise.tally.Events.event;
import static jarwise.tally.Events.step;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SampleFoldTest {

    private static final Map<String, String> TEN = Map.of(Facts.SAMPLING_UNITS, "10");
    private static final Map<String, String> NINE = Map.of(Facts.SAMPLING_UNITS, "9");

    @Test
    void whatWasReallyCutCountsAndNotWhatWasPlanned() {
        SampleFold fold =
                fold(step("desk", 1, Step.REGISTERED, TEN), step("phone", 1, Step.CUT, NINE));

        assertThat(fold.sample().samplingUnits()).isEqualTo(9);
        assertThat(fold.openQuestions()).isEmpty();
    }

    @Test
    void aCorrectionTakesThePlaceOfTheStepItNames() {
        SampleEvent first = step("phone", 1, Step.CUT, TEN);
        SampleFold fold = fold(first, correction("desk", 1, Step.CUT, NINE, first.id()));

        assertThat(fold.sample().samplingUnits()).isEqualTo(9);
        assertThat(fold.openQuestions()).isEmpty();
        assertThat(fold.history()).hasSize(2);
    }

    @Test
    void aCorrectionTakenBackReplacesNothing() {
        SampleEvent first = step("phone", 1, Step.CUT, TEN);
        SampleEvent correction = correction("desk", 1, Step.CUT, NINE, first.id());
        SampleFold fold =
                fold(first, correction, event("desk", 2, new Deed.Voided(correction.id(), "no")));

        assertThat(fold.sample().samplingUnits()).isEqualTo(10);
    }

    @Test
    void ofTwoValuesNeitherNamingTheOtherTheSmallerIdentityCountsAndBothAreAsked() {
        SampleEvent one = step("phone-1", 7, Step.CUT, NINE);
        SampleEvent other = step("phone-2", 3, Step.CUT, TEN);
        SampleFold fold = fold(other, one);

        assertThat(fold.sample().samplingUnits()).isEqualTo(9);
        assertThat(fold.openQuestions())
                .containsExactly(new OpenQuestion(Step.CUT, List.of(one, other)));
    }

    @Test
    void theSameNotedOnTwoDevicesIsNoQuestion() {
        SampleFold fold =
                fold(step("phone-1", 7, Step.CUT, TEN), step("phone-2", 3, Step.CUT, TEN));

        assertThat(fold.openQuestions()).isEmpty();
    }

    @Test
    void aQuestionIsSettledByVoidingOneOfTheTwo() {
        SampleEvent one = step("phone-1", 7, Step.CUT, NINE);
        SampleFold fold =
                fold(
                        one,
                        step("phone-2", 3, Step.CUT, TEN),
                        event("desk", 1, new Deed.Voided(one.id(), "miscounted")));

        assertThat(fold.openQuestions()).isEmpty();
        assertThat(fold.sample().samplingUnits()).isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource({
        "REGISTERED, PLANNED",
        "CUT, CUT",
        "WASHED, WASHED",
        "FREEZER_IN, FROZEN",
        "FREEZER_OUT, FROZEN",
        "LOST, LOST",
        "SPILLED, SPILLED",
        "DISCARDED, DISCARDED"
    })
    void theStateFollowsFromTheLastStep(Step last, SampleState state) {
        List<SampleEvent> steps = new ArrayList<>();
        for (Step step : EnumSet.range(Step.REGISTERED, last)) {
            if (step == last || !(step.endsWithoutCount() || step == Step.READ)) {
                steps.add(step("desk", steps.size() + 1, step, Map.of()));
            }
        }

        assertThat(SampleFold.of(Events.JAR, steps, Events.STAGES).sample().state())
                .isEqualTo(state);
    }

    @Test
    void aLostSampleIsNoZero() {
        SampleFold fold =
                fold(step("desk", 1, Step.CUT, TEN), step("desk", 2, Step.LOST, Map.of()));

        assertThat(fold.tally().individuals()).isEmpty();
        assertThat(fold.sample().reading().filterShare()).isZero();
    }

    @Test
    void aFilterUnderTheMicroscopeIsBeingReadUntilItIsDone() {
        SampleEvent press =
                event("tablet", 1, new Deed.Counted("FRANOC", "adult", 1, Optional.of("A1")));
        SampleEvent done = event("tablet", 2, new Deed.FilterDone(Set.of("FRANOC")));

        assertThat(fold(press).sample().state()).isEqualTo(SampleState.READING);
        assertThat(fold(press, done).sample().state()).isEqualTo(SampleState.READ);
    }

    @Test
    void obscuredCellsLeaveTheDenominator() {
        SampleFold fold =
                fold(
                        step("desk", 1, Step.REGISTERED, Map.of(Facts.CELLS_READABLE, "40")),
                        event("tablet", 1, new Deed.CellDone("A1", false)),
                        event("tablet", 2, new Deed.CellDone("A2", true)),
                        event("tablet", 3, new Deed.CellDone("A3", false)));

        assertThat(fold.sample().reading().cellsReadable()).isEqualTo(39);
        assertThat(fold.sample().reading().cellsRead()).isEqualTo(2);
        assertThat(fold.sample().state()).isEqualTo(SampleState.READING);
    }

    @Test
    void aKeptFindAndItsPhotoCountNothingAndAreTakenBackLikeAnyEvent() {
        SampleEvent press =
                event("tablet", 1, new Deed.Counted("FRANOC", "adult", 1, Optional.of("A1")));
        SampleEvent kept =
                event("tablet", 2, new Deed.VoucherKept("A1", 1, Optional.of(press.id())));
        SampleEvent photo =
                event("tablet", 3, new Deed.PhotoTaken(kept.id(), "ab".repeat(32), 81_234));
        SampleEvent slip = event("tablet", 4, new Deed.Voided(kept.id(), "not kept"));

        assertThat(fold(press, kept, photo).tally()).isEqualTo(fold(press).tally());
        assertThat(fold(press, kept, photo).standing()).containsExactly(press, kept, photo);
        assertThat(fold(press, kept, photo, slip).standing()).containsExactly(press, photo, slip);
        assertThat(fold(press, kept, photo, slip).history()).contains(kept);
    }

    @Test
    void aStepTypedInLaterSaysWhenItReallyWas() {
        Instant really = Instant.parse("2026-05-05T10:30:00Z");
        SampleFold fold = fold(step("desk", 1, Step.WASHED, Map.of(Facts.AT, really.toString())));

        assertThat(fold.sample().times().washed()).contains(really);
    }

    @Test
    void aValueThatIsNoneIsRefusedWithTheSampleAndTheFact() {
        assertThatThrownBy(
                        () -> fold(step("desk", 1, Step.CUT, Map.of(Facts.SAMPLING_UNITS, "ten"))))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("sampling_units of J-1 is 'ten'");
    }

    private static SampleFold fold(SampleEvent... events) {
        return SampleFold.of(Events.JAR, List.of(events), Events.STAGES);
    }
}
