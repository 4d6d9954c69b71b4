package jarwise.usecase.demo.day;

import jarwise.sample.Purpose;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.WorkWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Adults at the exit of H3 that nobody could name: a regulated pest was suspected, a voucher sent,
 * and two weeks later the authority answered that it was none.
 */
final class Suspicion {

    static final int ADULTS = 12;

    private static final Instant ANSWERED = WorkWeek.at(LocalDate.of(2026, 4, 29), 15, 10);

    private static final Diary.Hand SPECIALIST = new Diary.Hand(Cast.DESK, Cast.SPECIALIST);

    private Suspicion() {}

    static boolean concerns(Jar jar) {
        return jar.purpose() == Purpose.TARGETED && jar.stand().bench().equals("H3-B2");
    }

    static void write(Diary diary, Jar jar, Reading.Done done) {
        Map<String, String> facts = new TreeMap<>(done.facts());
        facts.put(Facts.AT, done.at().toString());
        facts.put(Facts.OTHER + "hot_spot", "H3 exit");
        facts.put(Facts.OTHER + "suspected_regulated", "yes");
        facts.put(Facts.OTHER + "voucher", "V-01, sent 2026-04-15");
        EventId raised =
                replace(
                        diary,
                        jar,
                        done.at().plus(Duration.ofHours(1)),
                        facts,
                        done.event(),
                        "Adults that we cannot name: voucher sent to the plant-health authority;"
                                + " no plants leave H3 until it answers.");
        facts.put(Facts.OTHER + "suspected_regulated", "no");
        facts.put(Facts.OTHER + "authority_answer", "not regulated, 2026-04-29");
        replace(
                diary,
                jar,
                ANSWERED,
                facts,
                raised,
                "The plant-health authority answered: not regulated.");
    }

    private static EventId replace(
            Diary diary,
            Jar jar,
            Instant at,
            Map<String, String> facts,
            EventId earlier,
            String reason) {
        Deed deed = new Deed.StepTaken(Step.READ, facts, Optional.of(earlier), Optional.of(reason));
        return diary.write(SPECIALIST, at, jar.code(), deed);
    }
}
