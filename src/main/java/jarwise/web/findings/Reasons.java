package jarwise.web.findings;

import jarwise.decision.Basis;
import jarwise.decision.Finding;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Figures;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.web.piece.Reason;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was assumed, where it comes from, and what would change the answer. */
public final class Reasons {

    private final Findings findings;
    private final FindingWords say;
    private final Words words;
    private final Figures figures;

    /** Gives the reasons behind findings. */
    public Reasons(Findings findings, FindingWords say) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
        this.figures = say.figures();
    }

    /** {@return every reason, folded} */
    public List<Reason> all() {
        List<Reason> reasons = new ArrayList<>();
        firstRead()
                .ifPresent(
                        finding -> {
                            Basis basis = finding.estimated().orElseThrow().basis();
                            reasons.add(detection(finding, basis));
                            reasons.add(clumping(finding, basis));
                            reasons.add(interval(finding));
                            reasons.add(change());
                        });
        return reasons;
    }

    private Optional<Finding> firstRead() {
        return findings.series().stream()
                .map(Findings.Series::lastRead)
                .filter(finding -> finding.estimated().isPresent())
                .findFirst();
    }

    private Reason detection(Finding finding, Basis basis) {
        String animals = say.animals(finding.subject());
        String efficiency =
                basis.efficiencyMeasured()
                        ? words.say(
                                "why.efficiency",
                                figures.percent(rounded(basis.detection().efficiency().mean())),
                                animals)
                        : words.say("why.efficiency.none");
        String sensitivity =
                basis.sensitivityMeasured()
                        ? words.say(
                                "why.sensitivity",
                                figures.percent(rounded(basis.detection().sensitivity().mean())))
                        : words.say("why.sensitivity.none");
        List<String> more = new ArrayList<>();
        if (basis.fluids().size() > 1 || basis.readers().size() > 1) {
            more.add(words.say("why.mixed"));
        }
        more.add(words.say("why.detection.counted"));
        return new Reason(
                words.say("why.detection.title"),
                efficiency + " " + sensitivity,
                more,
                basis.readers().size() > 1 ? "mixed-readers" : "density");
    }

    private static double rounded(double share) {
        return Math.round(share * 100) / 100.0;
    }

    private Reason clumping(Finding finding, Basis basis) {
        String k = figures.density(basis.prior().medianK());
        String brief =
                basis.historySamples() > 0
                        ? words.say(
                                "why.k.history",
                                k,
                                figures.whole(basis.historySamples()),
                                say.animals(finding.subject()))
                        : words.say("why.k.standard", k);
        return new Reason(
                words.say("why.k.title"), brief, List.of(words.say("why.k.more")), "density");
    }

    private Reason interval(Finding finding) {
        String limit = figures.percent(rounded(findings.rules().limitsOn(finding.day()).above()));
        return new Reason(
                words.say("why.interval.title"),
                words.say("why.interval", limit),
                List.of(words.say("why.interval.more"), words.say("why.zero")),
                "density");
    }

    private Reason change() {
        List<String> lines =
                findings.series().stream()
                        .map(Findings.Series::lastRead)
                        .filter(finding -> findings.lowExtraction().containsKey(finding.stand()))
                        .limit(4)
                        .map(this::changed)
                        .toList();
        String percent = figures.percent(Findings.LOW_EXTRACTION);
        return new Reason(
                words.say("why.change.title"), words.say("why.change", percent), lines, "density");
    }

    private String changed(Finding finding) {
        Finding low =
                java.util.Objects.requireNonNull(findings.lowExtraction().get(finding.stand()));
        return words.say(
                "why.change.line",
                say.shortPlace(finding.stand()),
                figures.interval(FindingWords.interval(low)),
                say.verdict(low),
                figures.interval(FindingWords.interval(finding)),
                say.verdict(finding));
    }
}
