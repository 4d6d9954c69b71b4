package jarwise.web.rounds;

import jarwise.base.Message;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.plan.RoundQuestion;
import jarwise.render.finding.FindingWords;
import jarwise.usecase.form.Fields;
import jarwise.usecase.planning.Ask;
import jarwise.usecase.planning.Habit;
import jarwise.usecase.planning.PlannedRound;
import jarwise.usecase.planning.StandThere;
import jarwise.web.Frame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The form of a round in the reader's words.
 *
 * @param frame the reader's language and clocks
 * @param planned what is asked and answered
 */
public record PlanView(Frame frame, PlannedRound planned) {

    private static final Pattern FIELD = Pattern.compile("\\[([a-z]+)\\]");
    private static final List<String> TAKEN =
            List.of("k", "efficiency", "sensitivity", "cut", "wash", "read");

    /** One of the five sentences. */
    public record Says(String text, String sub, String address, boolean chosen) {}

    /** A piece of the sentence: words, or a field that stands in it. */
    public record Piece(String text, String field) {}

    /** Something to choose from. */
    public record Option(String value, String text, boolean chosen) {}

    /** A number that is taken while nobody types another one. */
    public record Taken(String field, String label, String usual, String source, String typed) {}

    /** A bench with its lot, to tick. */
    public record Row(
            String key, String name, String last, String size, boolean chosen, boolean hot) {}

    private FindingWords say() {
        return new FindingWords(frame.words(), planned.rules().pests());
    }

    /** {@return the five sentences, each with the page that asks its question} */
    public List<Says> says() {
        return Arrays.stream(RoundQuestion.values())
                .map(
                        question -> {
                            String word = Fields.wordOf(question);
                            return new Says(
                                    frame.say("plan.say." + word),
                                    frame.say("plan.say." + word + ".sub"),
                                    frame.to("rounds/new")
                                            + Queries.with(carried(), Map.of("question", word)),
                                    question == planned.question());
                        })
                .toList();
    }

    /** What another question keeps: animals, day and places. */
    private Map<String, String> carried() {
        Map<String, String> kept = new LinkedHashMap<>();
        Stream.of("subject", "day", "start", "stand", "hot", "blank", "sent", "fluid", "reader")
                .filter(planned.typed()::containsKey)
                .forEach(field -> kept.put(field, planned.typed().getOrDefault(field, "")));
        return kept;
    }

    /** {@return which question, as it stands in addresses} */
    public String question() {
        return Fields.wordOf(planned.question());
    }

    /** {@return the sentence with its fields} */
    public List<Piece> pieces() {
        String sentence = frame.say("plan.sentence." + question());
        List<Piece> pieces = new ArrayList<>();
        Matcher field = FIELD.matcher(sentence);
        int from = 0;
        while (field.find()) {
            pieces.add(new Piece(sentence.substring(from, field.start()), ""));
            pieces.add(new Piece("", field.group(1)));
            from = field.end();
        }
        pieces.add(new Piece(sentence.substring(from), ""));
        return pieces;
    }

    /** {@return the name of a field for those who do not see the sentence around it} */
    public String label(String field) {
        return frame.say("plan.field." + field);
    }

    /** {@return what stands in a field} */
    public String value(String field) {
        return planned.value(field);
    }

    /** {@return what is wrong with a field, as a sentence; empty where nothing is} */
    public String fault(String field) {
        Message fault = planned.faults().get(field);
        return fault == null ? "" : frame.words().say(fault);
    }

    /** {@return every fault, as sentences with the name of the field} */
    public List<String> faults() {
        return planned.faults().keySet().stream()
                .sorted()
                .map(field -> label(field) + ": " + fault(field))
                .toList();
    }

    /** {@return whether a field is one with a list} */
    public boolean isList(String field) {
        return List.of("subject", "check", "find").contains(field);
    }

    /** {@return what a list offers} */
    public List<Option> options(String field) {
        return switch (field) {
            case "subject" -> subjects();
            case "check" -> stands(planned.value("check"));
            default -> finds();
        };
    }

    private List<Option> subjects() {
        String now = planned.subject().pest() + "/" + planned.subject().stageGroup();
        List<Option> options = new ArrayList<>();
        planned.rules()
                .pests()
                .all()
                .forEach(
                        pest ->
                                pest.stageGroups()
                                        .forEach(
                                                group -> {
                                                    String key = pest.code() + "/" + group;
                                                    Subject subject =
                                                            new Subject(pest.code(), group);
                                                    options.add(
                                                            new Option(
                                                                    key,
                                                                    say().subject(subject),
                                                                    key.equals(now)));
                                                }));
        return options;
    }

    private List<Option> stands(String chosen) {
        List<Option> options = new ArrayList<>();
        options.add(new Option("", frame.say("plan.choose"), chosen.isEmpty()));
        planned.stands()
                .forEach(
                        stand ->
                                options.add(
                                        new Option(
                                                stand.key(),
                                                name(stand),
                                                stand.key().equals(chosen))));
        return options;
    }

    private List<Option> finds() {
        String chosen = planned.value("find");
        List<Option> options = new ArrayList<>();
        options.add(new Option("", frame.say("plan.choose"), chosen.isEmpty()));
        planned.benches()
                .forEach(
                        bench ->
                                options.add(
                                        new Option(
                                                bench.code(),
                                                bench.code(),
                                                bench.code().equals(chosen))));
        return options;
    }

    private String name(StandThere stand) {
        return frame.say(
                "plan.stand",
                stand.bench().code(),
                say().variety(stand.lot().variety()),
                stand.lot().code());
    }

    /** {@return whether places are ticked; rings say for themselves where they lie} */
    public boolean asksForPlaces() {
        return planned.question() != RoundQuestion.DELIMIT;
    }

    /** {@return crop lots on benches by house} */
    public Map<String, List<Row>> houses() {
        List<String> chosen = List.of(planned.typed().getOrDefault("stand", "").split(","));
        List<String> hot = List.of(planned.typed().getOrDefault("hot", "").split(","));
        Map<String, List<Row>> houses = new LinkedHashMap<>();
        planned.stands()
                .forEach(
                        stand ->
                                houses.computeIfAbsent(
                                                frame.say(
                                                        "plan.house",
                                                        stand.house().code(),
                                                        stand.house().name()),
                                                house -> new ArrayList<>())
                                        .add(
                                                new Row(
                                                        stand.key(),
                                                        name(stand),
                                                        last(stand),
                                                        size(stand),
                                                        chosen.contains(stand.key()),
                                                        hot.contains(stand.key()))));
        return houses;
    }

    private String last(StandThere stand) {
        Finding finding = planned.last().get(stand.stand());
        return finding == null
                ? frame.say("figure.not-sampled")
                : frame.say("plan.last", say().inWords(finding), say().verdict(finding));
    }

    private String size(StandThere stand) {
        return stand.growingPoints().isPresent()
                ? say().figures()
                        .counted("plan.size", Math.round(stand.growingPoints().getAsDouble()))
                : frame.say("plan.size.unknown");
    }

    /** {@return numbers that are taken for granted, each with where it comes from} */
    public List<Taken> taken() {
        return TAKEN.stream()
                .map(
                        field -> {
                            Habit habit =
                                    planned.habits()
                                            .getOrDefault(
                                                    field,
                                                    new Habit("", Message.of("plan.from.common")));
                            return new Taken(
                                    field,
                                    label(field),
                                    habit.value(),
                                    frame.words().say(habit.source()),
                                    planned.typed().getOrDefault(field, ""));
                        })
                .toList();
    }

    /** {@return where a number comes from} */
    public String source(String field) {
        Habit habit = planned.habits().get(field);
        return habit == null ? "" : frame.words().say(habit.source());
    }

    /** {@return fluids to wash in} */
    public List<Option> fluids() {
        return Stream.of("soap", "alcohol")
                .map(
                        fluid ->
                                new Option(
                                        fluid,
                                        frame.say("fluid." + fluid),
                                        fluid.equals(planned.value("fluid"))))
                .toList();
    }

    /** {@return whether a tick is set: the blank wash is, until the form says otherwise} */
    public boolean ticked(String field) {
        return planned.typed().containsKey(field)
                || (field.equals("blank") && !planned.typed().containsKey("sent"));
    }

    /** {@return whether the jars can be set by hand} */
    public boolean jarsMayBeSet() {
        return planned.question() == RoundQuestion.DETECT
                || planned.question() == RoundQuestion.ESTIMATE;
    }

    /** {@return whether nobody has said which bench stays untreated} */
    public boolean lacksCheck() {
        return planned.request()
                .map(request -> request.ask())
                .filter(ask -> ask instanceof Ask.Compare compare && compare.check().isEmpty())
                .isPresent();
    }
}
