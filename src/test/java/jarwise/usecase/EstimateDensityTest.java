package jarwise.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.decision.Evidence.Flag;
import jarwise.decision.Evidence.LeftOut;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Verdict;
import jarwise.sample.DetectionValue;
import jarwise.sample.Step;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.tally.Facts;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Jar;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.TestSite;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EstimateDensityTest {

    private static final LocalDate DAY = TestSite.START;
    private static final Subject LARVAE = new Subject("FRANOC", "larva");
    private static final Subject MITES = new Subject("HEMTLA", "motile");

    @TempDir private Path folder;
    private TestSite site;

    @BeforeEach
    void openSite() {
        site = new TestSite(folder);
    }

    @AfterEach
    void closeSite() {
        site.close();
    }

    /**
     * Mites on 150 apple leaves: Bliss and Fisher (1953), Biometrics 9:176-200, k 1.0246. Standard
     * error of the density 0.1272780 from expected information (R 4.2.2, MASS 7.3-58.2).
     */
    @Test
    void givesThePublishedMeanOfTheRedMitesFromTheDatabase() {
        List<Jar> leaves = new ArrayList<>();
        int[] frequency = {70, 38, 17, 10, 9, 3, 2, 1};
        for (int mites = 0; mites < frequency.length; mites++) {
            for (int i = 0; i < frequency[mites]; i++) {
                leaves.add(
                        Jar.of("leaf-" + mites + "-" + i, DAY)
                                .of("HEMTLA")
                                .with(Facts.SAMPLING_UNITS, "1")
                                .counted("motile", mites));
            }
        }
        site.with(leaves);

        DensityEstimate density = density(only(MITES));

        assertThat(density.sampleSize()).isEqualTo(150);
        assertThat(density.individuals()).isEqualTo(172);
        assertThat(density.estimate()).isCloseTo(1.1466667, within(1e-7));
        assertThat(density.standardError().orElseThrow()).isCloseTo(0.1272780, within(1e-6));
        assertThat(density.k().orElseThrow()).isCloseTo(1.0245924, within(1e-5));
    }

    /**
     * Counts under six sprays: Beall (1942), Biometrika 32:243-262, as in R's data set
     * InsectSprays; ratios of means from R 4.2.2, MASS 7.3-58.2, glm.nb(count ~ spray).
     */
    @Test
    void givesTheRatiosOfTheInsectSpraysWhereSpraysAreVarieties() {
        Map<String, List<Integer>> sprays = new TreeMap<>();
        sprays.put("A", List.of(10, 7, 20, 14, 14, 12, 10, 23, 17, 20, 14, 13));
        sprays.put("B", List.of(11, 17, 21, 11, 16, 14, 17, 17, 19, 21, 7, 13));
        sprays.put("C", List.of(0, 1, 7, 2, 3, 1, 2, 1, 3, 0, 1, 4));
        sprays.forEach(
                (spray, counts) ->
                        site.with(
                                TestSite.jars(spray, DAY, "adult", counts)
                                        .map(jar -> jar.with(Facts.VARIETY, spray))
                                        .toList()));

        Findings findings = show(new Subject("FRANOC", "adult"), DAY, DAY);

        assertThat(mean(findings, "A") / mean(findings, "B"))
                .isCloseTo(0.945652173913044, within(1e-9));
        assertThat(mean(findings, "A") / mean(findings, "C")).isCloseTo(6.96, within(1e-9));
    }

    private static double mean(Findings findings, String variety) {
        return findings.series().stream()
                .filter(one -> one.stand().variety().equals(Optional.of(variety)))
                .mapToDouble(one -> density(one.last()).estimate())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void leavesOutWhatSaysNothingOfTheMeanAndCountsIt() {
        site.with(
                jar("used").counted("larva1", 2).counted("larva2", 1),
                jar("water").with(Facts.FLUID, "water").counted("larva1", 0),
                jar("hunted").with(Facts.PURPOSE, "targeted").counted("larva1", 40),
                jar("spilled").ended(Step.SPILLED),
                jar("waiting"),
                jar("blank").with(Facts.ROLE, "blank").counted("larva1", 9));

        Finding finding = only(LARVAE);

        assertThat(finding.evidence().samples()).isEqualTo(1);
        assertThat(finding.evidence().individuals()).isEqualTo(3);
        assertThat(finding.evidence().notRead()).isEqualTo(1);
        assertThat(finding.evidence().leftOut())
                .isEqualTo(Map.of(LeftOut.PLAIN_WATER, 1, LeftOut.TARGETED, 1, LeftOut.LOST, 1));
    }

    @Test
    void countsOnlyTheShareOfTheFilterThatWasRead() {
        for (int i = 0; i < 4; i++) {
            site.with(
                    jar("half-" + i)
                            .with(Facts.CELLS_READ, "20")
                            .with(Facts.CELLS_READABLE, "40")
                            .counted("larva1", 1));
        }

        Finding finding = only(LARVAE);

        // 4 larvae in 4 jars of 10 growing points, half of each filter: 4 / (4 * 10 * 0.5)
        assertThat(density(finding).estimate()).isCloseTo(0.2, within(1e-9));
        assertThat(finding.evidence().flags()).containsEntry(Flag.PARTLY_READ, 4);
    }

    @Test
    void correctsForTheSharesAdoptedOnThatDay() {
        site.share(DetectionValue.Kind.EXTRACTION, "soap", "larva", 60, 100)
                .share(DetectionValue.Kind.READER, "SC-1", "larva", 90, 100);
        for (int i = 0; i < 4; i++) {
            site.with(jar("jar-" + i).counted("larva1", 2));
        }

        Finding finding = only(LARVAE);

        // means of Beta(60.5, 40.5) and Beta(90.5, 10.5)
        double share = 60.5 / 101 * 90.5 / 101;
        assertThat(density(finding).estimate()).isCloseTo(0.2 / share, within(1e-9));
        assertThat(finding.estimated().orElseThrow().basis().efficiencyMeasured()).isTrue();
        assertThat(finding.evidence().countedDensity()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void flagsFiltersReadEarlyOrLateAndPackedJars() {
        site.with(
                jar("late").readAfter(Duration.ofHours(80)).counted("larva1", 0),
                jar("early").readAfter(Duration.ofHours(18)).counted("larva1", 0),
                jar("packed").with(Facts.FILL, "packed").counted("larva1", 0));

        assertThat(only(LARVAE).evidence().flags())
                .isEqualTo(Map.of(Flag.LATE, 1, Flag.EARLY, 1, Flag.PACKED, 1));
    }

    @Test
    void holdsTheDensityAgainstTheLineOfTheDay() {
        site.line("FRANOC", "larva", 0.1);
        for (int i = 0; i < 8; i++) {
            site.with(jar("jar-" + i).counted("larva1", 5));
        }

        Finding finding = only(LARVAE);

        assertThat(finding.verdict()).contains(Verdict.ABOVE_THE_LINE);
        assertThat(finding.judgement().orElseThrow().moreSamples()).isEmpty();
    }

    @Test
    void saysHowManyJarsWouldTell() {
        site.line("FRANOC", "larva", 0.1);
        for (int i = 0; i < 4; i++) {
            site.with(jar("jar-" + i).counted("larva1", 0));
        }

        Finding finding = only(LARVAE);

        assertThat(finding.verdict()).contains(Verdict.CANNOT_TELL);
        int more = finding.judgement().orElseThrow().moreSamples().orElseThrow();
        for (int i = 0; i < more; i++) {
            site.with(jar("more-" + i).counted("larva1", 0));
        }
        assertThat(only(LARVAE).verdict()).contains(Verdict.BELOW_THE_LINE);
    }

    @Test
    void learnsKFromThirtyEarlierJarsOfTheSite() {
        site.with(
                TestSite.jars("old", DAY, "larva1", Collections.nCopies(40, 3))
                        .map(jar -> jar.at("P1", "P1-B1", "Rubia Tarn"))
                        .toList());
        LocalDate later = DAY.plusDays(7);
        site.with(
                Jar.of("new-1", later).at("P1", "P1-B3", "Rubia Tarn").counted("larva1", 2),
                Jar.of("new-2", later).at("P1", "P1-B3", "Rubia Tarn").counted("larva1", 3));

        Findings findings = show(LARVAE, DAY, later);

        assertThat(basisOf(findings, "P1-B1").historySamples()).isZero();
        assertThat(basisOf(findings, "P1-B3").historySamples()).isEqualTo(40);
        assertThat(basisOf(findings, "P1-B3").prior().medianK()).isGreaterThan(5);
    }

    private static jarwise.decision.Basis basisOf(Findings findings, String bench) {
        return findings.series().stream()
                .filter(one -> one.stand().bench().equals(Optional.of(bench)))
                .findFirst()
                .orElseThrow()
                .last()
                .estimated()
                .orElseThrow()
                .basis();
    }

    private static Jar jar(String code) {
        return Jar.of(code, DAY).at("P1", "P1-B3", "Rubia Tarn");
    }

    private Finding only(Subject subject) {
        Findings findings = show(subject, DAY, DAY);
        assertThat(findings.series()).hasSize(1);
        return findings.series().get(0).last();
    }

    private Findings show(Subject subject, LocalDate from, LocalDate to) {
        return site.showFindings()
                .run(
                        TestSite.SLUG,
                        ZoneOffset.UTC,
                        site.counts.rules(TestSite.SLUG),
                        new Scope(
                                subject,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                from,
                                to));
    }

    private static DensityEstimate density(Finding finding) {
        return finding.estimated().orElseThrow().density();
    }
}
