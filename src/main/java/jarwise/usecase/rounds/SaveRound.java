package jarwise.usecase.rounds;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.sample.LabelCode;
import jarwise.sample.SampleCode;
import jarwise.sample.SamplingMethod;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.usecase.planning.JarPlace;
import jarwise.usecase.planning.PlanRequest;
import jarwise.usecase.planning.PlannedRound;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;

/** Saves a planned round: gives it a name and its jars their codes, and registers it. */
public final class SaveRound {

    private static final Set<String> NOT_NUMBERS = Set.of("form_token", "sent");

    private final Database database;
    private final RoundPlanStore plans;
    private final EventStore events;
    private final RegisterRound register;
    private final InstantSource clock;
    private final IntUnaryOperator below;

    /**
     * Saves into this database.
     *
     * @param database where rounds are kept
     * @param clock what time it is
     * @param below draws a whole number from 0 up to its argument less one, for the codes
     */
    public SaveRound(Database database, InstantSource clock, IntUnaryOperator below) {
        this.database = database;
        this.plans = new RoundPlanStore(database);
        this.events = new EventStore(database);
        this.register = new RegisterRound(database);
        this.clock = clock;
        this.below = below;
    }

    /**
     * Saves. The same form sent twice is one round.
     *
     * @param nursery slug of the site
     * @param planned the round
     * @param person who is at the screen
     * @return its name
     * @throws Refused if something stands in its way
     */
    public String run(String nursery, PlannedRound planned, String person) {
        if (!planned.mayBeRegistered()) {
            throw new Refused(Message.of("plan.fault.blocked"));
        }
        PlanRequest request = planned.request().orElseThrow();
        Map<String, String> numbers = numbers(planned);
        return database.inOneTransaction(
                () -> {
                    events.holdOthersBack();
                    List<RoundPlan> sameDay = plans.plans(nursery, request.day(), request.day());
                    Set<String> withdrawn = plans.withdrawals(nursery).keySet();
                    Optional<RoundPlan> sentBefore =
                            sameDay.stream()
                                    .filter(plan -> plan.numbers().equals(numbers))
                                    .filter(plan -> !withdrawn.contains(plan.id()))
                                    .findFirst();
                    if (sentBefore.isPresent()) {
                        return sentBefore.get().id();
                    }
                    Instant now = clock.instant();
                    RoundPlan plan =
                            new RoundPlan(
                                    id(request.day(), sameDay.size()),
                                    request.day(),
                                    SamplingMethod.WASH,
                                    planned.question(),
                                    request.seed(),
                                    numbers,
                                    jars(nursery, planned.places(), request),
                                    person,
                                    now);
                    register.run(nursery, plan);
                    return plan.id();
                });
    }

    /** Days have few rounds; after the 26th the letters double. */
    static String id(LocalDate day, int before) {
        String letter = String.valueOf((char) ('a' + before % 26));
        return day + "-" + letter.repeat(1 + before / 26);
    }

    /** What was asked and what was taken for granted, so that the result can be held against it. */
    private static Map<String, String> numbers(PlannedRound planned) {
        Map<String, String> numbers = new TreeMap<>();
        planned.habits().forEach((name, habit) -> numbers.put(name, habit.value()));
        planned.typed()
                .forEach(
                        (name, value) -> {
                            if (!value.isBlank() && !NOT_NUMBERS.contains(name)) {
                                numbers.put(name, value);
                            }
                        });
        numbers.put("subject", planned.subject().pest() + "/" + planned.subject().stageGroup());
        planned.request().ifPresent(request -> numbers.put("seed", String.valueOf(request.seed())));
        return numbers;
    }

    private List<PlannedJar> jars(String nursery, List<JarPlace> places, PlanRequest request) {
        Set<SampleCode> drawn = new HashSet<>();
        List<PlannedJar> jars = new ArrayList<>();
        for (JarPlace place : places) {
            jars.add(
                    new PlannedJar(
                            code(nursery, drawn),
                            jars.size() + 1,
                            place.stand().map(stand -> stand.house().code()).orElse(""),
                            place.stand().map(stand -> stand.bench().code()).orElse(""),
                            place.stand().map(stand -> stand.lot().code()),
                            place.stand().map(stand -> stand.lot().variety()),
                            place.purpose(),
                            place.role(),
                            place.spot(),
                            place.stand()
                                    .map(stand -> request.assumed().growingPoints())
                                    .orElse(0)));
        }
        return jars;
    }

    /** A code that no other sample of the site has. */
    private SampleCode code(String nursery, Set<SampleCode> drawn) {
        while (true) {
            SampleCode code = LabelCode.next(below).sampleCode();
            if (events.fold(nursery, code).isEmpty() && drawn.add(code)) {
                return code;
            }
        }
    }
}
