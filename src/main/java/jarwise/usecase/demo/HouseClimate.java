package jarwise.usecase.demo;

import jarwise.stats.count.SimulatedCounts;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * The air in one house: a sinus over the day, noise that lasts for hours, and the heat of April.
 *
 * @param house house code
 * @param meanC mean of the day
 * @param swingC half of the difference between the warmest and the coolest hour
 * @param biasC what its sensor shows too much
 */
public record HouseClimate(String house, double meanC, double swingC, double biasC) {

    public static final double HEAT_C = 3.5;
    public static final LocalDate HEAT_FROM = LocalDate.of(2026, 4, 5);
    public static final LocalDate HEAT_TO = LocalDate.of(2026, 4, 9);

    /** The logger of H3 said nothing for nine hours in the fifth week. */
    private static final Instant GAP_FROM = WorkWeek.at(LocalDate.of(2026, 4, 1), 22, 0);

    private static final Instant GAP_TO = GAP_FROM.plus(Duration.ofHours(9));
    private static final double NOISE_C = .6;
    private static final double NOISE_KEPT = .8;

    /** One hour of a logger, as it would show it in degrees Celsius. */
    public record Hour(Instant at, double celsius) {}

    public static List<HouseClimate> all() {
        return List.of(
                new HouseClimate("P1", 24, 3.5, 0),
                new HouseClimate("H2", 22, 5, 0),
                new HouseClimate("H3", 20, 6, .5));
    }

    public static HouseClimate of(String house) {
        return all().stream().filter(h -> h.house.equals(house)).findAny().orElseThrow();
    }

    /** The logger of H3 was delivered with another scale. */
    public boolean logsFahrenheit() {
        return house.equals("H3");
    }

    /** {@return the hours from one moment to another, without those that the logger missed} */
    public List<Hour> hours(Instant from, Instant to, Streams streams) {
        SimulatedCounts draws = streams.of("temperature", house);
        double noise = NOISE_C * draws.normal();
        List<Hour> hours = new ArrayList<>();
        for (Instant at = from; !at.isAfter(to); at = at.plus(Duration.ofHours(1))) {
            noise =
                    NOISE_KEPT * noise
                            + NOISE_C * Math.sqrt(1 - NOISE_KEPT * NOISE_KEPT) * draws.normal();
            if (!missed(at)) {
                hours.add(new Hour(at, rounded(trueC(at) + noise + biasC)));
            }
        }
        return hours;
    }

    private boolean missed(Instant at) {
        return house.equals("H3") && !at.isBefore(GAP_FROM) && at.isBefore(GAP_TO);
    }

    /** Warmest at three in the afternoon. */
    private double trueC(Instant at) {
        ZonedDateTime local = at.atZone(DemoClock.ZONE);
        LocalDate day = local.toLocalDate();
        boolean hot = !day.isBefore(HEAT_FROM) && !day.isAfter(HEAT_TO);
        double hour = local.getHour() + local.getMinute() / 60.0;
        return meanC + swingC * StrictMath.sin(2 * Math.PI * (hour - 9) / 24) + (hot ? HEAT_C : 0);
    }

    private static double rounded(double celsius) {
        return Math.round(celsius * 10) / 10.0;
    }
}
