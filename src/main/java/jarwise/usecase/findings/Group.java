package jarwise.usecase.findings;

import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * Crop samples of one stand and round, with what was counted in them.
 *
 * @param stand where
 * @param day last day they were collected
 * @param samples all of them: read or not, random or targeted
 * @param individuals of the animals asked for, by sample; a sample that is not here was not read
 *     for them
 */
public record Group(
        Stand stand,
        LocalDate day,
        List<CollectedSample> samples,
        Map<SampleCode, Long> individuals) {

    public Group {
        samples = List.copyOf(samples);
    }
}
