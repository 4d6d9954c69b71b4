package jarwise.web.samples;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.tally.Press;
import jarwise.usecase.samples.IdentifyUnsure;
import jarwise.usecase.samples.ShowSample;
import jarwise.web.Frame;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What is unsure in a sample, where it lies, and what it can turn out to be.
 *
 * @param frame the reader's language
 * @param shown the sample
 */
public record UnsureView(Frame frame, ShowSample.Shown shown) {

    /** Something to choose in a list. */
    public record Choice(String value, String label) {}

    /** {@return how many wait to be named} */
    public long number() {
        return byCell().values().stream().mapToLong(Long::longValue).sum();
    }

    /** {@return where they lie, such as "cell A5 (2), cell C2 (1)"} */
    public String where() {
        return byCell().entrySet().stream()
                .map(entry -> frame.say("identify.place", place(entry.getKey()), entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** {@return cells to choose from, where there is a choice} */
    public List<Choice> cells() {
        List<String> cells = byCell().keySet().stream().filter(cell -> !cell.isEmpty()).toList();
        if (byCell().size() < 2) {
            return List.of();
        }
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", frame.say("identify.any-cell")));
        cells.forEach(cell -> choices.add(new Choice(cell, place(cell))));
        return choices;
    }

    /** {@return stages of every other pest} */
    public List<Choice> stages() {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", frame.say("identify.choose")));
        for (Pest pest : shown.pests().all()) {
            for (LifeStage stage : pest.lifeStages()) {
                if (!pest.code().equals(IdentifyUnsure.UNSURE)) {
                    choices.add(
                            new Choice(
                                    pest.code() + ":" + stage.code(),
                                    frame.pestName(pest) + ", " + frame.stageName(stage.code())));
                }
            }
        }
        return choices;
    }

    private String place(String cell) {
        return cell.isEmpty() ? frame.say("identify.no-cell") : frame.say("identify.cell", cell);
    }

    private Map<String, Long> byCell() {
        return IdentifyUnsure.waiting(shown.fold()).stream()
                .map(Press::counted)
                .collect(
                        Collectors.groupingBy(
                                counted -> counted.filterCell().orElse(""),
                                TreeMap::new,
                                Collectors.summingLong(counted -> counted.individuals())));
    }
}
