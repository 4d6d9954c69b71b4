package jarwise.render.finding;

import jarwise.decision.Evidence;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Judgement;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.pest.Pests;
import jarwise.render.words.Figures;
import jarwise.render.words.Interval;
import jarwise.render.words.Words;
import jarwise.stats.estimate.DensityEstimate;
import java.util.List;
import java.util.Optional;

/**
 * What a finding says, in one language.
 *
 * @param words the language
 * @param pests names of what can be counted
 */
public record FindingWords(Words words, Pests pests) {

    /** {@return numbers in this language} */
    public Figures figures() {
        return Figures.of(words.language());
    }

    /** {@return "western flower thrips": the shipped name translated, else the user's own} */
    public String pest(String code) {
        String key = "pest." + code.toLowerCase(java.util.Locale.ROOT);
        return words.has(key)
                ? words.say(key)
                : pests.find(code).map(pest -> pest.commonName()).orElse(code);
    }

    /** {@return "larvae"} */
    public String animals(Subject subject) {
        return group(subject.stageGroup());
    }

    /** {@return the name of a stage group, in the plural: "larvae"} */
    public String group(String stageGroup) {
        String key = "stage-group." + stageGroup;
        return words.has(key) ? words.say(key) : stageGroup;
    }

    /** {@return the name of one life stage: "first-stage larva"} */
    public String stage(String lifeStage) {
        String key = "stage." + lifeStage;
        return words.has(key) ? words.say(key) : lifeStage;
    }

    /** {@return "larvae of western flower thrips"} */
    public String subject(Subject subject) {
        return words.say("finding.subject", animals(subject), pest(subject.pest()));
    }

    /** {@return "10 larvae", "1 larva", "0 larvae"} */
    public String counted(Subject subject, long individuals) {
        String key = "stage-group." + subject.stageGroup() + ".count";
        return words.has(key)
                ? figures().counted(key, individuals)
                : words.say("finding.counted", figures().whole(individuals), animals(subject));
    }

    /** {@return a sentence's first letter in upper case} */
    public String start(String text) {
        return text.isEmpty()
                ? text
                : text.substring(0, 1).toUpperCase(words.language().locale()) + text.substring(1);
    }

    /** {@return "‘Rubia Tarn’, P1-B3", as far as it is known} */
    public String place(Stand stand) {
        if (stand.unknown()) {
            return words.say("place.unknown");
        }
        Optional<String> variety = stand.variety().map(this::variety);
        if (stand.bench().isEmpty() || variety.isEmpty()) {
            return variety.or(stand::bench).orElseThrow();
        }
        return words.say("place.both", variety.get(), stand.bench().get());
    }

    /** {@return "P1-B3", or the variety where no bench is known} */
    public String shortPlace(Stand stand) {
        return stand.bench().orElseGet(() -> place(stand));
    }

    /** {@return "‘Rubia Tarn’": a cultivar stands in single quotes in every language (ICNCP)} */
    public String variety(String name) {
        return "‘" + name + "’";
    }

    /** {@return "P1-B3, P1-B4 and H2-B6"} */
    public String list(List<String> items) {
        if (items.isEmpty()) {
            return "";
        }
        if (items.size() == 1) {
            return items.get(0);
        }
        int last = items.size() - 1;
        return words.say("list.last", String.join(", ", items.subList(0, last)), items.get(last));
    }

    /** {@return what strips and trends draw} */
    public static Interval interval(Finding finding) {
        if (finding.estimated().isEmpty()) {
            return finding.notRead() ? new Interval.NotRead() : new Interval.NotSampled();
        }
        DensityEstimate density = finding.estimated().get().density();
        return density.individuals() == 0
                ? new Interval.NoneFound(density.upper())
                : new Interval.Found(density.estimate(), density.lower(), density.upper());
    }

    /** {@return what strips draw against each row's own line, which is 1} */
    public static Interval relative(Finding finding, double line) {
        Interval interval = interval(finding);
        if (interval instanceof Interval.Found found) {
            return new Interval.Found(
                    found.estimate() / line, found.lower() / line, divided(found.upper(), line));
        }
        return interval instanceof Interval.NoneFound none
                ? new Interval.NoneFound(divided(none.upper(), line))
                : interval;
    }

    private static java.util.OptionalDouble divided(java.util.OptionalDouble value, double line) {
        return value.isPresent() ? java.util.OptionalDouble.of(value.getAsDouble() / line) : value;
    }

    /** {@return "about 1 in 3", "none in 8 jars", "3 jars cut", "no jars"} */
    public String inWords(Finding finding) {
        if (finding.estimated().isEmpty()) {
            return finding.notRead()
                    ? words.say("finding.cut", figures().jars(finding.evidence().notRead()))
                    : figures().jars(0);
        }
        return finding.noneFound()
                ? figures().noneIn(finding.evidence().samples())
                : figures().about(finding.estimated().get().density().estimate());
    }

    /** {@return "0.31 (0.13 to 0.86)", "fewer than 1 in 12 (0.08)", "not read yet"} */
    public String inFigures(Finding finding) {
        Interval interval = interval(finding);
        if (interval instanceof Interval.NoneFound none && none.upper().isPresent()) {
            double upper = none.upper().getAsDouble();
            return words.say("finding.bound", figures().fewerThan(upper), figures().upper(upper));
        }
        return figures().interval(interval);
    }

    /** {@return "in 6 jars"} */
    public String inJars(Evidence evidence) {
        return words.say("finding.in", figures().jars(evidence.samples()));
    }

    /** {@return "above the line", "not read yet", "no line set"} */
    public String verdict(Finding finding) {
        if (finding.estimated().isEmpty()) {
            return words.say(finding.notRead() ? "figure.not-read" : "figure.not-sampled");
        }
        return words.say(finding.verdict().map(FindingWords::key).orElse("verdict.none"));
    }

    /** {@return the key of a verdict's words} */
    public static String key(Verdict verdict) {
        return switch (verdict) {
            case BELOW_THE_LINE -> "verdict.below";
            case ABOVE_THE_LINE -> "verdict.above";
            case CANNOT_TELL -> "verdict.cannot-tell";
        };
    }

    /** {@return "99 % sure", "20 more jars": how firm the verdict is, or what would make it so} */
    public String firmness(Finding finding) {
        if (finding.judgement().isEmpty()) {
            return "";
        }
        Judgement judgement = finding.judgement().get();
        return judgement.verdict() == Verdict.CANNOT_TELL
                ? moreJars(judgement)
                : figures().sure(judgement.certainty());
    }

    /** {@return "20 more jars", or that more would be needed than anybody cuts} */
    public String moreJars(Judgement judgement) {
        return judgement.moreSamples().isPresent()
                ? figures().counted("finding.more-jars", judgement.moreSamples().getAsInt())
                : words.say("finding.too-many");
    }

    /** {@return one line that holds every value: for tooltips and for those who do not see} */
    public String tip(Finding finding) {
        String place = place(finding.stand());
        if (finding.estimated().isEmpty()) {
            return words.say("finding.tip.blank", place, verdict(finding));
        }
        return words.say(
                "finding.tip",
                place,
                figures().interval(interval(finding)),
                counted(finding.subject(), finding.evidence().individuals()),
                figures().jars(finding.evidence().samples()));
    }
}
