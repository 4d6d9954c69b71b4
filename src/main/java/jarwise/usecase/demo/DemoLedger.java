package jarwise.usecase.demo;

import jarwise.phenology.TemperatureReading;
import jarwise.phenology.TemperatureUnit;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.treatment.Release;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What was sprayed and released in the demo nursery, and what its loggers showed. Products, limits
 * and groups are invented and recommend nothing: the product label is the law.
 */
public final class DemoLedger {

    private static final Instant LOGGED_FROM = WorkWeek.at(LocalDate.of(2026, 2, 23), 0, 0);

    private DemoLedger() {}

    /** {@return all applications, oldest first} */
    public static List<Application> applications() {
        ProductUse adults = product("DEMO Stage-A", "6", 12, OptionalInt.empty());
        ProductUse larvae = product("DEMO Stage-L", "15", 4, OptionalInt.of(3));
        ProductUse mites = product("DEMO Stage-M", "6", 24, OptionalInt.empty());
        return List.of(
                spray("T1", "P1-B3", LocalDate.of(2026, 3, 27), 18 * 60, 70, List.of(adults)),
                spray("T2a", "P1-B3", LocalDate.of(2026, 4, 8), 18 * 60, 45, List.of(larvae)),
                spray("T2b", "P1-B3", LocalDate.of(2026, 4, 13), 18 * 60, 45, List.of(larvae)),
                spray(
                        "T3",
                        "P1-B4",
                        LocalDate.of(2026, 4, 16),
                        18 * 60,
                        70,
                        List.of(larvae, adults)),
                // The interval counts from the end: nobody enters before 19:30 on Thursday.
                spray("T4", "H2-B6", LocalDate.of(2026, 5, 6), 19 * 60, 30, List.of(mites)));
    }

    private static ProductUse product(
            String name, String group, double reentryHours, OptionalInt mostUses) {
        return new ProductUse(
                name,
                Optional.empty(),
                List.of(group),
                OptionalDouble.of(reentryHours),
                mostUses,
                mostUses.isPresent() ? OptionalInt.of(5) : OptionalInt.empty());
    }

    private static Application spray(
            String id,
            String bench,
            LocalDate day,
            int startMinute,
            int minutes,
            List<ProductUse> products) {
        Instant start = WorkWeek.at(day, startMinute / 60, startMinute % 60);
        return new Application(
                id,
                bench.substring(0, 2),
                Set.of(bench),
                start,
                Optional.of(start.plusSeconds(60L * minutes)),
                products,
                "1.2 L of spray on the bench",
                Cast.APPLICATOR,
                "Invented product; licence field DEMO-000.");
    }

    /** {@return all releases of natural enemies, oldest first} */
    public static List<Release> releases() {
        List<Release> releases = new ArrayList<>();
        LocalDate first = LocalDate.of(2026, 3, 4);
        for (int fortnight = 0; fortnight < 4; fortnight++) {
            releases.add(
                    new Release(
                            first.plusWeeks(2L * fortnight),
                            "Neoseiulus cucumeris",
                            "H2",
                            "120 sachets"));
        }
        for (int day : new int[] {8, 15}) {
            LocalDate on = LocalDate.of(2026, 4, day);
            releases.add(new Release(on, "Phytoseiulus persimilis", "H3-B2", "2,000 on the bench"));
        }
        return releases;
    }

    /** {@return hourly readings of the three loggers; that of H3 delivered degrees Fahrenheit} */
    public static List<TemperatureReading> temperatures() {
        Streams streams = new Streams(Streams.SEED);
        List<TemperatureReading> readings = new ArrayList<>();
        for (HouseClimate climate : HouseClimate.all()) {
            for (HouseClimate.Hour hour : climate.hours(LOGGED_FROM, DemoClock.MOMENT, streams)) {
                readings.add(reading(climate, hour));
            }
        }
        return readings;
    }

    private static TemperatureReading reading(HouseClimate climate, HouseClimate.Hour hour) {
        String sensor = climate.house() + "-logger";
        if (!climate.logsFahrenheit()) {
            return new TemperatureReading(
                    climate.house(), sensor, hour.at(), hour.celsius(), TemperatureUnit.CELSIUS);
        }
        double shown = Math.round((hour.celsius() * 1.8 + 32) * 10) / 10.0;
        return new TemperatureReading(
                climate.house(),
                sensor,
                hour.at(),
                TemperatureUnit.FAHRENHEIT.toCelsius(shown),
                TemperatureUnit.FAHRENHEIT);
    }
}
