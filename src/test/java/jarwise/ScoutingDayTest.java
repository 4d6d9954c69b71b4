package jarwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.decision.ActionThreshold;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Verdict;
import jarwise.render.report.Letter;
import jarwise.render.words.Language;
import jarwise.site.Nursery;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundStore;
import jarwise.store.work.TreatmentStore;
import jarwise.usecase.OpenData;
import jarwise.usecase.OpenSite;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.VerifyData;
import jarwise.usecase.WriteReport;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.intake.ImportChoices;
import jarwise.usecase.intake.ImportDesk;
import jarwise.usecase.intake.ImportSheet;
import jarwise.usecase.intake.SheetFile;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One day of scouting on a real database, from a sheet of counts to the grower's letter: what
 * ARCHITECTURE.md tells, run. The counts are red mites on 150 apple leaves (Bliss and Fisher 1953,
 * Biometrics 9:176-200); mean, k and log-likelihood were worked out with R 4.2.2 and MASS 7.3-58.2.
 */
class ScoutingDayTest {

    private static final Subject MITES = new Subject("TETRUR", "motile");
    private static final LocalDate MONDAY = LocalDate.of(2026, 5, 4);
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    @TempDir Path folder;
    private Database data;
    private ImportDesk desk;
    private Nursery nursery;

    @BeforeEach
    void openTheData() {
        data = OpenData.at(folder.toString());
        desk = new ImportDesk(data, InstantSource.fixed(NOON));
        nursery =
                new OpenSite(new SiteStore(data), new SampleStore(data))
                        .name("Orchard End", "UTC", "en");
    }

    @AfterEach
    void closeTheData() {
        data.close();
    }

    @Test
    void fromASheetOfCountsToTheLetter() {
        theSiteDrawsItsLine(0.5);

        ImportSheet.Outcome first = aSheetIsDropped("freq_red_mites.csv");
        assertThat(first.plan().newSamples()).isEqualTo(150);

        ImportSheet.Outcome again = aSheetIsDropped("freq_red_mites.csv");
        assertThat(again.plan().changesAnything()).as("nothing is counted twice").isFalse();

        Finding finding = whatIsKnown();
        DensityEstimate density = finding.estimated().orElseThrow().density();
        assertThat(density.estimate()).isCloseTo(1.1466667, within(1e-7));
        assertThat(density.k().orElseThrow()).isCloseTo(1.0245924, within(1e-6));
        assertThat(density.logLikelihood()).isCloseTo(-222.4371536, within(1e-6));
        assertThat(finding.verdict()).contains(Verdict.ABOVE_THE_LINE);

        assertThat(theLetter().answer()).startsWith("Decide today");

        VerifyData.Report report = new VerifyData().run(folder.toString());
        assertThat(report.isWhole()).as("the record is whole and unaltered").isTrue();
    }

    private void theSiteDrawsItsLine(double density) {
        ActionThreshold line =
                new ActionThreshold(
                        MITES.pest(),
                        MITES.stageGroup(),
                        density,
                        MONDAY,
                        "HG-1",
                        "Leaves bronze above it.",
                        "site's own");
        new SettingsStore(data).add(nursery.slug(), line, NOON);
    }

    private ImportSheet.Outcome aSheetIsDropped(String name) {
        Path path = Path.of("src/test/resources/reference/data", name);
        SheetFile sheet = SheetFile.read(path, name, Optional.empty());
        ImportChoices choices =
                desk.preview()
                        .choicesFor(nursery.slug(), sheet)
                        .about(MITES.pest(), MITES.stageGroup())
                        .on(MONDAY);
        return desk.importSheet().run(nursery.slug(), "SC-1", sheet, choices);
    }

    private ShowFindings showFindings() {
        SiteCounts counts =
                new SiteCounts(
                        new SampleStore(data),
                        new SettingsStore(data),
                        new PestStore(data),
                        new EventStore(data));
        return new ShowFindings(counts, new SiteStore(data), new TreatmentStore(data));
    }

    private Finding whatIsKnown() {
        Scope all =
                new Scope(
                        MITES,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        MONDAY.minusWeeks(1),
                        MONDAY);
        ShowFindings show = showFindings();
        Findings findings =
                show.run(nursery.slug(), ZoneOffset.UTC, show.counts().rules(nursery.slug()), all);
        assertThat(findings.series()).as("no bench was named: one group").hasSize(1);
        return findings.series().get(0).last();
    }

    private Letter theLetter() {
        WriteReport.Request toTheGrower =
                new WriteReport.Request(
                        nursery,
                        Optional.of(MITES),
                        Language.ENGLISH,
                        Optional.of("SC-1"),
                        NOON.atZone(ZoneOffset.UTC));
        return new WriteReport(showFindings(), new RoundStore(data)).run(toTheGrower).orElseThrow();
    }
}
