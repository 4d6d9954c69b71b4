package jarwise.usecase.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.Seeds;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.decision.VerdictLimits;
import jarwise.sample.DetectionValue.Kind;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.Detection;
import jarwise.stats.estimate.DetectionShare;
import jarwise.tally.Facts;
import jarwise.usecase.findings.Jar;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.microscope.StopLimits.Limit;
import jarwise.usecase.microscope.StopLimits.OfFilter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@Tag("slow")
class StopLimitsTest {

    private static final LocalDate DAY = TestSite.START;
    private static final int MANY = 300;

    static LongStream someSeeds() {
        return Seeds.some().limit(25);
    }

    @TempDir private Path folder;
    private TestSite site;

    @BeforeEach
    void openSite() {
        site = new TestSite(folder).line("FRANOC", "larva", 0.5);
    }

    @AfterEach
    void closeSite() {
        site.close();
    }

    /** Five jars of ten growing points with 1, 2, 0, 3 and N larvae, line 0.5. */
    @Test
    void areWhereTheVerdictOfTheEstimatorChanges() {
        site.with(read("a", 1), read("b", 2), read("c", 0), read("d", 3), jar("w"));

        Limit limit = of(limits(), "w").groups().get(0);

        assertThat(limit.pest()).isEqualTo("FRANOC");
        assertThat(limit.stages()).containsExactly("larva1", "larva2");
        assertAgree(limit, DensityEstimator.standard(), List.of(1, 2, 0, 3));
        assertThat(limit.below()).isPresent();
        assertThat(limit.above().orElseThrow()).isGreaterThan(limit.below().orElseThrow());
    }

    @Test
    void areOnTheCorrectedScaleWhereSharesWereMeasured() {
        site.share(Kind.EXTRACTION, "soap", "larva", 60, 100)
                .share(Kind.READER, "SC-1", "larva", 90, 100);
        site.with(read("a", 1), read("b", 0), read("c", 0), read("d", 1), jar("w"));

        Limit limit = of(limits(Optional.of("SC-1")), "w").groups().get(0);

        Detection shares =
                new Detection(DetectionShare.measured(60, 100), DetectionShare.measured(90, 100));
        assertAgree(limit, DensityEstimator.standard().withDetection(shares), List.of(1, 0, 0, 1));
    }

    /** Another jar of the stand is read with as many as the limit says, and with one less. */
    @Test
    void areOfTheVerdictThatFindingsShow() {
        site.with(read("a", 1), read("b", 2), read("c", 0), partly("p", 4, 10), jar("w"));
        Limit limit = of(limits(Optional.of("SC-1")), "w").groups().get(0);
        int above = limit.above().orElseThrow();

        site.with(read("x", above - 1));
        assertThat(verdictShown()).isEqualTo(Verdict.CANNOT_TELL);
        site.with(read("x", 1).by("desk"));
        assertThat(verdictShown()).isEqualTo(Verdict.ABOVE_THE_LINE);
    }

    @Test
    void oneJarAloneHasNoVerdict() {
        site.with(jar("w"));

        OfFilter filter = of(limits(), "w");

        assertThat(filter.groups())
                .singleElement()
                .satisfies(
                        limit -> {
                            assertThat(limit.below()).isEmpty();
                            assertThat(limit.above()).isEmpty();
                        });
        assertThat(filter.othersToRead()).isZero();
    }

    @Test
    void onlyFiltersThatWillEnterTheMeanHaveThem() {
        site.with(read("a", 1), read("b", 2), jar("w"), jar("w2"));
        site.with(
                jar("hunt").with(Facts.PURPOSE, "targeted"),
                jar("water").with(Facts.FLUID, "water"),
                jar("gone").ended(Step.SPILLED),
                jar("blank").with(Facts.ROLE, "blank"));

        Map<SampleCode, OfFilter> limits = limits();

        assertThat(limits.keySet())
                .extracting(SampleCode::text)
                .containsExactly("hunt", "w", "w2", "water");
        assertThat(of(limits, "hunt").groups()).isEmpty();
        assertThat(of(limits, "water").groups()).isEmpty();
        assertThat(of(limits, "w").groups()).hasSize(1);
        assertThat(of(limits, "w")).isEqualTo(of(limits, "w2"));
    }

    @Test
    void aFilterOfAnotherBenchOrDayIsNoEvidence() {
        site.with(read("a", 9), read("b", 9), read("c", 9), jar("w"));
        Limit before = of(limits(), "w").groups().get(0);
        site.with(
                Jar.of("x", DAY).at("P1", "P1-B9", "Rubia Tarn").counted("larva1", 90),
                Jar.of("y", DAY.plusDays(1)).at("P1", "P1-B3", "Rubia Tarn").counted("larva1", 90));

        assertThat(of(limits(), "w").groups()).containsExactly(before);
    }

    @Test
    void anyKindOfAnimalWithALineHasItsOwn() {
        site.line("FRANOC", "adult", 0.2).line("HEMTLA", "motile", 1);
        site.with(read("a", 1).counted("adult", 0), read("b", 2).counted("adult", 4), jar("w"));

        assertThat(of(limits(), "w").groups())
                .extracting(limit -> new Subject(limit.pest(), limit.group()))
                .containsExactlyInAnyOrder(
                        new Subject("FRANOC", "larva"),
                        new Subject("FRANOC", "adult"),
                        new Subject("HEMTLA", "motile"));
    }

    /** 20 open filters on 4 benches, 3 kinds of animals: with a budget for a slow machine. */
    @Test
    void aRoundIsAnsweredInAMoment() {
        site.line("FRANOC", "adult", 0.2).line("HEMTLA", "motile", 1);
        List<Jar> jars = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            Jar jar = Jar.of("J" + i, DAY).at("P1", "P1-B" + i % 4, "Rubia Tarn");
            jars.add(i < 20 ? jar.counted("larva1", i % 5).counted("adult", i % 3) : jar);
        }
        site.with(jars);
        limits();
        site.with(read("new", 3));

        long start = System.nanoTime();
        Map<SampleCode, OfFilter> limits = limits();
        double seconds = (System.nanoTime() - start) / 1e9;

        assertThat(limits).hasSize(20);
        assertThat(seconds).isLessThan(5);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("someSeeds")
    void areThoseThatLookingAtEveryNumberFinds(long seed) {
        Random random = new Random(seed);
        double line = 0.05 * Math.exp(4 * random.nextDouble());
        DensityEstimator estimator = DensityEstimator.standard().withActionThreshold(line);
        List<Observation> others = new ArrayList<>();
        double mean = line * 10 * Math.exp(2 * random.nextGaussian());
        for (int i = random.nextInt(12); i >= 0; i--) {
            long count = Math.round(-mean * Math.log(random.nextDouble()));
            others.add(new Observation(count, 5 + random.nextInt(10), 1));
        }
        IntFunction<OptionalDouble> chance =
                number -> {
                    List<Observation> all = new ArrayList<>(others);
                    all.add(new Observation(number, 10, 1));
                    return estimator.chanceAboveThreshold(all);
                };

        LimitSearch.Found found = LimitSearch.search(chance, VerdictLimits.STANDARD);

        Limit limit =
                new Limit(
                        "FRANOC",
                        "larva",
                        List.of(),
                        found.below(),
                        found.above(),
                        found.belowFrom().orElse(0));
        for (int number = 0; number <= MANY; number += 1 + number / 20) {
            assertThat(verdict(limit, number))
                    .as("%d with %s", number, others)
                    .isEqualTo(
                            Verdict.of(chance.apply(number).orElseThrow(), VerdictLimits.STANDARD));
        }
    }

    private void assertAgree(Limit limit, DensityEstimator estimator, List<Integer> others) {
        int below = limit.below().orElse(0);
        int above = limit.above().orElseThrow();
        for (int number :
                new int[] {0, 1, 2, 3, below, below + 1, above - 1, above, above + 1, MANY}) {
            List<Observation> observations = new ArrayList<>();
            others.forEach(count -> observations.add(new Observation(count, 10, 1)));
            observations.add(new Observation(number, 10, 1));
            double chance =
                    estimator
                            .withActionThreshold(0.5)
                            .estimate(observations)
                            .probabilityAboveThreshold()
                            .orElseThrow();
            assertThat(verdict(limit, number))
                    .as("%d larvae", number)
                    .isEqualTo(Verdict.of(chance, VerdictLimits.STANDARD));
        }
    }

    private static Verdict verdict(Limit limit, int number) {
        if (number >= limit.above().orElse(Integer.MAX_VALUE)) {
            return Verdict.ABOVE_THE_LINE;
        }
        return number <= limit.below().orElse(-1) && number >= limit.belowFrom()
                ? Verdict.BELOW_THE_LINE
                : Verdict.CANNOT_TELL;
    }

    private Verdict verdictShown() {
        return site
                .showFindings()
                .run(
                        TestSite.SLUG,
                        ZoneOffset.UTC,
                        site.counts.rules(TestSite.SLUG),
                        new Scope(
                                new Subject("FRANOC", "larva"),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                DAY,
                                DAY))
                .series()
                .stream()
                .filter(one -> one.stand().equals(STAND))
                .findFirst()
                .orElseThrow()
                .last()
                .verdict()
                .orElseThrow();
    }

    private static final Stand STAND = new Stand(Optional.of("P1-B3"), Optional.of("Rubia Tarn"));

    private Map<SampleCode, OfFilter> limits() {
        return limits(Optional.empty());
    }

    private Map<SampleCode, OfFilter> limits(Optional<String> reader) {
        return new StopLimits(site.counts)
                .run(TestSite.SLUG, site.counts.rules(TestSite.SLUG), DAY.plusDays(2), reader);
    }

    private static OfFilter of(Map<SampleCode, OfFilter> limits, String code) {
        return Objects.requireNonNull(limits.get(new SampleCode(code)));
    }

    private static Jar jar(String code) {
        return Jar.of(code, DAY).at("P1", "P1-B3", "Rubia Tarn");
    }

    private static Jar read(String code, int larvae) {
        return jar(code).counted("larva1", larvae).counted("larva2", 0);
    }

    private static Jar partly(String code, int larvae, int cells) {
        return read(code, larvae)
                .with(Facts.CELLS_READ, String.valueOf(cells))
                .with(Facts.CELLS_READABLE, "40");
    }
}
