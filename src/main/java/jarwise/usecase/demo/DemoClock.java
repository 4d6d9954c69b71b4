package jarwise.usecase.demo;

import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDateTime;
import java.time.ZoneId;

/**
 * The clock of the demo: it stands at Thursday 7 May 2026, 07:40, when the demo is started, and
 * runs on from there. The invented site keeps the time of Toronto.
 *
 * @param real the clock of the machine
 * @param startedAt what that clock said when the demo was started
 */
public record DemoClock(InstantSource real, Instant startedAt) implements InstantSource {

    /** Time zone of the invented site. */
    public static final ZoneId ZONE = ZoneId.of("America/Toronto");

    /** The moment at which the demo's pages stand. */
    public static final Instant MOMENT =
            LocalDateTime.of(2026, 5, 7, 7, 40).atZone(ZONE).toInstant();

    /** {@return a clock that shows {@link #MOMENT} now} */
    public static DemoClock startingNow(InstantSource real) {
        return new DemoClock(real, real.instant());
    }

    @Override
    public Instant instant() {
        return MOMENT.plus(Duration.between(startedAt, real.instant()));
    }
}
