package jarwise.usecase.map;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Rounds;
import jarwise.usecase.findings.Scope;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Findings of many rounds, cut down to one of them. */
final class RoundAlone {

    private RoundAlone() {}

    /**
     * Cuts findings down.
     *
     * @param day the round
     * @param end its last day, on which the line is looked up
     * @param bare what stood there on that day and was not sampled
     * @return the same findings, of one round; none of them changed
     */
    static Findings of(Findings all, LocalDate day, LocalDate end, List<Stand> bare) {
        List<Findings.Series> series =
                all.series().stream()
                        .flatMap(one -> ofDay(one, day).stream())
                        .sorted(
                                Comparator.comparing(
                                        Findings.Series::last, ShowFindings.URGENT_FIRST))
                        .toList();
        return new Findings(
                upTo(all.scope(), end),
                all.rules(),
                all.choices(),
                new Rounds(series.isEmpty() ? List.of() : List.of(day), all.rounds().weeks()),
                series,
                bare,
                List.of(),
                all.targeted().stream().filter(one -> isOf(all, one, day)).toList(),
                lowExtraction(all, day));
    }

    private static Scope upTo(Scope scope, LocalDate end) {
        LocalDate from = end.isBefore(scope.from()) ? end : scope.from();
        return new Scope(scope.subject(), scope.variety(), scope.house(), scope.bench(), from, end);
    }

    private static Optional<Findings.Series> ofDay(Findings.Series one, LocalDate day) {
        List<Finding> there =
                one.rounds().stream().filter(finding -> finding.day().equals(day)).toList();
        return there.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Findings.Series(one.stand(), there, one.taps(), one.treatments()));
    }

    private static boolean isOf(Findings all, Findings.Targeted one, LocalDate day) {
        return one.sample()
                .collectedOn()
                .map(cut -> all.rounds().of(cut).equals(day))
                .orElse(false);
    }

    /** It was worked out for the newest round of each stand only. */
    private static Map<Stand, Finding> lowExtraction(Findings all, LocalDate day) {
        Set<Stand> newest =
                all.series().stream()
                        .filter(one -> one.lastRead().day().equals(day))
                        .map(Findings.Series::stand)
                        .collect(Collectors.toSet());
        return all.lowExtraction().entrySet().stream()
                .filter(entry -> newest.contains(entry.getKey()))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }
}
