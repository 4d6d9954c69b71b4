package jarwise.usecase.demo.day;

import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.Stand;
import jarwise.usecase.demo.WorkWeek;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** One round on the floor: labels, the walk, the wash bench, the freezer. */
final class JarRound {

    private static final Duration BETWEEN_BENCHES = Duration.ofMinutes(4);
    private static final Duration A_JAR = Duration.ofSeconds(90);
    private static final Duration WASH_TO_FREEZER = Duration.ofMinutes(20);
    private static final Diary.Hand LABELS = new Diary.Hand(Cast.DESK, Cast.READER_A);
    private static final Diary.Hand WALK = new Diary.Hand(Cast.PHONE_A, Cast.READER_A);
    private static final Diary.Hand WASH = new Diary.Hand(Cast.PHONE_B, Cast.READER_B);

    private final Diary diary;
    private final Codes codes;
    private final WorkWeek week;
    private final List<Jar> jars = new ArrayList<>();
    private final Map<Jar, EventId> cuts = new HashMap<>();
    private final Map<Jar, EventId> frozen = new HashMap<>();
    private final Map<Jar, Instant> cutTimes = new HashMap<>();

    JarRound(Diary diary, Codes codes, int round) {
        this.diary = diary;
        this.codes = codes;
        this.week = new WorkWeek(round);
        addJars();
    }

    /** {@return all jars of the round, in the order in which they are washed} */
    List<Jar> jars() {
        return List.copyOf(jars);
    }

    private void addJars() {
        int round = week.round();
        for (Stand stand : Stand.all()) {
            for (int number = 1; number <= stand.jars(round); number++) {
                add(stand, number, SampleRole.CROP, Purpose.RANDOM);
            }
        }
        if (round == 7) {
            add(Stand.on("H3-B2"), 4, SampleRole.CROP, Purpose.TARGETED);
        }
        if (round == 9) {
            add(Stand.atTheDoorOfP1(), 1, SampleRole.CROP, Purpose.TARGETED);
        }
        if (Checks.spiked(round)) {
            add(Stand.on("P1-B3"), 1, SampleRole.SPIKE, Purpose.TARGETED);
        }
        add(Stand.on("P1-B3"), 1, SampleRole.BLANK, Purpose.TARGETED);
    }

    private void add(Stand stand, int number, SampleRole role, Purpose purpose) {
        int round = week.round();
        Instant washed = week.washed(jars.size());
        Jar jar =
                new Jar(
                        codes.of("jar", round, stand.bench(), number, role, purpose),
                        round,
                        stand,
                        number,
                        role,
                        purpose,
                        washed,
                        washed.plus(WASH_TO_FREEZER));
        jars.add(PlantedFaults.readEarly(jar) ? washedInTheAfternoon(jar) : jar);
    }

    /** Forgotten in the morning: at nine the next day it has been frozen for 18 hours only. */
    private Jar washedInTheAfternoon(Jar jar) {
        Instant washed = WorkWeek.at(week.cutOn(), 14, 40);
        return new Jar(
                jar.code(),
                jar.round(),
                jar.stand(),
                jar.number(),
                jar.role(),
                jar.purpose(),
                washed,
                washed.plus(WASH_TO_FREEZER));
    }

    void printLabels() {
        for (Jar jar : jars) {
            Map<String, String> facts = jar.planned();
            if (jar.role() == SampleRole.SPIKE) {
                facts.putAll(Checks.knownInSpike(jar.round()));
            }
            step(LABELS, week.labelsPrinted(), jar, Step.REGISTERED, facts);
        }
        diary.send();
    }

    void walk() {
        Instant at = week.walkStarts();
        Taps taps = new Taps(diary, codes);
        for (Stand stand : Stand.all()) {
            at = taps.write(stand, week.round(), at.plus(BETWEEN_BENCHES));
            for (Jar jar : jars) {
                if (jar.stand().bench().equals(stand.bench())) {
                    at = at.plus(A_JAR);
                    cut(jar, at);
                }
            }
        }
        for (Jar jar : jars) {
            if (!cuts.containsKey(jar)) {
                at = at.plus(BETWEEN_BENCHES);
                cut(jar, at);
            }
        }
        diary.send();
    }

    private void cut(Jar jar, Instant at) {
        boolean wrong = PlantedFaults.notedOnWrongBench(jar);
        Stand noted = wrong ? Stand.on("P1-B4") : jar.stand();
        cuts.put(jar, step(WALK, at, jar, Step.CUT, jar.cut(noted)));
        cutTimes.put(jar, at);
    }

    void washAndFreeze() {
        List<Jar> byTime = new ArrayList<>(jars);
        byTime.sort(java.util.Comparator.comparing(Jar::washed));
        for (Jar jar : byTime) {
            step(WASH, jar.washed(), jar, Step.WASHED, jar.wash());
            if (PlantedFaults.washNotedOnBothPhones(jar)) {
                step(WALK, jar.washed(), jar, Step.WASHED, jar.wash());
            }
        }
        for (Jar jar : byTime) {
            frozen.put(jar, step(WASH, jar.freezerIn(), jar, Step.FREEZER_IN, Map.of()));
        }
        diary.send();
        if (week.round() == 4) {
            diary.sendAgain();
        }
    }

    /** What was noted wrongly or mixed up, and put right later: the first record stays. */
    void putRight() {
        Instant at = WorkWeek.at(week.monday().plusDays(1), 12, 45);
        for (Jar jar : jars) {
            if (PlantedFaults.lidSwapped(jar)) {
                Map<String, String> facts = new TreeMap<>();
                facts.put(Facts.AT, jar.freezerIn().toString());
                facts.put(Facts.CONDITION, "lids swapped, put right");
                correct(at, jar, Step.FREEZER_IN, facts, frozen);
            } else if (PlantedFaults.notedOnWrongBench(jar)) {
                Map<String, String> facts = jar.cut(jar.stand());
                facts.put(Facts.AT, cutTimes.getOrDefault(jar, at).toString());
                correct(at.plus(Duration.ofHours(20)), jar, Step.CUT, facts, cuts);
            }
        }
        diary.send();
    }

    private void correct(
            Instant at, Jar jar, Step step, Map<String, String> facts, Map<Jar, EventId> earlier) {
        String reason =
                step == Step.CUT
                        ? "Noted on the bench next to it; sheet and label say P1-B5."
                        : "The pair scan found the lid of another jar on this base; the base"
                                + " counts.";
        Optional<EventId> replaces = Optional.ofNullable(earlier.get(jar));
        diary.write(
                new Diary.Hand(Cast.DESK, Cast.SPECIALIST),
                at,
                jar.code(),
                new Deed.StepTaken(step, facts, replaces, Optional.of(reason)));
    }

    private EventId step(
            Diary.Hand hand, Instant at, Jar jar, Step step, Map<String, String> facts) {
        return diary.write(
                hand,
                at,
                jar.code(),
                new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty()));
    }
}
