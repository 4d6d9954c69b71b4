package jarwise.web.findings;

import jarwise.decision.Finding.Subject;
import jarwise.pest.Pest;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Scope;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The fields above the answer: what is shown, and what else could be. */
public final class Chooser {

    private final Findings findings;
    private final FindingWords say;
    private final Words words;

    /** Offers what these findings could be of. */
    public Chooser(Findings findings, FindingWords say) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
    }

    FindingsView.Chooser view() {
        Scope scope = findings.scope();
        Findings.Choices choices = findings.choices();
        return new FindingsView.Chooser(
                List.of(
                        stages(scope.subject()),
                        pests(scope.subject()),
                        places("variety", choices.varieties(), scope.variety(), say::variety),
                        places("house", choices.houses(), scope.house(), name -> name),
                        places("bench", choices.benches(), scope.bench(), name -> name)),
                scope.from().toString(),
                scope.to().toString());
    }

    /** {@return the fields that choose the animals} */
    public List<FindingsView.Select> animals() {
        Subject chosen = findings.scope().subject();
        return List.of(stages(chosen), pests(chosen));
    }

    private FindingsView.Select stages(Subject chosen) {
        List<FindingsView.Option> options =
                findings
                        .rules()
                        .pests()
                        .find(chosen.pest())
                        .map(Pest::stageGroups)
                        .orElse(List.of())
                        .stream()
                        .map(
                                group ->
                                        new FindingsView.Option(
                                                group,
                                                say.group(group),
                                                group.equals(chosen.stageGroup())))
                        .toList();
        return new FindingsView.Select("stage", words.say("scope.stage"), options);
    }

    private FindingsView.Select pests(Subject chosen) {
        List<FindingsView.Option> options =
                findings.rules().pests().all().stream()
                        .map(
                                pest ->
                                        new FindingsView.Option(
                                                pest.code(),
                                                say.pest(pest.code()),
                                                pest.code().equals(chosen.pest())))
                        .toList();
        return new FindingsView.Select("pest", words.say("scope.pest"), options);
    }

    private FindingsView.Select places(
            String name, List<String> there, Optional<String> chosen, UnaryOperator<String> text) {
        List<FindingsView.Option> options = new ArrayList<>();
        options.add(
                new FindingsView.Option("", words.say("scope." + name + ".all"), chosen.isEmpty()));
        there.forEach(
                value ->
                        options.add(
                                new FindingsView.Option(
                                        value,
                                        text.apply(value),
                                        chosen.equals(Optional.of(value)))));
        return new FindingsView.Select(name, words.say("scope." + name), options);
    }
}
