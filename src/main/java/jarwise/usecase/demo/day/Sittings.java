package jarwise.usecase.demo.day;

import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.usecase.demo.Cast;
import jarwise.usecase.demo.WorkWeek;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The microscope work of one round: who reads which filter when, and who counts again. */
final class Sittings {

    private static final double SHARE_OF_READER_A = .7;
    private static final Duration FREEZE = Duration.ofHours(24);
    private static final Duration BETWEEN_FILTERS = Duration.ofSeconds(45);
    private static final Duration THAW = Duration.ofMinutes(2);

    private final Diary diary;
    private final Codes codes;
    private final Checks checks;
    private final WorkWeek week;
    private final Map<Jar, String> readers = new LinkedHashMap<>();

    Sittings(Diary diary, Codes codes, WorkWeek week, List<Jar> jars) {
        this.diary = diary;
        this.codes = codes;
        this.checks = new Checks(diary, codes);
        this.week = week;
        for (Jar jar : jars) {
            boolean first = codes.draws(jar.code(), "reader").happens(SHARE_OF_READER_A);
            readers.put(jar, first || special(jar) ? Cast.READER_A : Cast.READER_B);
        }
    }

    /** Read on its own, or not yet. */
    private static boolean outOfTurn(Jar jar) {
        return PlantedFaults.readLate(jar)
                || PlantedFaults.readEarly(jar)
                || PlantedFaults.notYetRead(jar);
    }

    private static boolean special(Jar jar) {
        return outOfTurn(jar) || jar.role() != SampleRole.CROP || Suspicion.concerns(jar);
    }

    void readAll() {
        for (Jar jar : readers.keySet()) {
            if (PlantedFaults.readEarly(jar)) {
                Duration frozen = Duration.ofHours(PlantedFaults.EARLY_HOURS_IN_FREEZER);
                read(jar, Cast.READER_A, jar.freezerIn().plus(frozen));
            }
        }
        for (int sitting = 1; sitting <= (week.lateInTheWeek() ? 1 : 2); sitting++) {
            for (String reader : List.of(Cast.READER_A, Cast.READER_B)) {
                sit(reader, sitting);
            }
        }
        recount();
        readLate();
        diary.send();
    }

    /** Forgotten filters, one after the other. */
    private void readLate() {
        Instant free = Instant.MIN;
        for (Jar jar : readers.keySet()) {
            if (PlantedFaults.readLate(jar)) {
                Duration late = Duration.ofHours(PlantedFaults.LATE_HOURS_AFTER_WASH);
                Instant due = jar.washed().plus(late);
                Instant start = due.isBefore(free) ? free : due;
                free = read(jar, Cast.READER_A, start).plus(BETWEEN_FILTERS);
            }
        }
    }

    private void sit(String reader, int sitting) {
        Instant at =
                checks.readSeeded(week.round(), reader, sitting, week.sitting(reader, sitting));
        for (Jar jar : inSitting(reader, sitting)) {
            Instant readable = jar.freezerIn().plus(FREEZE).plusSeconds(60);
            Instant next = at.plus(BETWEEN_FILTERS);
            at = read(jar, reader, next.isBefore(readable) ? readable : next);
        }
        diary.send();
    }

    private List<Jar> inSitting(String reader, int sitting) {
        List<Jar> all =
                readers.keySet().stream()
                        .filter(jar -> reader.equals(readers.get(jar)) && !outOfTurn(jar))
                        .toList();
        if (week.lateInTheWeek()) {
            return all;
        }
        int half = (all.size() + 1) / 2;
        return sitting == 1 ? all.subList(0, half) : all.subList(half, all.size());
    }

    private Instant read(Jar jar, String reader, Instant start) {
        Deed out =
                new Deed.StepTaken(Step.FREEZER_OUT, Map.of(), Optional.empty(), Optional.empty());
        Diary.Hand hand = new Diary.Hand(Cast.microscopeOf(reader), reader);
        diary.write(hand, start.minus(THAW), jar.code(), out);
        Reading.Done done =
                new Reading(
                                jar.code(),
                                reader,
                                jar.stand().lookedFor(),
                                checks.filterOf(jar),
                                PlantedFaults.cellsLeftUnread(jar),
                                codes.draws(jar.code(), "reading", reader))
                        .write(diary, start);
        if (Suspicion.concerns(jar)) {
            Suspicion.write(diary, jar, done);
        }
        return done.at();
    }

    private void recount() {
        List<Jar> drawn = new ArrayList<>();
        long cut = readers.keySet().stream().filter(Sittings::cropAtRandom).count();
        if (week.round() == WorkWeek.ROUNDS) {
            // Two filters of each reader; those of the second still wait for the first.
            drawn.addAll(checks.drawForRecount(readBy(Cast.READER_A), 2, week.round()));
            drawn.addAll(checks.drawForRecount(readBy(Cast.READER_B), 2, week.round()));
        } else {
            List<Jar> all = new ArrayList<>(readBy(Cast.READER_A));
            all.addAll(readBy(Cast.READER_B));
            drawn.addAll(checks.drawForRecount(all, (int) Math.round(cut / 10.0), week.round()));
        }
        recount(drawn, Cast.READER_B);
        recount(drawn, Cast.READER_A);
        diary.send();
    }

    private void recount(List<Jar> drawn, String again) {
        Instant at = week.recountsStart(again);
        for (Jar jar : drawn) {
            if (!again.equals(readers.get(jar))) {
                SampleCode code = checks.registerRecount(jar, again, at);
                boolean waits = week.round() == WorkWeek.ROUNDS && again.equals(Cast.READER_A);
                if (!waits) {
                    at = checks.readRecount(jar, code, again, at.plus(BETWEEN_FILTERS));
                }
            }
        }
    }

    private List<Jar> readBy(String reader) {
        return readers.keySet().stream()
                .filter(Sittings::cropAtRandom)
                .filter(jar -> !outOfTurn(jar) && PlantedFaults.cellsLeftUnread(jar) == 0)
                .filter(jar -> reader.equals(readers.get(jar)))
                .toList();
    }

    private static boolean cropAtRandom(Jar jar) {
        return jar.role() == SampleRole.CROP && jar.purpose() == Purpose.RANDOM;
    }
}
