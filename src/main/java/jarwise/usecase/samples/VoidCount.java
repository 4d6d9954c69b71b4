package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.sample.SampleCode;
import jarwise.tally.Deed;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.util.List;

/**
 * Takes back the count of a stage, with a reason: it is "not read" again, which is no zero.
 *
 * @param log where events go
 */
public record VoidCount(SampleLog log) {

    /**
     * Takes back.
     *
     * @param fields {@code reason}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, SampleCode code, StageKey key, Fields fields) {
        String reason = fields.needed("reason");
        log.alone(
                () -> {
                    SampleFold fold = log.find(nursery, code);
                    List<Deed> deeds = CountDeeds.voided(fold, key, reason);
                    if (deeds.isEmpty()) {
                        boolean zero = fold.tally().of(key).isPresent();
                        String why = zero ? "sample.count.of-done" : "sample.count.gone";
                        fields.fault("reason", Message.of(why));
                    }
                    fields.refuseIfAny();
                    log.append(nursery, person, code, deeds);
                    return code;
                });
    }
}
