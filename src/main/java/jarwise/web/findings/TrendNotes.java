package jarwise.web.findings;

import jarwise.decision.Evidence;
import jarwise.decision.Evidence.Flag;
import jarwise.decision.Evidence.LeftOut;
import jarwise.decision.Finding;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.web.piece.Notes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Notes beside the trend: how to read it, taps against jars, what was not to protocol. */
final class TrendNotes {

    private final Findings findings;
    private final FindingWords say;
    private final Words words;

    TrendNotes(Findings findings, FindingWords say) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
    }

    Notes notes() {
        List<Notes.Note> notes = new ArrayList<>();
        notes.add(
                new Notes.Note(
                        words.say("notes.read.title"),
                        List.of(
                                words.say("notes.read.strip"),
                                words.say("notes.read.between"),
                                words.say("notes.read.dotted"))));
        taps().ifPresent(text -> notes.add(Notes.Note.of(words.say("notes.taps.title"), text)));
        List<String> flags = flags();
        if (!flags.isEmpty()) {
            notes.add(new Notes.Note(words.say("notes.flags.title"), flags));
        }
        return Notes.of(notes);
    }

    private Optional<String> taps() {
        if (findings.series().stream().allMatch(one -> one.taps().isEmpty())) {
            return Optional.empty();
        }
        Days days = new Days(words);
        String animals = say.animals(findings.scope().subject());
        Optional<LocalDate> jars =
                findings.series().stream()
                        .flatMap(one -> one.rounds().stream())
                        .filter(finding -> finding.evidence().individuals() > 0)
                        .map(Finding::day)
                        .min(LocalDate::compareTo);
        Optional<LocalDate> taps =
                findings.series().stream()
                        .flatMap(one -> one.taps().entrySet().stream())
                        .filter(entry -> entry.getValue().individuals() > 0)
                        .map(Map.Entry::getKey)
                        .min(LocalDate::compareTo);
        String none = words.say("notes.taps.never");
        return Optional.of(
                words.say(
                        "notes.taps.first",
                        animals,
                        jars.map(days::dayMonth).orElse(none),
                        taps.map(days::dayMonth).orElse(none)));
    }

    private List<String> flags() {
        List<String> lines = new ArrayList<>();
        Days days = new Days(words);
        findings.evidence()
                .forEach(
                        (day, there) -> {
                            List<String> said = new ArrayList<>();
                            for (LeftOut reason : LeftOut.values()) {
                                add(said, "left-out." + reason, sum(there, reason));
                            }
                            for (Flag flag : Flag.values()) {
                                add(said, "flag." + flag, sum(there, flag));
                            }
                            if (!said.isEmpty()) {
                                lines.add(
                                        words.say(
                                                "notes.flags.day",
                                                days.dayMonth(day),
                                                String.join("; ", said)));
                            }
                        });
        return lines;
    }

    private void add(List<String> said, String key, int number) {
        if (number > 0) {
            said.add(
                    say.figures()
                            .counted(
                                    key.toLowerCase(java.util.Locale.ROOT).replace('_', '-'),
                                    number));
        }
    }

    private static int sum(List<Evidence> there, LeftOut reason) {
        return there.stream().mapToInt(e -> e.leftOut().getOrDefault(reason, 0)).sum();
    }

    private static int sum(List<Evidence> there, Flag flag) {
        return there.stream().mapToInt(e -> e.flags().getOrDefault(flag, 0)).sum();
    }
}
