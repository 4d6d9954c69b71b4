package jarwise.usecase.exchange;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.CollectedSample;
import jarwise.sample.DerivedCode;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.sample.Step;
import jarwise.store.SampleStore;
import jarwise.store.work.SeededFilterStore;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which samples a device may send events of: those that are registered here, and those that it
 * registers itself because there was no server, if what they come from is known.
 *
 * @param samples what is registered
 * @param filters filters of which is known what lies on them, retired ones too: a device may have
 *     read one before it heard of that
 */
record DerivedSamples(SampleStore samples, SeededFilterStore filters) {

    private static final Set<SampleRole> WASHED_AGAIN =
            EnumSet.of(SampleRole.CROP, SampleRole.SPIKE);

    /** Refuses events of a sample that nobody registered, or that is not what its code says. */
    void check(String nursery, SampleCode code, List<SampleEvent> events) {
        List<Map<String, String>> registrations =
                events.stream()
                        .map(SampleEvent::deed)
                        .filter(Deed.StepTaken.class::isInstance)
                        .map(Deed.StepTaken.class::cast)
                        .filter(step -> step.step() == Step.REGISTERED)
                        .map(Deed.StepTaken::facts)
                        .toList();
        Optional<DerivedCode> derived =
                DerivedCode.of(code).filter(made -> !registrations.isEmpty());
        if (derived.isEmpty() && samples.find(nursery, code).isEmpty()) {
            throw new Refused(Message.of("exchange.sample", code.text()));
        }
        derived.ifPresent(
                made -> {
                    checkBase(nursery, code, made);
                    registrations.forEach(facts -> checkFacts(code, made, facts));
                });
    }

    private void checkBase(String nursery, SampleCode code, DerivedCode derived) {
        boolean seeded = derived.role() == SampleRole.SEEDED;
        boolean known =
                seeded
                        ? filters.find(nursery, derived.base()).isPresent()
                        : samples.find(nursery, derived.base())
                                .filter(DerivedSamples::mayBeWashedAgain)
                                .isPresent();
        if (!known) {
            String key = seeded ? "exchange.known-filter" : "exchange.washed-jar";
            throw new Refused(Message.of(key, code.text(), derived.base().text()));
        }
    }

    private static boolean mayBeWashedAgain(CollectedSample jar) {
        return jar.method() == SamplingMethod.WASH && WASHED_AGAIN.contains(jar.role());
    }

    private static void checkFacts(
            SampleCode code, DerivedCode derived, Map<String, String> facts) {
        fits(code, facts, Facts.ROLE, derived.role().name().toLowerCase(Locale.ROOT));
        if (derived.role() == SampleRole.SEEDED) {
            fits(code, facts, Facts.SEEDED_OF, derived.base().text());
        } else {
            fits(code, facts, Facts.REPEAT_OF, derived.base().text());
            fits(code, facts, Facts.WASH_NUMBER, String.valueOf(derived.number()));
        }
    }

    private static void fits(
            SampleCode code, Map<String, String> facts, String name, String wanted) {
        String said = facts.getOrDefault(name, "");
        if (!said.equals(wanted)) {
            throw new Refused(Message.of("exchange.derived", code.text(), name, said, wanted));
        }
    }
}
