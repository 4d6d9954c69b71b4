package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.SampleCode;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.OpenQuestion;
import jarwise.tally.SampleEvent;
import java.util.List;

/**
 * Answers which of two records of one step is right; the others are taken back and stay on record.
 *
 * @param log where events go
 */
public record SettleQuestion(SampleLog log) {

    /**
     * Answers.
     *
     * @param right the record that holds
     * @throws Refused if no question is open about it
     */
    public void run(String nursery, String person, SampleCode code, EventId right) {
        log.alone(
                () -> {
                    OpenQuestion question =
                            log.find(nursery, code).openQuestions().stream()
                                    .filter(open -> records(open).contains(right))
                                    .findFirst()
                                    .orElseThrow(
                                            () -> new Refused(Message.of("sample.question.none")));
                    List<Deed> deeds =
                            records(question).stream()
                                    .filter(id -> !id.equals(right))
                                    .<Deed>map(id -> new Deed.Voided(id, "another record holds"))
                                    .toList();
                    log.append(nursery, person, code, deeds);
                    return code;
                });
    }

    private static List<EventId> records(OpenQuestion question) {
        return question.records().stream().map(SampleEvent::id).toList();
    }
}
