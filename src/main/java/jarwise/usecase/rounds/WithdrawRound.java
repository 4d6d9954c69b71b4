package jarwise.usecase.rounds;

import jarwise.base.Message;
import jarwise.plan.PlannedJar;
import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.plan.Withdrawal;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.RoundStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Withdraws a round, with a reason. Jars that are cut already stay; the others are discarded, with
 * the same reason, and are no longer planned for the day.
 */
public final class WithdrawRound {

    private final Database database;
    private final ShowRounds rounds;
    private final RoundPlanStore plans;
    private final RoundStore planned;
    private final EventStore events;
    private final InstantSource clock;

    /** Withdraws from this database. */
    public WithdrawRound(Database database, InstantSource clock) {
        this.database = database;
        this.rounds = new ShowRounds(database);
        this.plans = new RoundPlanStore(database);
        this.planned = new RoundStore(database);
        this.events = new EventStore(database);
        this.clock = clock;
    }

    /**
     * Withdraws.
     *
     * @param nursery slug of the site
     * @param id name of the round
     * @param person who is at the screen
     * @param fields {@code reason}
     * @throws jarwise.usecase.form.FormRefused if no reason is given or it was withdrawn before
     */
    public void run(String nursery, String id, String person, Fields fields) {
        String reason = fields.needed("reason");
        database.inOneTransaction(
                () -> {
                    events.holdOthersBack();
                    Optional<ShowRounds.Shown> shown = rounds.find(nursery, id);
                    if (shown.isEmpty() || shown.get().withdrawal().isPresent()) {
                        fields.fault("reason", Message.of("rounds.one.withdraw.gone"));
                    }
                    fields.refuseIfAny();
                    Instant now = clock.instant();
                    plans.withdraw(nursery, id, new Withdrawal(now, person, reason));
                    List<PlannedJar> uncut = uncut(shown.orElseThrow());
                    discard(nursery, uncut, person, reason, now);
                    stops(shown.orElseThrow().plan(), uncut)
                            .ifPresent(less -> planned.takeFrom(nursery, less));
                    return id;
                });
    }

    private static List<PlannedJar> uncut(ShowRounds.Shown shown) {
        return shown.plan().jars().stream()
                .filter(
                        jar -> {
                            CollectedSample known = shown.jars().get(jar.code());
                            return known != null && known.state() == SampleState.PLANNED;
                        })
                .toList();
    }

    private void discard(
            String nursery, List<PlannedJar> jars, String person, String reason, Instant now) {
        String device = "desk-" + nursery;
        long sequence = events.lastSequence(device);
        List<SampleEvent> discarded = new ArrayList<>();
        for (PlannedJar jar : jars) {
            discarded.add(
                    new SampleEvent(
                            new EventId(device, ++sequence),
                            jar.code(),
                            now,
                            person,
                            Optional.empty(),
                            new Deed.StepTaken(
                                    Step.DISCARDED,
                                    Map.of(),
                                    Optional.empty(),
                                    Optional.of(reason))));
        }
        events.append(nursery, discarded);
    }

    private static Optional<Round> stops(RoundPlan plan, List<PlannedJar> uncut) {
        return RegisterRound.stops(plan.day(), plan.method(), uncut);
    }
}
