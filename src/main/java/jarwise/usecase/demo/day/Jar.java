package jarwise.usecase.demo.day;

import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.tally.Facts;
import jarwise.usecase.demo.Stand;
import jarwise.usecase.demo.WorkWeek;
import java.time.Instant;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One jar of a round.
 *
 * @param code on lid, base and sheet
 * @param round 1 to 10
 * @param stand where it is cut
 * @param number its number on that bench, from 1
 * @param role crop, blank or spike
 * @param purpose random or targeted
 * @param washed when it was filtered
 * @param freezerIn when the filter went into the freezer
 */
record Jar(
        SampleCode code,
        int round,
        Stand stand,
        int number,
        SampleRole role,
        Purpose purpose,
        Instant washed,
        Instant freezerIn) {

    int growingPoints() {
        return PlantedFaults.nineGrowingPoints(this) ? 9 : Stand.GROWING_POINTS;
    }

    /** Mites and aphids of house H3 are washed in alcohol, everything else in soap. */
    Fluid fluid() {
        if (PlantedFaults.plainWater(this)) {
            return Fluid.WATER;
        }
        return stand.house().equals("H3") ? Fluid.ALCOHOL : Fluid.SOAP;
    }

    Fill fill() {
        return PlantedFaults.overpacked(this) ? Fill.PACKED : Fill.LOOSE;
    }

    /** Hairy or dusty leaves leave much on the filter. */
    boolean muchDebris() {
        return stand.bench().equals("H3-B2") || (round + 3 * number) % 11 == 0;
    }

    Optional<String> condition() {
        if (PlantedFaults.tooWet(this)) {
            return Optional.of("too wet");
        }
        return muchDebris() ? Optional.of("much debris") : Optional.empty();
    }

    Map<String, String> planned() {
        Map<String, String> facts = ofPlants() ? place(stand) : new TreeMap<>();
        facts.put(Facts.METHOD, "wash");
        facts.put(Facts.ROLE, word(role));
        facts.put(Facts.PURPOSE, word(purpose));
        facts.put(Facts.OTHER + "round", "W" + round);
        facts.put(Facts.OTHER + "jar", Integer.toString(number));
        return facts;
    }

    /** A blank has no plants, and a spike has clean ones from another place. */
    private boolean ofPlants() {
        return role == SampleRole.CROP;
    }

    Map<String, String> cut(Stand noted) {
        Map<String, String> facts = ofPlants() ? place(noted) : new TreeMap<>();
        facts.put(Facts.COLLECTED_ON, new WorkWeek(round).cutOn().toString());
        if (role != SampleRole.BLANK) {
            facts.put(Facts.SAMPLING_UNITS, Integer.toString(growingPoints()));
        }
        return facts;
    }

    Map<String, String> wash() {
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.FLUID, word(fluid()));
        facts.put(Facts.FILL, word(fill()));
        facts.put(Facts.SHAKE_SECONDS, "45");
        facts.put(Facts.RINSES, "2");
        condition().ifPresent(text -> facts.put(Facts.CONDITION, text));
        return facts;
    }

    static Map<String, String> place(Stand stand) {
        Map<String, String> facts = new TreeMap<>();
        facts.put(Facts.HOUSE, stand.house());
        facts.put(Facts.BENCH, stand.bench());
        facts.put(Facts.CROP_LOT, stand.lot());
        facts.put(Facts.CROP, stand.crop());
        facts.put(Facts.VARIETY, stand.variety());
        return facts;
    }

    static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
