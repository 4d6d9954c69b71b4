package jarwise.usecase.findings;

import jarwise.plan.Round;
import jarwise.sample.DetectionValue;
import jarwise.sample.Purpose;
import jarwise.sample.SamplingMethod;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Occupancy;
import jarwise.tally.Facts;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Three benches over three weeks: P1-B5 above the line, P1-B3 below it, P1-B4 cut but not read; on
 * P1-D1 nothing was sampled. A re-entry interval runs on P1-B4.
 */
public final class Story {

    /** Thursday 19 March 2026, 07:40. */
    public static final Instant NOW = Instant.parse("2026-03-19T07:40:00Z");

    /** The day of the newest round. */
    public static final LocalDate ROUND = LocalDate.of(2026, 3, 16);

    private Story() {}

    /** Tells it to a site. */
    public static TestSite toldTo(TestSite site) {
        site.line("FRANOC", "larva", 0.1)
                .share(DetectionValue.Kind.EXTRACTION, "soap", "larva", 600, 1000)
                .share(DetectionValue.Kind.READER, "SC-1", "larva", 900, 1000);
        places(site);
        site.with(jars());
        applied(site);
        site.rounds.put(
                TestSite.SLUG,
                new Round(
                        LocalDate.of(2026, 3, 23),
                        SamplingMethod.WASH,
                        List.of(new Round.Stop("P1-B3", 8, Purpose.RANDOM))));
        return site;
    }

    private static List<Jar> jars() {
        List<Jar> jars = new ArrayList<>();
        for (int week = 0; week < 3; week++) {
            LocalDate day = TestSite.START.plusWeeks(week);
            for (int i = 0; i < 8; i++) {
                jars.add(
                        jar("B5", week, i, day, "P1-B5", "Cloudmarsh")
                                .counted("larva1", i % 3)
                                .counted("larva2", 3));
                jars.add(
                        jar("B3", week, i, day, "P1-B3", "Rubia Tarn")
                                .counted("larva1", week == 0 ? 6 : 0)
                                .counted("larva2", 0));
            }
        }
        jars.addAll(ofTheNewestRound());
        return jars;
    }

    private static List<Jar> ofTheNewestRound() {
        List<Jar> jars = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            jars.add(
                    jar("more", 2, i, ROUND, "P1-B3", "Rubia Tarn")
                            .counted("larva1", 0)
                            .counted("larva2", 0));
        }
        for (int i = 0; i < 3; i++) {
            jars.add(jar("B4", 2, i, ROUND, "P1-B4", "Rubia Tarn"));
        }
        jars.add(
                jar("hunt", 2, 0, ROUND, "P1-B5", "Cloudmarsh")
                        .with(Facts.PURPOSE, "targeted")
                        .counted("larva1", 30));
        jars.add(
                jar("water", 2, 0, ROUND, "P1-B5", "Cloudmarsh")
                        .with(Facts.FLUID, "water")
                        .counted("larva1", 0));
        return jars;
    }

    private static Jar jar(
            String name, int week, int i, LocalDate day, String bench, String variety) {
        return Jar.of("W%d-%s-%02d".formatted(week, name, i), day).at("P1", bench, variety);
    }

    private static void places(TestSite site) {
        site.site.save(TestSite.SLUG, new House("P1", "Propagation", OptionalDouble.empty()), 0);
        List<String> benches = List.of("P1-B3", "P1-B4", "P1-B5", "P1-D1");
        for (String bench : benches) {
            site.site.save(TestSite.SLUG, new Bench(bench, "P1", "B", benches.indexOf(bench)));
        }
        site.site.save(
                TestSite.SLUG,
                new CropLot(
                        "L-1",
                        "Schefflera",
                        "Tessellate",
                        Optional.empty(),
                        Optional.empty(),
                        false));
        site.site.save(
                TestSite.SLUG,
                new Occupancy(
                        "P1-D1",
                        "L-1",
                        TestSite.START,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty()));
    }

    private static void applied(TestSite site) {
        Instant at = LocalDate.of(2026, 3, 18).atTime(18, 0).toInstant(ZoneOffset.UTC);
        site.treatments.add(
                TestSite.SLUG,
                new Application(
                        "T1",
                        "P1",
                        Set.of("P1-B4"),
                        at,
                        Optional.of(at.plusSeconds(1800)),
                        List.of(
                                new ProductUse(
                                        "Invented-L",
                                        Optional.empty(),
                                        List.of("15"),
                                        OptionalDouble.of(24),
                                        OptionalInt.empty(),
                                        OptionalInt.empty())),
                        "1 L",
                        "AP-1",
                        ""),
                NOW);
    }
}
