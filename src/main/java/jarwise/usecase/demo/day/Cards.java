package jarwise.usecase.demo.day;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.stats.count.SimulatedCounts;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.DemoSite;
import jarwise.usecase.demo.HouseClimate;
import jarwise.usecase.demo.Stage;
import jarwise.usecase.demo.Stand;
import jarwise.usecase.demo.WorkWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Sticky cards, changed every Friday: they catch adults that fly, outdoor species too.
 *
 * @param diary where it is written
 * @param codes codes
 */
record Cards(Diary diary, Codes codes) {

    private static final double A_WEEK_PER_ADULT = 4;
    private static final double ONION_THRIPS_FACTOR = .6;
    private static final Diary.Hand SCOUT = new Diary.Hand(Cast.PHONE_A, Cast.READER_A);
    private static final Set<String> LOOKED_FOR =
            Set.of(Stage.ADULT.pest(), Stage.ONION_THRIPS.pest(), Stage.OTHER_THRIPS.pest());

    /** Cards of the first round hang from Monday, all others from the Friday before. */
    static LocalDate putUp(int round) {
        WorkWeek week = new WorkWeek(round);
        return round == 1 ? week.monday() : week.monday().minusDays(3);
    }

    void putUpFor(int round) {
        Instant at = WorkWeek.at(putUp(round), 14, 0);
        for (String bench : DemoSite.CARD_BENCHES) {
            at = at.plusSeconds(90);
            step(Step.REGISTERED, bench, round, at, planned(bench, round));
        }
    }

    void takeDown(int round) {
        LocalDate day = new WorkWeek(round).cardsChanged();
        long days = ChronoUnit.DAYS.between(putUp(round), day);
        Instant at = WorkWeek.at(day, 13, 0);
        for (String bench : DemoSite.CARD_BENCHES) {
            at = at.plusSeconds(120);
            Map<String, String> facts = new TreeMap<>();
            facts.put(Facts.COLLECTED_ON, day.toString());
            facts.put(Facts.SAMPLING_UNITS, Long.toString(days));
            facts.put(Facts.READER, SCOUT.person());
            SampleCode code = step(Step.CUT, bench, round, at, facts);
            count(Stage.ADULT, ofCrop(Stage.ADULT, bench, round, 1, day), code, at, days);
            double onion = ofCrop(Stage.ONION_THRIPS, bench, round, ONION_THRIPS_FACTOR, day);
            count(Stage.ONION_THRIPS, onion, code, at, days);
            count(Stage.OTHER_THRIPS, round < 5 ? 1 : round < 8 ? 3 : 6, code, at, days);
            diary.write(SCOUT, at, code, new Deed.FilterDone(LOOKED_FOR));
        }
    }

    private SampleCode step(
            Step step, String bench, int round, Instant at, Map<String, String> facts) {
        SampleCode code = codes.of("card", round, bench);
        diary.write(
                SCOUT,
                at,
                code,
                new Deed.StepTaken(step, facts, Optional.empty(), Optional.empty()));
        return code;
    }

    private static Map<String, String> planned(String bench, int round) {
        Map<String, String> facts =
                Stand.find(bench).map(Jar::place).orElseGet(() -> new TreeMap<>());
        facts.put(Facts.BENCH, bench);
        facts.put(Facts.HOUSE, bench.substring(0, 2));
        facts.put(Facts.METHOD, "card");
        facts.put(Facts.OTHER + "round", "W" + round);
        facts.put(Facts.OTHER + "put_up", putUp(round).toString());
        facts.put(Facts.OTHER + "change_on", new WorkWeek(round).cardsChanged().toString());
        return facts;
    }

    private static double ofCrop(
            Stage stage, String bench, int round, double factor, LocalDate day) {
        double adults =
                Stand.all().stream()
                        .filter(stand -> stand.house().equals(bench.substring(0, 2)))
                        .filter(stand -> Stand.find(bench).isEmpty() || stand.bench().equals(bench))
                        .mapToDouble(stand -> stand.density(stage, round))
                        .average()
                        .orElse(0);
        return A_WEEK_PER_ADULT * factor * adults * warmth(bench.substring(0, 2), day);
    }

    /** Warm adults fly more: an invented 5 % a degree above or below 22 °C. */
    private static double warmth(String house, LocalDate day) {
        double celsius = HouseClimate.of(house).meanC();
        for (LocalDate hot = HouseClimate.HEAT_FROM;
                !hot.isAfter(HouseClimate.HEAT_TO);
                hot = hot.plusDays(1)) {
            if (hot.isAfter(day.minusDays(7)) && !hot.isAfter(day)) {
                celsius += HouseClimate.HEAT_C / 7;
            }
        }
        return StrictMath.exp(.05 * (celsius - 22));
    }

    private void count(Stage stage, double aWeek, SampleCode code, Instant at, long days) {
        SimulatedCounts draws = codes.draws(code, stage);
        long caught = draws.poisson(aWeek * days / 7);
        if (caught > 0) {
            diary.write(
                    SCOUT,
                    at,
                    code,
                    new Deed.Counted(
                            stage.pest(), stage.key().lifeStage(), caught, Optional.empty()));
        }
    }
}
