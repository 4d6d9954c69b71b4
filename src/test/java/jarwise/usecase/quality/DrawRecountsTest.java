package jarwise.usecase.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.sample.CollectedSample;
import jarwise.sample.DetectionValue;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.store.TalliedSample;
import jarwise.tally.Facts;
import jarwise.usecase.findings.Jar;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.samples.SampleLog;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrawRecountsTest {

    private static final LocalDate DAY = TestSite.START.plusDays(7);
    private static final Instant NOW = Instant.parse("2026-03-11T15:00:00Z");

    @TempDir Path folder;
    private TestSite site;
    private DrawRecounts draw;

    @BeforeEach
    void open() {
        site = new TestSite(folder);
        draw =
                new DrawRecounts(
                        new SampleLog(site.database, () -> NOW),
                        site.samples,
                        site.site,
                        site.counts);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private TalliedSample only(Jar jar) {
        site.with(jar);
        return site.samples.tallied(TestSite.SLUG, DAY, DAY).get(0);
    }

    private RecountChance chance() {
        return new RecountChance(site.counts.rules(TestSite.SLUG));
    }

    /** Ten growing points and a line of 0.1: one find is on the line, four are four times over. */
    @ParameterizedTest(name = "{0} larvae weigh {1}")
    @CsvSource({"0, 1", "1, 3", "4, 3", "5, 1"})
    void filtersNearTheLineWeighThree(int larvae, int weight) {
        site.line("FRANOC", "larva", 0.1).line("FRANOC", "adult", 0.1);
        Jar jar =
                Jar.of("J1", DAY)
                        .counted("larva1", larvae)
                        .counted("larva2", 0)
                        .counted("adult", 0);

        assertThat(chance().weight(only(jar))).isEqualTo(weight);
    }

    @ParameterizedTest(name = "{0} larvae weigh {1}")
    @CsvSource({"0, 1", "1, 3", "3, 3", "4, 1"})
    void withoutALineFewFindsWeighThree(int larvae, int weight) {
        Jar jar = Jar.of("J1", DAY).counted("larva1", larvae).counted("larva2", 0);

        assertThat(chance().weight(only(jar))).isEqualTo(weight);
    }

    @Test
    void theDensityIsCorrectedBeforeItIsHeldAgainstTheLine() {
        site.line("FRANOC", "larva", 0.1).line("FRANOC", "adult", 0.1);
        TalliedSample four = only(Jar.of("J1", DAY).counted("larva1", 4).counted("larva2", 0));
        assertThat(chance().weight(four)).isEqualTo(3);

        site.share(DetectionValue.Kind.EXTRACTION, "soap", "larva", 10, 20);
        assertThat(chance().weight(four)).as("eight times the line").isEqualTo(1);
    }

    @Test
    void theMeanWeightOfTheSiteIsDividedOut() {
        site.line("FRANOC", "larva", 0.1).line("FRANOC", "adult", 0.1);
        List<TalliedSample> before = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            site.with(
                    Jar.of("B" + i, DAY.minusDays(7))
                            .counted("larva1", i < 5 ? 1 : 0)
                            .counted("adult", 0));
        }
        before.addAll(site.samples.tallied(TestSite.SLUG, DAY.minusDays(7), DAY.minusDays(7)));
        TalliedSample near = only(Jar.of("J1", DAY).counted("larva1", 1));

        // ten of weight 1 to begin with, five of 3 and five of 1: the mean is 30/20
        assertThat(chance().of(near, before)).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void aboutOneFilterInTenIsDrawnAndNoneTwice() {
        site.line("FRANOC", "larva", 0.1);
        for (int week = 0; week < 6; week++) {
            List<Jar> jars = new ArrayList<>();
            for (int i = 0; i < 100; i++) {
                jars.add(
                        Jar.of("W%d-%02d".formatted(week, i), DAY.plusWeeks(week))
                                .counted("larva1", i % 4 == 0 ? 2 : 0)
                                .counted("larva2", 0)
                                .counted("adult", 0));
            }
            List<SampleCode> codes = codes(week);
            draw.around(TestSite.SLUG, codes, () -> site.with(jars));
            draw.around(TestSite.SLUG, codes, () -> site.with(jars));
        }
        List<TalliedSample> drawn =
                site.samples.tallied(TestSite.SLUG, List.of(SampleRole.RECOUNT));
        long near = drawn.stream().filter(this::isNear).count();

        // 60 expected; three standard deviations are about 22
        assertThat(drawn).hasSizeBetween(38, 82);
        // a quarter of the filters, with three times the weight: half of those drawn
        assertThat((double) near / drawn.size()).isBetween(0.3, 0.7);
    }

    private boolean isNear(TalliedSample recount) {
        String code = recount.sample().recountOf().orElseThrow().text();
        return Integer.parseInt(code.substring(3)) % 4 == 0;
    }

    private static List<SampleCode> codes(int week) {
        List<SampleCode> codes = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            codes.add(new SampleCode("W%d-%02d".formatted(week, i)));
        }
        return codes;
    }

    @Test
    void aRecountLiesWhereItsFilterWasCutAndNotesWhoCountedFirst() {
        List<SampleCode> codes = new ArrayList<>();
        List<Jar> jars = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            codes.add(new SampleCode("J" + i));
            jars.add(Jar.of("J" + i, DAY).at("P1", "P1-B3", "Rubia Tarn").counted("larva1", 2));
        }
        draw.around(TestSite.SLUG, codes, () -> site.with(jars));
        CollectedSample again =
                site.samples.tallied(TestSite.SLUG, List.of(SampleRole.RECOUNT)).get(0).sample();

        assertThat(again.code().text()).endsWith(DrawRecounts.SUFFIX);
        assertThat(again.state()).isEqualTo(SampleState.PLANNED);
        assertThat(again.place().bench()).contains("P1-B3");
        assertThat(again.samplingUnits()).isEqualTo(10);
        assertThat(again.collectedOn()).contains(LocalDate.of(2026, 3, 11));
        assertThat(again.attributes()).containsEntry(DrawRecounts.NOT_BY, "SC-1");
    }

    @Test
    void onlyCropFiltersAreDrawn() {
        List<SampleCode> codes = new ArrayList<>();
        List<Jar> jars = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            codes.add(new SampleCode("B" + i));
            jars.add(Jar.of("B" + i, DAY).with(Facts.ROLE, "blank").counted("larva1", 2));
        }
        draw.around(TestSite.SLUG, codes, () -> site.with(jars));

        assertThat(site.samples.count(TestSite.SLUG, SampleFilter.ALL)).isEqualTo(100);
    }
}
