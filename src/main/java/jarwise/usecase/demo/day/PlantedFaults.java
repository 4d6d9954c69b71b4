package jarwise.usecase.demo.day;

import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;

/**
 * Faults that are in the demo on purpose, so that every page has something to find. Each is one
 * jar, told by round, bench and number.
 */
final class PlantedFaults {

    /** What the freezer and the reading window should have been, and what they were. */
    static final long LATE_HOURS_AFTER_WASH = 80;

    static final long EARLY_HOURS_IN_FREEZER = 18;

    private PlantedFaults() {}

    private static boolean is(Jar jar, int round, String bench, int number) {
        return jar.role() == SampleRole.CROP
                && jar.purpose() == Purpose.RANDOM
                && jar.round() == round
                && jar.stand().bench().equals(bench)
                && jar.number() == number;
    }

    static boolean plainWater(Jar jar) {
        return is(jar, 2, "P1-B5", 4);
    }

    static boolean tooWet(Jar jar) {
        return is(jar, 3, "P1-B4", 6);
    }

    static boolean overpacked(Jar jar) {
        return is(jar, 4, "H3-B5", 2);
    }

    /** The lids of these two were swapped; the pair scan before reading found it. */
    static boolean lidSwapped(Jar jar) {
        return is(jar, 5, "P1-B3", 3) || is(jar, 5, "P1-B3", 4);
    }

    static boolean nineGrowingPoints(Jar jar) {
        return is(jar, 6, "P1-B5", 2);
    }

    static boolean readLate(Jar jar) {
        return is(jar, 6, "H3-B2", 1) || is(jar, 6, "H3-B2", 2);
    }

    /** Noted on the bench next to it and put right on Wednesday. */
    static boolean notedOnWrongBench(Jar jar) {
        return is(jar, 7, "P1-B5", 6);
    }

    static boolean readEarly(Jar jar) {
        return is(jar, 8, "H2-B6", 3);
    }

    /** Noted by both scouts on their own phones, in the same words. */
    static boolean washNotedOnBothPhones(Jar jar) {
        return jar.role() == SampleRole.CROP
                && jar.round() == 4
                && jar.stand().bench().equals("P1-B3");
    }

    /** Read in passes and left before the end, because there were so many. */
    static int cellsLeftUnread(Jar jar) {
        if (is(jar, 7, "P1-B4", 6)) {
            return 30;
        }
        return is(jar, 7, "P1-B4", 2) || is(jar, 7, "P1-B4", 7) ? 20 : 0;
    }

    /** Cut and washed on the last Monday, still unread on Thursday morning. */
    static boolean notYetRead(Jar jar) {
        return jar.round() == 10 && jar.stand().bench().equals("H3-B5");
    }
}
