package jarwise.usecase.devices;

import jarwise.base.Message;
import jarwise.base.Refused;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Codes that are shown at the desk now: one a nursery, ten minutes, one device. They live in memory
 * only, so that a restart ends them, and so do the tries.
 *
 * <p>A code has 40 random bits and one device gets five wrong tries in ten minutes, all devices
 * together thirty: the chance of guessing one is below 1 in 30,000,000,000.
 */
public final class LetInCodes {

    private static final Duration LASTS = Duration.ofMinutes(10);
    private static final int TRIES_OF_ONE = 5;
    private static final int TRIES_OF_ALL = 30;

    private final Map<String, LetInCode> shown = new HashMap<>();
    private final Deque<Try> wrong = new ArrayDeque<>();

    private record Try(String from, Instant at) {}

    /** {@return a fresh code of a nursery; one that was shown before is void} */
    public synchronized LetInCode show(String nursery, String person, Instant now) {
        LetInCode code = new LetInCode(Secrets.freshCode(), nursery, person, now.plus(LASTS));
        shown.put(nursery, code);
        return code;
    }

    /** {@return the code that is shown at a nursery's desk, while it holds} */
    public synchronized Optional<LetInCode> shownNow(String nursery, Instant now) {
        return Optional.ofNullable(shown.get(nursery)).filter(code -> now.isBefore(code.until()));
    }

    /**
     * Takes a code, which is void from then on.
     *
     * @param typed as it was typed
     * @param from address of the device, to count its tries
     * @throws Refused if there were too many wrong tries, it has run out, or there is none such
     */
    synchronized LetInCode take(String typed, String from, Instant now) {
        wrong.removeIf(attempt -> !attempt.at().plus(LASTS).isAfter(now));
        long ofThis = wrong.stream().filter(attempt -> attempt.from().equals(from)).count();
        if (ofThis >= TRIES_OF_ONE || wrong.size() >= TRIES_OF_ALL) {
            throw new Refused(Message.of("devices.code.tries"));
        }
        String meant = Secrets.meant(typed);
        Optional<LetInCode> found =
                shown.values().stream()
                        .filter(code -> Secrets.same(code.symbols(), meant))
                        .findFirst();
        if (found.isEmpty()) {
            wrong.add(new Try(from, now));
            throw new Refused(Message.of("devices.code.wrong"));
        }
        shown.remove(found.get().nursery());
        if (!now.isBefore(found.get().until())) {
            throw new Refused(Message.of("devices.code.over"));
        }
        return found.get();
    }
}
