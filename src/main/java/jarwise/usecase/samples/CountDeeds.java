package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.pest.Pests;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Deeds that say a number, or take one back. */
final class CountDeeds {

    private CountDeeds() {}

    static Deed counted(StageKey key, long individuals) {
        return new Deed.Counted(key.pest(), key.lifeStage(), individuals, Optional.empty());
    }

    /** {@return the events that make up the number of a stage} */
    static List<EventId> behind(SampleFold fold, StageKey key) {
        return SampleLog.standing(fold).stream()
                .filter(
                        event ->
                                event.deed() instanceof Deed.Counted counted
                                        && counted.pest().equals(key.pest())
                                        && counted.lifeStage().equals(key.lifeStage()))
                .map(SampleEvent::id)
                .toList();
    }

    /** {@return deeds that take back the number of a stage} */
    static List<Deed> voided(SampleFold fold, StageKey key, String reason) {
        List<Deed> deeds = new ArrayList<>();
        behind(fold, key).forEach(slip -> deeds.add(new Deed.Voided(slip, reason)));
        return deeds;
    }

    static void checkStages(Fields fields, Collection<StageKey> keys, Pests pests) {
        for (StageKey key : keys) {
            boolean known =
                    pests.find(key.pest()).stream()
                            .flatMap(pest -> pest.lifeStages().stream())
                            .anyMatch(stage -> stage.code().equals(key.lifeStage()));
            if (!known) {
                fields.fault(
                        SampleFields.COUNT + key.pest() + ":" + key.lifeStage(),
                        Message.of("sample.stage.unknown", key.pest(), key.lifeStage()));
            }
        }
    }
}
