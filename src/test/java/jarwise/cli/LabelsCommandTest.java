package jarwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.cli.option.CommandEntry;
import jarwise.plan.RoundPlans;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.SiteStore;
import jarwise.usecase.rounds.RegisterRound;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

@Tag("slow")
class LabelsCommandTest {

    private static final InstantSource CLOCK =
            InstantSource.fixed(Instant.parse("2026-05-08T20:00:00Z"));
    private static final String ROUND = "2026-05-11-a";

    @TempDir Path folder = Path.of("");
    private String address = "";

    @BeforeEach
    void registerARound() {
        address = DatabaseUnderTest.SQLITE.freshAddress(folder);
        try (Database database = Database.open(address)) {
            new SiteStore(database).save(new Nursery("lane", "Lane", ZoneOffset.UTC, "en"));
            new RegisterRound(database).run("lane", RoundPlans.small(ROUND, "A-"));
        }
    }

    private CommandRun run(String... args) {
        List<String> all = new ArrayList<>(List.of("labels"));
        all.addAll(List.of(args));
        CommandEntry entry =
                new CommandEntry("labels", "", out -> new LabelsCommand(out, address, CLOCK));
        return CommandRun.of(new Commands(List.of(entry), false), all.toArray(String[]::new));
    }

    private static String textOf(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void writes_three_labels_of_every_jar_and_says_how_to_print_them() throws IOException {
        Path file = folder.resolve("labels.pdf");
        CommandRun run = run("--round", ROUND, "--out", file.toString(), "--sheet", "a4-24");
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(Commands.DONE);
        assertThat(run.out())
                .isEqualTo(
                        ("Lid, base and voucher of 4 jars of round %s are in %s."
                                        + " Print it at 100 %%.%n")
                                .formatted(ROUND, file));
        String text = textOf(file);
        for (int jar = 1; jar <= 4; jar++) {
            String code = "A-" + jar;
            assertThat(Pattern.compile(code).matcher(text).results().count()).isEqualTo(3);
        }
        assertThat(text).contains("Monday 11 May 2026", "LID", "BASE", "VOUCHER", "blank");
    }

    @Test
    void a_test_page_needs_no_data() throws IOException {
        Path file = folder.resolve("test.pdf");
        CommandRun run =
                run(
                        "--test-page",
                        "--sheet",
                        "letter-80",
                        "--nudge",
                        "0.5,-1",
                        "--data",
                        folder.resolve("nothing").toString(),
                        "--out",
                        file.toString());
        assertThat(run.code()).as(run.err()).isEqualTo(Commands.DONE);
        assertThat(textOf(file)).contains("Test page for letter-80", "80", "100 mm");
        assertThat(folder.resolve("nothing")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "--round 2026-05-11-z --out x.pdf; The latest is 2026-05-11-a.",
                "--round 2026-05-11-a --out x.html; must end in .pdf",
                "--round 2026-05-11-a --out no/such/folder/x.pdf; Maybe the folder is not there",
                "--round 2026-05-11-a; --out",
                "--out x.pdf; Which round",
                "--round 2026-05-11-a --out x.pdf --sheet a4-99; a4-21, a4-24",
                "--round 2026-05-11-a --out x.pdf --nudge NaN,1; Maybe 0.5,-1",
                "--round 2026-05-11-a --out x.pdf --nudge 40,1; less than 10 mm",
                "--round 2026-05-11-a --out x.pdf --start 0; 1 to 21",
                "--round 2026-05-11-a --out x.pdf --start -3; 1 to 21",
                "--round 2026-05-11-a --out x.pdf --nursery elsewhere; lane"
            })
    void what_is_wrong_is_said_in_one_paragraph(String args, String said) {
        CommandRun run = run(args.split(" "));
        assertThat(run.code()).isEqualTo(Commands.WRONG_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said).doesNotContain("\tat ");
        assertThat(run.err().strip()).doesNotContain("\n\n");
        assertThat(Path.of("x.pdf")).doesNotExist();
    }

    @Test
    void the_guide_names_every_option() throws IOException {
        String guide = Files.readString(Path.of("docs/guide/labels.md"));
        CommandLine parser = new CommandLine(new LabelsCommand(System.out, "", CLOCK));
        for (String option : parser.getCommandSpec().optionsMap().keySet()) {
            assertThat(option.length() == 2 || guide.contains("`" + option)).as(option).isTrue();
        }
    }
}
