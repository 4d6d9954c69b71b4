package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.SampleFold;
import jarwise.usecase.form.Fields;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Ends a sample without a count: lost, spilled or discarded, with a reason. That is no zero.
 *
 * @param log where events go
 */
public record EndSample(SampleLog log) {

    /**
     * Ends.
     *
     * @param fields {@code how}: lost, spilled or discarded; {@code reason}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, SampleCode code, Fields fields) {
        fields.needed("how");
        Optional<Step> how = fields.word("how", Step.class);
        how.filter(step -> !step.endsWithoutCount())
                .ifPresent(step -> fields.fault("how", Message.of("sample.step.not-so")));
        String reason = fields.needed("reason");
        log.alone(
                () -> {
                    SampleFold fold = log.find(nursery, code);
                    if (SampleLog.hasEnded(fold)) {
                        fields.fault("how", Message.of("sample.ended"));
                    }
                    fields.refuseIfAny();
                    log.append(
                            nursery,
                            person,
                            code,
                            List.of(
                                    new Deed.StepTaken(
                                            how.orElseThrow(),
                                            Map.of(),
                                            Optional.empty(),
                                            Optional.of(reason))));
                    return code;
                });
    }
}
