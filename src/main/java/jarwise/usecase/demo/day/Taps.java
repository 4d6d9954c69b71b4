package jarwise.usecase.demo.day;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.stats.count.SimulatedCounts;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.Stage;
import jarwise.usecase.demo.Stand;
import jarwise.usecase.demo.WorkWeek;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Plants tapped over a white board on the walk: what falls is counted on the spot, thrips only.
 *
 * @param diary where it is written
 * @param codes codes
 */
record Taps(Diary diary, Codes codes) {

    private static final long SECONDS_A_TAP = 15;
    private static final Diary.Hand SCOUT = new Diary.Hand(Cast.PHONE_A, Cast.READER_A);
    private static final List<Stage> THRIPS =
            List.of(Stage.LARVA1, Stage.LARVA2, Stage.PUPAL, Stage.ADULT);

    /** {@return when the last plant of the bench was tapped} */
    Instant write(Stand stand, int round, Instant start) {
        Instant at = start;
        for (int tap = 1; tap <= stand.taps(round); tap++) {
            at = at.plusSeconds(SECONDS_A_TAP);
            SampleCode code = codes.of("tap", round, stand.bench(), tap);
            diary.write(SCOUT, at, code, tapped(stand, round));
            count(stand, round, code, at);
            Deed done = new Deed.FilterDone(Set.of(Stage.ADULT.pest()));
            diary.write(SCOUT, at, code, done);
        }
        return at;
    }

    private static Deed tapped(Stand stand, int round) {
        Map<String, String> facts = Jar.place(stand);
        facts.put(Facts.METHOD, "tap");
        facts.put(Facts.COLLECTED_ON, new WorkWeek(round).cutOn().toString());
        facts.put(Facts.SAMPLING_UNITS, "1");
        facts.put(Facts.READER, SCOUT.person());
        facts.put(Facts.OTHER + "round", "W" + round);
        return new Deed.StepTaken(Step.CUT, facts, Optional.empty(), Optional.empty());
    }

    private void count(Stand stand, int round, SampleCode code, Instant at) {
        for (Stage stage : THRIPS) {
            SimulatedCounts draws = codes.draws(code, stage);
            double mean = stand.density(stage, round) * stage.observed().tapped();
            // Thinned by what a tap shakes off, k stays as it is.
            long found = mean > 0 ? draws.negativeBinomial(mean, stage.k()) : 0;
            if (found > 0) {
                Deed counted =
                        new Deed.Counted(
                                stage.pest(), stage.key().lifeStage(), found, Optional.empty());
                diary.write(SCOUT, at, code, counted);
            }
        }
    }
}
