package jarwise.usecase.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import jarwise.decision.Finding.Subject;
import jarwise.sample.DetectionValue;
import jarwise.sample.SampleCode;
import jarwise.sample.SeededFilter;
import jarwise.sample.SeededFilter.Placed;
import jarwise.tally.Facts;
import jarwise.usecase.findings.Jar;
import jarwise.usecase.findings.TestSite;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShowQualityTest {

    private static final Subject LARVAE = new Subject("FRANOC", "larva");
    private static final LocalDate DAY = TestSite.START;

    @TempDir Path folder;
    private TestSite site;

    @BeforeEach
    void open() {
        site = new TestSite(folder);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private Quality quality() {
        return new ShowQuality(site.counts, site.samples, site.events, site.seeded)
                .run(TestSite.SLUG, DAY.plusDays(60));
    }

    private MeasuredShare only() {
        List<MeasuredShare> shares = quality().shares();
        assertThat(shares).hasSize(1);
        return shares.get(0);
    }

    private static Jar seeded(String code, LocalDate day, int found) {
        return known(code, day, "seeded").counted("larva1", found).counted("larva2", 0);
    }

    private static Jar known(String code, LocalDate day, String role) {
        return Jar.of(code, day)
                .with(Facts.ROLE, role)
                .with(Facts.KNOWN, "10")
                .with(Facts.OTHER + "known_pest", "FRANOC")
                .with(Facts.OTHER + "known_stage", "larva");
    }

    @Test
    void addsUpWhatAReaderFoundOnSeededFilters() {
        site.with(
                seeded("S1", DAY, 8),
                seeded("S2", DAY.plusDays(1), 9),
                seeded("S3", DAY.plusDays(40), 7));
        MeasuredShare share = only();

        assertThat(share.kind()).isEqualTo(DetectionValue.Kind.READER);
        assertThat(share.whose()).isEqualTo("SC-1");
        assertThat(share.subject()).isEqualTo(LARVAE);
        assertThat(share.finds()).contains(new KnownFinds(3, 24, 30, 0, DAY, DAY.plusDays(40)));
        // Beta(24.5, 6.5): the mean by hand, the limits from SciPy's beta.ppf (own arithmetic)
        assertThat(share.estimate().share()).isCloseTo(24.5 / 31, within(1e-12));
        assertThat(share.estimate().adopted().found()).isEqualTo(24);
        assertThat(share.months().keySet())
                .containsExactly(YearMonth.of(2026, 3), YearMonth.of(2026, 4));
    }

    @Test
    void saysThatItCannotTellFromTwoFilters() {
        site.with(seeded("S1", DAY, 8), seeded("S2", DAY, 9));
        MeasuredShare share = only();

        assertThat(share.estimate().tells()).isFalse();
        assertThat(share.readingsNeeded()).hasValue(5);
    }

    @Test
    void canTellFromFiveFiltersWithNearLimits() {
        site.with(
                seeded("S1", DAY, 8),
                seeded("S2", DAY, 9),
                seeded("S3", DAY, 8),
                seeded("S4", DAY, 9),
                seeded("S5", DAY, 8));

        assertThat(only().estimate().tells()).isTrue();
        assertThat(only().readingsNeeded()).isEmpty();
    }

    @Test
    void moreThanWerePlacedAndOtherStagesAreFalseFinds() {
        site.with(
                known("S1", DAY, "seeded")
                        .counted("larva1", 11)
                        .counted("larva2", 1)
                        .counted("adult", 2));

        assertThat(only().finds()).contains(new KnownFinds(1, 10, 10, 4, DAY, DAY));
    }

    /** Two larvae and an adult lie there; one larva is found, the adult, and one adult too many. */
    @Test
    void aReadingOfAKnownFilterTellsOfEachKindOfAnimalOnIt() {
        tray("TRAY", Optional.empty());
        site.with(reading("TRAY.s-3f0c9a-1", DAY), reading("TRAY.s-3f0c9a-2", DAY.plusDays(1)));

        assertThat(quality().shares())
                .extracting(MeasuredShare::subject, share -> share.finds().orElseThrow())
                .containsExactlyInAnyOrder(
                        tuple(LARVAE, new KnownFinds(2, 2, 4, 2, DAY, DAY.plusDays(1))),
                        tuple(
                                new Subject("FRANOC", "adult"),
                                new KnownFinds(2, 2, 2, 2, DAY, DAY.plusDays(1))));
        assertThat(quality().leftOut()).isZero();
    }

    @Test
    void aReadingOfAFilterThatWasRetiredBeforeSaysNothing() {
        tray("TRAY", Optional.of(DAY));
        site.with(reading("TRAY.s-3f0c9a-1", DAY));

        assertThat(quality().shares()).isEmpty();
    }

    private void tray(String code, Optional<LocalDate> retired) {
        List<Placed> placed =
                List.of(
                        new Placed("A3", "FRANOC", "larva1"),
                        new Placed("D5", "FRANOC", "larva2"),
                        new Placed("D6", "FRANOC", "adult"));
        site.seeded.put(
                TestSite.SLUG,
                new SeededFilter(
                        new SampleCode(code), "Tray", placed, DAY.minusDays(9), "SC-1", retired),
                Instant.EPOCH);
    }

    private static Jar reading(String code, LocalDate day) {
        return Jar.of(code, day)
                .with(Facts.ROLE, "seeded")
                .with(Facts.KNOWN, "3")
                .counted("larva1", 1)
                .counted("larva2", 0)
                .counted("adult", 2);
    }

    @Test
    void aFilterOfWhichNobodyNotedWhatIsOnItSaysNothing() {
        site.with(
                Jar.of("S1", DAY).with(Facts.ROLE, "seeded").counted("larva1", 4),
                known("S2", DAY, "seeded")
                        .with(Facts.CELLS_READABLE, "40")
                        .with(Facts.CELLS_READ, "20")
                        .counted("larva1", 4));

        assertThat(quality().shares()).isEmpty();
        assertThat(quality().leftOut()).isEqualTo(2);
    }

    @Test
    void keepsFluidsOfSpikesApart() {
        site.with(
                known("P1", DAY, "spike").counted("larva1", 6),
                known("P2", DAY, "spike").with(Facts.FLUID, "alcohol").counted("larva1", 5));

        assertThat(quality().shares())
                .extracting(MeasuredShare::whose)
                .containsExactly("alcohol", "soap");
    }

    @Test
    void whatTheReaderOverlooksIsTakenOutOfASpike() {
        site.with(
                seeded("S1", DAY, 8),
                seeded("S2", DAY, 8),
                known("P1", DAY, "spike").counted("larva1", 4),
                known("P2", DAY, "spike").with(Facts.READER, "SC-2").counted("larva1", 4));
        MeasuredShare soap = quality().shares().get(1);

        // 8 of 20 alone would be about 0.40; SC-1 overlooks a fifth of what was there
        assertThat(soap.finds().orElseThrow().found()).isEqualTo(8);
        assertThat(soap.estimate().share()).isBetween(0.43, 0.48);
        assertThat(soap.readersApart()).as("SC-2 was never measured").isFalse();
    }

    @Test
    void washesOfOneJarTellWhatAWashBringsOff() {
        site.with(
                Jar.of("J1", DAY).counted("larva1", 38).counted("larva2", 0),
                washedAgain("J1.w2", "2").counted("larva1", 26).counted("larva2", 0),
                washedAgain("J1.w3", "3").counted("larva1", 12).counted("larva2", 0));
        MeasuredShare soap = only();

        assertThat(soap.kind()).isEqualTo(DetectionValue.Kind.EXTRACTION);
        assertThat(soap.finds()).isEmpty();
        assertThat(soap.washSeries()).isEqualTo(1);
        // reference/extraction-efficiency/posterior.csv, third row
        assertThat(soap.estimate().share()).isCloseTo(0.393567759443, within(1e-6));
    }

    @Test
    void aSeriesWithAGapSaysNothing() {
        site.with(
                Jar.of("J1", DAY).counted("larva1", 38),
                washedAgain("J1.w3", "3").counted("larva1", 12));

        assertThat(quality().shares()).isEmpty();
    }

    private static Jar washedAgain(String code, String number) {
        return Jar.of(code, DAY)
                .with(Facts.ROLE, "repeat_wash")
                .with(Facts.REPEAT_OF, "J1")
                .with(Facts.WASH_NUMBER, number);
    }

    @Test
    void theFirstCountStaysHiddenUntilTheSecondIsIn() {
        site.with(
                Jar.of("J1", DAY).counted("larva1", 6),
                Jar.of("R1", DAY).with(Facts.ROLE, "recount").with(Facts.RECOUNT_OF, "J1"));

        Recount open = quality().recounts().get(0);
        assertThat(open.counted()).isFalse();
        assertThat(open.counts()).isEmpty();
        assertThat(open.firstReader()).contains("SC-1");
    }

    @Test
    void holdsTwoReadersOfTheSameFiltersTogether() {
        int[][] counts = {{9, 6}, {4, 4}, {12, 8}, {0, 0}};
        for (int i = 0; i < counts.length; i++) {
            site.with(
                    Jar.of("J" + i, DAY).counted("larva1", counts[i][0]).counted("larva2", 0),
                    Jar.of("R" + i, DAY)
                            .with(Facts.ROLE, "recount")
                            .with(Facts.RECOUNT_OF, "J" + i)
                            .with(Facts.READER, "SC-2")
                            .counted("larva1", counts[i][1])
                            .counted("larva2", 0));
        }
        ReaderAgreement larvae =
                quality().agreements().stream()
                        .filter(one -> one.subject().equals(LARVAE))
                        .findFirst()
                        .orElseThrow();

        assertThat(larvae.one()).isEqualTo("SC-1");
        assertThat(larvae.other()).isEqualTo("SC-2");
        assertThat(larvae.pairs()).hasSize(3);
        assertThat(larvae.empty()).isEqualTo(1);
        assertThat(larvae.ratio().orElseThrow().estimate()).isCloseTo(18.5 / 25.5, within(1e-12));
        // (3 − √6 + 0 + √12 − √8)/3, by hand
        assertThat(larvae.limits().orElseThrow().bias()).isCloseTo(0.395394, within(1e-6));
        assertThat(larvae.outsideBand()).isEmpty();
    }

    @Test
    void namesTheSessionOfABlankWithAFind() {
        site.with(
                Jar.of("B1", DAY).with(Facts.ROLE, "blank").counted("larva1", 0),
                Jar.of("B2", DAY.plusDays(7)).with(Facts.ROLE, "blank").counted("larva2", 1));
        Blanks blanks = quality().blanks();

        assertThat(blanks.read()).isEqualTo(2);
        assertThat(blanks.withFinds()).hasSize(1);
        assertThat(blanks.withFinds().get(0).sample().collectedOn()).contains(DAY.plusDays(7));
        assertThat(blanks.withFinds().get(0).individuals().values()).containsExactly(1L);
    }
}
