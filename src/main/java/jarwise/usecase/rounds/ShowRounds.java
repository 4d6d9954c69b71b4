package jarwise.usecase.rounds;

import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.Withdrawal;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.store.Database;
import jarwise.store.SampleStore;
import jarwise.store.work.RoundPlanStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Shows rounds with where their jars stand. */
public final class ShowRounds {

    private final RoundPlanStore plans;
    private final SampleStore samples;

    public ShowRounds(Database database) {
        this.plans = new RoundPlanStore(database);
        this.samples = new SampleStore(database);
    }

    /**
     * A round and where its jars stand.
     *
     * @param plan what was planned
     * @param jars what is known of each jar, in the order of the walk
     * @param withdrawal that it is not walked, where that was said
     */
    public record Shown(
            RoundPlan plan,
            Map<SampleCode, CollectedSample> jars,
            Optional<Withdrawal> withdrawal) {

        /** {@return where the round stands} */
        public RoundState state() {
            return RoundState.of(List.copyOf(jars.values()));
        }
    }

    /** {@return the round of this name} */
    public Optional<Shown> find(String nursery, String id) {
        return plans.find(nursery, id)
                .map(plan -> shown(plan, jars(nursery, List.of(plan)), plans.withdrawals(nursery)));
    }

    /** {@return rounds of the days {@code from} to {@code to}, the latest first} */
    public List<Shown> run(String nursery, LocalDate from, LocalDate to) {
        Map<String, Withdrawal> withdrawals = plans.withdrawals(nursery);
        List<RoundPlan> there = plans.plans(nursery, from, to);
        Map<SampleCode, CollectedSample> known = jars(nursery, there);
        List<Shown> all = new ArrayList<>();
        there.forEach(plan -> all.add(shown(plan, known, withdrawals)));
        all.sort(
                Comparator.comparing((Shown shown) -> shown.plan().day())
                        .thenComparing(shown -> shown.plan().id())
                        .reversed());
        return List.copyOf(all);
    }

    private static Shown shown(
            RoundPlan plan,
            Map<SampleCode, CollectedSample> known,
            Map<String, Withdrawal> withdrawals) {
        Map<SampleCode, CollectedSample> jars = new LinkedHashMap<>();
        for (PlannedJar jar : plan.jars()) {
            CollectedSample sample = known.get(jar.code());
            if (sample != null) {
                jars.put(jar.code(), sample);
            }
        }
        return new Shown(plan, jars, Optional.ofNullable(withdrawals.get(plan.id())));
    }

    /** All jars of all rounds in one question. */
    private Map<SampleCode, CollectedSample> jars(String nursery, List<RoundPlan> rounds) {
        return samples.find(
                nursery,
                rounds.stream()
                        .flatMap(plan -> plan.jars().stream())
                        .map(PlannedJar::code)
                        .toList());
    }
}
