package jarwise.web.samples;

import jarwise.web.Frame;
import java.util.List;
import java.util.stream.Collectors;

/** What was found in a sample, as one sentence. */
final class FoundWords {

    private FoundWords() {}

    /**
     * {@return such as "In S-001: 4 × first-stage larva."; where several pests were found each find
     * is said with its pest}
     *
     * @param frame the reader's language
     * @param code of the sample
     * @param counts every stage that was read, zeros included
     */
    static String of(Frame frame, String code, List<SampleView.Count> counts) {
        List<SampleView.Count> found =
                counts.stream().filter(count -> !count.number().equals("0")).toList();
        if (found.isEmpty()) {
            return frame.say("sample.found.none", code);
        }
        boolean several = found.stream().map(SampleView.Count::pest).distinct().count() > 1;
        String all =
                found.stream()
                        .map(count -> one(frame, count, several))
                        .collect(Collectors.joining(several ? "; " : ", "));
        return frame.say("sample.found", code, all);
    }

    private static String one(Frame frame, SampleView.Count count, boolean several) {
        return several
                ? frame.say("sample.found.of", count.number(), count.stage(), count.pest())
                : frame.say("sample.found.one", count.number(), count.stage());
    }
}
