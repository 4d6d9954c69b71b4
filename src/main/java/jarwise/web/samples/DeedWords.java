package jarwise.web.samples;

import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.usecase.form.Fields;
import jarwise.web.Frame;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Says what happened to a sample, in words.
 *
 * @param frame the reader's language and clocks
 * @param pests names of what was counted
 */
public record DeedWords(Frame frame, Pests pests) {

    private static final Set<String> WORDS =
            Set.of(Facts.METHOD, Facts.PURPOSE, Facts.ROLE, Facts.FLUID, Facts.FILL, Facts.FOAM);

    /** {@return what an event says} */
    public String say(SampleEvent event) {
        Deed deed = event.deed();
        if (deed instanceof Deed.Counted counted) {
            String stage = stage(counted.pest(), counted.lifeStage());
            return counted.filterCell().isPresent()
                    ? frame.say(
                            "deed.counted.cell",
                            counted.individuals(),
                            stage,
                            counted.filterCell().get())
                    : frame.say("deed.counted", counted.individuals(), stage);
        }
        if (deed instanceof Deed.StepTaken step) {
            return step(step);
        }
        if (deed instanceof Deed.Voided voided) {
            return frame.say("deed.voided", voided.slip().sequence(), reason(voided.reason()));
        }
        if (deed instanceof Deed.FilterDone done) {
            String names =
                    done.pests().stream()
                            .sorted()
                            .map(this::pest)
                            .collect(Collectors.joining(", "));
            return frame.say("deed.done", names);
        }
        if (deed instanceof Deed.Reopened reopened) {
            return frame.say("deed.reopened", reopened.reason());
        }
        if (deed instanceof Deed.VoucherKept voucher) {
            return frame.say("deed.voucher", voucher.number(), voucher.filterCell());
        }
        if (deed instanceof Deed.PhotoTaken photo) {
            return frame.say("deed.photo", photo.voucher().sequence());
        }
        Deed.CellDone cell = (Deed.CellDone) deed;
        return frame.say(cell.obscured() ? "deed.cell.obscured" : "deed.cell", cell.filterCell());
    }

    /** Reasons that the program gives by itself are kept as one word and said in any language. */
    private String reason(String reason) {
        String key = "deed.reason." + reason;
        return frame.words().has(key) ? frame.say(key) : reason;
    }

    private String step(Deed.StepTaken step) {
        String what = frame.say("step." + word(step.step()));
        String facts = facts(step.facts());
        String said = facts.isEmpty() ? what : what + ": " + facts;
        String corrected = step.replaces().isPresent() ? frame.say("deed.corrected", said) : said;
        return step.reason()
                .map(why -> frame.say("deed.because", corrected, why))
                .orElse(corrected);
    }

    /** {@return facts as "name value", the time of the step left out} */
    public String facts(Map<String, String> facts) {
        Map<String, String> shown = new TreeMap<>(facts);
        shown.remove(Facts.AT);
        return shown.entrySet().stream()
                .map(fact -> name(fact.getKey()) + " " + value(fact.getKey(), fact.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** {@return what a fact is called} */
    public String name(String fact) {
        return fact.startsWith(Facts.OTHER)
                ? fact.substring(Facts.OTHER.length())
                : frame.say("fact." + fact);
    }

    /** {@return the value of a fact as people say it} */
    public String value(String fact, String value) {
        if (WORDS.contains(fact)) {
            String key = fact + "." + value;
            return frame.words().has(key) ? frame.say(key) : value;
        }
        if (fact.equals(Facts.COLLECTED_ON) && value.matches("\\d{4}-\\d{2}-\\d{2}")) {
            return frame.day(LocalDate.parse(value));
        }
        return value;
    }

    /** {@return a stage with its pest, such as "adult, western flower thrips"} */
    public String stage(String pest, String lifeStage) {
        return frame.stageName(lifeStage) + ", " + pest(pest);
    }

    /** {@return what a pest is called here} */
    public String pest(String code) {
        return pests.find(code).map(frame::pestName).orElse(code);
    }

    /** {@return the stages of some pests, for lists} */
    public static List<String> stageCodes(Pest pest) {
        return pest.lifeStages().stream().map(stage -> stage.code()).toList();
    }

    static String word(Enum<?> constant) {
        return Fields.wordOf(constant);
    }
}
