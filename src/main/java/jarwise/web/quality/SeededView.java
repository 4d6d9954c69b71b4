package jarwise.web.quality;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.sample.SeededFilter;
import jarwise.sample.SeededFilter.Placed;
import jarwise.usecase.quality.MakeSeededFilter;
import jarwise.web.Frame;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Filters of which is known what lies on them, and the form for a new one.
 *
 * @param frame the reader's language
 * @param filters every filter ever made
 * @param pests what can be placed
 */
public record SeededView(Frame frame, List<SeededFilter> filters, List<Pest> pests) {

    /**
     * One filter.
     *
     * @param code on its label
     * @param name what those who make it call it
     * @param made when and by whom
     * @param retired when it was retired; empty where it is in use
     * @param placed what lies on it, a line for each stage
     */
    public record Known(
            String code, String name, String made, String retired, List<String> placed) {}

    /** {@return all of them} */
    public List<Known> all() {
        return filters.stream().map(this::known).toList();
    }

    /** {@return how many are in use, as a heading} */
    public String title() {
        long inUse = filters.stream().filter(filter -> filter.retiredOn().isEmpty()).count();
        return frame.say("seeded.title", inUse);
    }

    /** {@return the day of the page, as forms have it} */
    public String today() {
        return frame.now().toLocalDate().toString();
    }

    /** {@return the name of the field of a stage} */
    public String field(Pest pest, LifeStage stage) {
        return MakeSeededFilter.PLACED + pest.code() + ":" + stage.code();
    }

    private Known known(SeededFilter filter) {
        return new Known(
                filter.code().text(),
                filter.name(),
                frame.say("seeded.made", day(filter.madeOn()), filter.madeBy()),
                filter.retiredOn().map(end -> frame.say("seeded.retired", day(end))).orElse(""),
                placed(filter));
    }

    private String day(LocalDate day) {
        return frame.day(day);
    }

    private List<String> placed(SeededFilter filter) {
        Map<String, List<String>> cells =
                filter.placed().stream()
                        .collect(
                                Collectors.groupingBy(
                                        this::stage,
                                        LinkedHashMap::new,
                                        Collectors.mapping(
                                                Placed::filterCell, Collectors.toList())));
        return cells.entrySet().stream()
                .map(
                        one ->
                                frame.say(
                                        "seeded.placed",
                                        one.getValue().size(),
                                        one.getKey(),
                                        places(one.getValue())))
                .toList();
    }

    private String stage(Placed placed) {
        return pests.stream()
                .filter(pest -> pest.code().equals(placed.pest()))
                .findFirst()
                .map(pest -> frame.stageName(placed.lifeStage()) + ", " + frame.pestName(pest))
                .orElse(placed.pest() + " " + placed.lifeStage());
    }

    /** Cells with how many lie there, such as "A5, C2 (2)". */
    private String places(List<String> cells) {
        Map<String, Long> byCell =
                cells.stream()
                        .collect(
                                Collectors.groupingBy(
                                        cell -> cell, TreeMap::new, Collectors.counting()));
        return byCell.entrySet().stream()
                .map(
                        one ->
                                one.getValue() == 1
                                        ? one.getKey()
                                        : frame.say("seeded.place", one.getKey(), one.getValue()))
                .collect(Collectors.joining(", "));
    }
}
