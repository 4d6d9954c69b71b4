package jarwise.web.samples;

import jarwise.tally.AsideReason;
import jarwise.tally.Press;
import jarwise.tally.StageKey;
import jarwise.usecase.samples.ShowSample;
import jarwise.web.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Individuals that were counted and are in no number above, with the reason.
 *
 * @param frame the reader's language
 * @param shown the sample
 */
public record AsideView(Frame frame, ShowSample.Shown shown) {

    /** {@return a sentence for each reason, and one for cells that were read twice} */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        for (AsideReason reason : AsideReason.values()) {
            String found = found(reason);
            if (!found.isEmpty()) {
                String key = reason.name().toLowerCase(Locale.ROOT).replace('_', '-');
                sentences.add(frame.say("aside." + key, found));
            }
        }
        int twice = shown.fold().tally().cellsReadTwice();
        if (twice > 0) {
            sentences.add(frame.say("aside.cells", twice));
        }
        return sentences;
    }

    private String found(AsideReason reason) {
        Map<StageKey, Long> numbers =
                Press.of(shown.fold()).stream()
                        .filter(press -> press.aside().filter(reason::equals).isPresent())
                        .map(Press::counted)
                        .filter(counted -> counted.individuals() > 0)
                        .collect(
                                Collectors.groupingBy(
                                        c -> new StageKey(c.pest(), c.lifeStage()),
                                        TreeMap::new,
                                        Collectors.summingLong(c -> c.individuals())));
        DeedWords words = new DeedWords(frame, shown.pests());
        return numbers.entrySet().stream()
                .map(
                        entry ->
                                frame.say(
                                        "deed.counted",
                                        entry.getValue(),
                                        words.stage(
                                                entry.getKey().pest(), entry.getKey().lifeStage())))
                .collect(Collectors.joining("; "));
    }
}
