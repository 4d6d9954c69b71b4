package jarwise.usecase.letter;

import jarwise.decision.Finding;
import jarwise.decision.Judgement;
import jarwise.decision.Verdict;
import jarwise.render.finding.FindingWords;
import jarwise.render.report.Letter;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Places of the letter: what was found, the verdict, what to do by when.
 *
 * @param say the language
 * @param nextRound the next planned round; empty where none is planned
 */
public record LetterRows(FindingWords say, Optional<LocalDate> nextRound) {

    /** {@return one row a place, in the order given} */
    public List<Letter.Row> rows(List<Finding> findings) {
        return findings.stream().map(this::row).toList();
    }

    private Letter.Row row(Finding finding) {
        return new Letter.Row(
                say.place(finding.stand()),
                found(finding),
                FindingWords.interval(finding),
                finding.verdict(),
                sure(finding),
                deed(finding),
                until(finding));
    }

    private String found(Finding finding) {
        if (finding.estimated().isEmpty() || finding.noneFound()) {
            return finding.noneFound()
                    ? words().say("letter.none", say.inWords(finding), bound(finding))
                    : say.inWords(finding);
        }
        return words().say(
                        "letter.found",
                        say.counted(finding.subject(), finding.evidence().individuals()),
                        say.inJars(finding.evidence()),
                        say.inWords(finding));
    }

    private String bound(Finding finding) {
        var upper = finding.estimated().orElseThrow().density().upper();
        return upper.isPresent()
                ? say.figures().fewerThan(upper.getAsDouble())
                : words().say("figure.no-bound");
    }

    private String sure(Finding finding) {
        return finding.judgement()
                .map(
                        judgement ->
                                judgement.verdict() == Verdict.CANNOT_TELL
                                        ? say.figures().likelyAbove(judgement.probabilityAbove())
                                        : say.figures().sure(judgement.certainty()))
                .orElse("");
    }

    private String deed(Finding finding) {
        if (finding.judgement().isEmpty()) {
            return words().say(finding.notRead() ? "letter.deed.read" : "letter.deed.none");
        }
        Judgement judgement = finding.judgement().get();
        return switch (judgement.verdict()) {
            case ABOVE_THE_LINE -> words().say("letter.deed.decide");
            case CANNOT_TELL ->
                    judgement.moreSamples().isPresent()
                            ? say.moreJars(judgement)
                            : words().say("letter.deed.watch");
            case BELOW_THE_LINE -> words().say("letter.deed.nothing");
        };
    }

    private String until(Finding finding) {
        if (finding.verdict().equals(Optional.of(Verdict.ABOVE_THE_LINE))) {
            return words().say("letter.until.today");
        }
        return nextRound
                .map(day -> new Days(words()).weekday(day))
                .orElseGet(() -> words().say("letter.until.next"));
    }

    /** {@return what to do, in at most three sentences a grower could read aloud} */
    public String answer(List<Finding> findings) {
        List<String> sentences = new ArrayList<>();
        List<Finding> above = with(findings, Verdict.ABOVE_THE_LINE);
        if (!above.isEmpty()) {
            sentences.add(words().say("letter.answer.decide", places(above)));
        }
        with(findings, Verdict.CANNOT_TELL).stream()
                .filter(finding -> finding.judgement().orElseThrow().moreSamples().isPresent())
                .findFirst()
                .ifPresent(
                        finding ->
                                sentences.add(
                                        words().say(
                                                        "letter.answer.jars",
                                                        say.moreJars(
                                                                finding.judgement().orElseThrow()),
                                                        say.place(finding.stand()))));
        List<Finding> below = with(findings, Verdict.BELOW_THE_LINE);
        if (!below.isEmpty()) {
            sentences.add(words().say("letter.answer.below", places(below)));
        }
        return sentences.isEmpty()
                ? words().say("letter.answer.open")
                : String.join(" ", sentences);
    }

    private String places(List<Finding> findings) {
        List<String> names = findings.stream().map(finding -> say.place(finding.stand())).toList();
        return names.size() > 3
                ? say.figures().counted("findings.benches", names.size())
                : String.join("; ", names);
    }

    private static List<Finding> with(List<Finding> findings, Verdict verdict) {
        return findings.stream()
                .filter(finding -> finding.verdict().equals(Optional.of(verdict)))
                .toList();
    }

    private Words words() {
        return say.words();
    }
}
