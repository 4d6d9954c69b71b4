package jarwise.usecase.demo.day;

import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.Step;
import jarwise.stats.count.SimulatedCounts;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.DemoClock;
import jarwise.usecase.demo.Stage;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Checks of the work itself: seeded filters, blind recounts, spikes and blanks.
 *
 * @param diary where they are written
 * @param codes codes
 */
record Checks(Diary diary, Codes codes) {

    /** Individuals on a seeded filter and in a spiked jar. */
    static final int KNOWN = 10;

    private static final Diary.Hand SPECIALIST = new Diary.Hand(Cast.DESK, Cast.SPECIALIST);

    static boolean spiked(int round) {
        return round == 2 || round == 6 || round == 10;
    }

    static Stage spikedWith(int round) {
        return round == 2 ? Stage.ADULT : Stage.LARVA2;
    }

    static Map<String, String> knownInSpike(int round) {
        return known(spikedWith(round) == Stage.ADULT ? "adult" : "larva");
    }

    private static Map<String, String> known(String stageGroup) {
        return Map.of(
                Facts.KNOWN,
                Integer.toString(KNOWN),
                Facts.OTHER + "known_pest",
                Stage.ADULT.pest(),
                Facts.OTHER + "known_stage",
                stageGroup);
    }

    /** A filter as it comes from a jar, whatever its role. */
    Filter filterOf(Jar jar) {
        SimulatedCounts draws = codes.draws(jar.code(), "known");
        if (jar.role() == SampleRole.SPIKE) {
            return Filter.spiked(jar, spikedWith(jar.round()), KNOWN, draws);
        }
        if (jar.role() == SampleRole.BLANK) {
            // In the sixth round the reused fluid carried a larva over.
            return Filter.seeded(jar.round() == 6 ? Map.of(Stage.LARVA2, 1) : Map.of(), draws);
        }
        if (Suspicion.concerns(jar)) {
            return Filter.seeded(Map.of(Stage.UNSURE, Suspicion.ADULTS), draws);
        }
        return Filter.of(jar, codes);
    }

    /** {@return when the seeded filter of a sitting was read; larvae twice, then adults} */
    Instant readSeeded(int round, String reader, int sitting, Instant start) {
        boolean adults = (round + sitting) % 3 == 0;
        Map<Stage, Integer> on =
                adults ? Map.of(Stage.ADULT, 10) : Map.of(Stage.LARVA1, 5, Stage.LARVA2, 5);
        SampleCode code = codes.of("seeded", round, reader, sitting);
        Map<String, String> facts = check("seeded", start);
        facts.putAll(known(adults ? "adult" : "larva"));
        register(code, start.minusSeconds(600), facts);
        Filter filter = Filter.seeded(on, codes.draws(code, "filter"));
        return reading(code, reader, Set.of(Stage.ADULT.pest()), filter).write(diary, start).at();
    }

    /** Registers a recount; who counted first and what stays hidden from who counts again. */
    SampleCode registerRecount(Jar jar, String reader, Instant at) {
        SampleCode code = codes.recountOf(jar.code());
        Map<String, String> facts = check("recount", at);
        facts.putAll(Jar.place(jar.stand()));
        facts.put(Facts.SAMPLING_UNITS, Integer.toString(jar.growingPoints()));
        facts.put(Facts.RECOUNT_OF, jar.code().text());
        facts.put(Facts.OTHER + "recount_by", reader);
        register(code, at, facts);
        return code;
    }

    Instant readRecount(Jar jar, SampleCode code, String reader, Instant start) {
        return reading(code, reader, jar.stand().lookedFor(), filterOf(jar))
                .write(diary, start)
                .at();
    }

    private static Map<String, String> check(String role, Instant at) {
        LocalDate day = at.atZone(DemoClock.ZONE).toLocalDate();
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.METHOD, "wash");
        facts.put(Facts.ROLE, role);
        facts.put(Facts.COLLECTED_ON, day.toString());
        return facts;
    }

    private void register(SampleCode code, Instant at, Map<String, String> facts) {
        Deed deed = new Deed.StepTaken(Step.REGISTERED, facts, Optional.empty(), Optional.empty());
        diary.write(SPECIALIST, at, code, deed);
    }

    private Reading reading(SampleCode code, String reader, Set<String> pests, Filter filter) {
        return new Reading(code, reader, pests, filter, 0, codes.draws(code, "reading", reader));
    }

    /** {@return jars to be counted again, one in ten, drawn from those that were read whole} */
    List<Jar> drawForRecount(List<Jar> candidates, int number, int round) {
        List<Jar> left = new java.util.ArrayList<>(candidates);
        SimulatedCounts draws = codes.streams().of("recounts", round);
        List<Jar> drawn = new java.util.ArrayList<>();
        while (drawn.size() < number && !left.isEmpty()) {
            drawn.add(left.remove(draws.below(left.size())));
        }
        return drawn;
    }
}
