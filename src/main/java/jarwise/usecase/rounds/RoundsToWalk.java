package jarwise.usecase.rounds;

import jarwise.plan.PlannedJar;
import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleState;
import jarwise.store.Database;
import jarwise.store.work.RoundStore;
import jarwise.usecase.findings.Today.Due;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds the rounds that are still to be walked, with and without labels. */
public final class RoundsToWalk {

    private final RoundStore planned;
    private final ShowRounds rounds;

    public RoundsToWalk(Database database) {
        this.planned = new RoundStore(database);
        this.rounds = new ShowRounds(database);
    }

    /** {@return what is to walk on the days {@code from} to {@code to}, by day, then name} */
    public List<Due.Walk> run(String nursery, LocalDate from, LocalDate to) {
        List<ShowRounds.Shown> labelled = rounds.run(nursery, from, to);
        List<Due.Walk> walks = new ArrayList<>();
        labelled.stream()
                .filter(shown -> shown.withdrawal().isEmpty())
                .forEach(shown -> toCut(shown).ifPresent(walks::add));
        planned.rounds(nursery, from, to).stream()
                .filter(round -> labelled.stream().noneMatch(shown -> counts(round, shown.plan())))
                .forEach(round -> walks.add(new Due.Walk(round, Optional.empty())));
        walks.sort(
                Comparator.comparing((Due.Walk walk) -> walk.round().day())
                        .thenComparing(walk -> walk.name().orElse("")));
        return walks;
    }

    /** What is planned for a day counts the jars with labels of that day, too. */
    private static boolean counts(Round round, RoundPlan plan) {
        return plan.day().equals(round.day()) && plan.method() == round.method();
    }

    private static Optional<Due.Walk> toCut(ShowRounds.Shown shown) {
        RoundPlan plan = shown.plan();
        List<PlannedJar> open =
                plan.jars().stream()
                        .filter(jar -> isPlanned(shown.jars().get(jar.code())))
                        .toList();
        return RegisterRound.stops(plan.day(), plan.method(), open)
                .map(round -> new Due.Walk(round, Optional.of(plan.id())));
    }

    private static boolean isPlanned(@Nullable CollectedSample jar) {
        return jar != null && jar.state() == SampleState.PLANNED;
    }
}
