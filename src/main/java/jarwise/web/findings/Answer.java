package jarwise.web.findings;

import jarwise.decision.ActionThreshold;
import jarwise.decision.Finding;
import jarwise.decision.Verdict;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The answer of Findings in a sentence, and the figures behind it. */
public final class Answer {

    /** More places than this are a number, not a list. */
    private static final int MOST_NAMES = 3;

    private final Findings findings;
    private final FindingWords say;
    private final Words words;

    /** Says what is known. */
    public Answer(Findings findings, FindingWords say) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
    }

    /** {@return "Larvae on ‘Rubia Tarn’ are below the line on P1-B3. On P1-B4 …"} */
    public String sentence() {
        if (findings.series().stream().noneMatch(one -> one.lastRead().estimated().isPresent())) {
            String key = findings.sampled() ? "findings.answer.unread" : "findings.answer.none";
            return words.say(key, say.subject(findings.scope().subject()));
        }
        List<Finding> above = with(Verdict.ABOVE_THE_LINE);
        List<Finding> open = with(Verdict.CANNOT_TELL);
        List<Finding> below = with(Verdict.BELOW_THE_LINE);
        List<String> sentences = new ArrayList<>();
        part(sentences, "above", above);
        part(sentences, "below", below);
        open(sentences, open);
        if (sentences.isEmpty()) {
            sentences.add(words.say("findings.answer.no-line", subjectHere()));
        }
        return String.join(" ", sentences);
    }

    private void part(List<String> sentences, String which, List<Finding> there) {
        if (!there.isEmpty()) {
            String key = "findings.answer." + (sentences.isEmpty() ? "" : "more.") + which;
            sentences.add(words.say(key, subjectHere(), places(there)));
        }
    }

    private void open(List<String> sentences, List<Finding> open) {
        if (open.isEmpty()) {
            return;
        }
        String start = sentences.isEmpty() ? "findings.answer." : "findings.answer.more.";
        if (open.size() == 1 && open.get(0).judgement().orElseThrow().moreSamples().isPresent()) {
            String jars = say.moreJars(open.get(0).judgement().orElseThrow());
            sentences.add(words.say(start + "open.jars", subjectHere(), places(open), jars));
        } else {
            sentences.add(words.say(start + "open", subjectHere(), places(open)));
        }
    }

    private List<Finding> with(Verdict verdict) {
        return findings.series().stream()
                .map(Findings.Series::lastRead)
                .filter(finding -> finding.verdict().equals(Optional.of(verdict)))
                .toList();
    }

    private String subjectHere() {
        String animals = say.start(say.animals(findings.scope().subject()));
        return findings.scope()
                .variety()
                .map(name -> words.say("findings.answer.on", animals, say.variety(name)))
                .orElse(animals);
    }

    private String places(List<Finding> there) {
        if (there.size() > MOST_NAMES) {
            return say.figures().counted("findings.benches", there.size());
        }
        return say.list(there.stream().map(finding -> say.shortPlace(finding.stand())).toList());
    }

    /** {@return the two most urgent places in figures, and the line} */
    public String lead() {
        List<String> sentences = new ArrayList<>();
        findings.series().stream()
                .map(Findings.Series::lastRead)
                .filter(finding -> finding.estimated().isPresent())
                .limit(2)
                .forEach(finding -> sentences.add(about(finding)));
        findings.rules()
                .lineOn(findings.scope().subject(), findings.scope().to())
                .map(ActionThreshold::density)
                .ifPresent(
                        line ->
                                sentences.add(
                                        words.say(
                                                "findings.lead.line",
                                                say.figures().exactly(line))));
        return String.join(" ", sentences);
    }

    private String about(Finding finding) {
        Figures figures = say.figures();
        String day = new Days(words).dayMonth(finding.day());
        String place = say.shortPlace(finding.stand());
        String jars = figures.jars(finding.evidence().samples());
        OptionalDouble upper = finding.estimated().orElseThrow().density().upper();
        if (finding.noneFound()) {
            return upper.isPresent()
                    ? words.say(
                            "findings.lead.zero",
                            day,
                            place,
                            jars,
                            figures.fewerThan(upper.getAsDouble()))
                    : words.say("findings.lead.zero.open", day, place, jars);
        }
        String about = figures.about(finding.estimated().get().density().estimate());
        return upper.isPresent()
                ? words.say(
                        "findings.lead.found", day, place, about, figures.upTo(upper.getAsDouble()))
                : words.say("findings.lead.found.open", day, place, about);
    }
}
