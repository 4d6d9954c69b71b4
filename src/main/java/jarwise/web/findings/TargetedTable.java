package jarwise.web.findings;

import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.web.piece.Table;
import java.util.List;
import java.util.Optional;

/**
 * Targeted samples in a table of their own, since they enter no mean.
 *
 * @param findings what is shown
 * @param say names
 */
public record TargetedTable(Findings findings, FindingWords say) {

    /** {@return the table; empty where there are none} */
    public Optional<FindingsView.Targeted> table() {
        if (findings.targeted().isEmpty()) {
            return Optional.empty();
        }
        Words words = say.words();
        List<List<String>> rows = findings.targeted().stream().map(this::row).toList();
        List<String> head =
                List.of(
                        words.say("findings.targeted.sample"),
                        words.say("findings.table.day"),
                        words.say("strips.bench"),
                        words.say("strips.found"));
        return Optional.of(
                new FindingsView.Targeted(
                        say.figures().counted("findings.targeted.sub", rows.size()),
                        new Table(words.say("findings.targeted.title"), head, rows)));
    }

    private List<String> row(Findings.Targeted one) {
        Words words = say.words();
        return List.of(
                one.sample().code().text(),
                one.sample().collectedOn().map(new Days(words)::dated).orElse("–"),
                one.sample().place().bench().orElse("–"),
                one.individuals()
                        .map(n -> say.counted(findings.scope().subject(), n))
                        .orElse(words.say("figure.not-read")));
    }
}
