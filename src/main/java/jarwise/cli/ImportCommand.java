package jarwise.cli;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.ColumnOptions;
import jarwise.cli.option.DataOptions;
import jarwise.sample.SamplingMethod;
import jarwise.site.Nursery;
import jarwise.tally.ImportBatch;
import jarwise.usecase.intake.ImportChoices;
import jarwise.usecase.intake.ImportDesk;
import jarwise.usecase.intake.ImportPlan;
import jarwise.usecase.intake.ImportSheet;
import jarwise.usecase.intake.SheetFile;
import jarwise.wire.sheet.ColumnMapping;
import jarwise.wire.sheet.KnownColumn;
import jarwise.wire.sheet.SheetReader;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code jarwise import SHEET}: counts from a sheet go on record. */
@Command(
        name = "import",
        description = "Puts the counts of a sheet on record: whole, or not at all.")
public final class ImportCommand implements Callable<Integer> {

    private final PrintStream out;
    private final InstantSource clock;

    @Parameters(
            paramLabel = "SHEET",
            arity = "0..1",
            description = "CSV (UTF-8) or .xlsx with a header row")
    @Nullable Path sheet;

    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Mixin private final DataOptions data;

    @Option(
            names = "--nursery",
            paramLabel = "SLUG",
            description = "whose counts these are; made if the data have no nursery yet")
    @Nullable String nursery;

    @Mixin private final ColumnOptions columns = new ColumnOptions();

    @Option(names = "--pest", paramLabel = "CODE", description = "pest of rows that name none")
    String pest = "";

    @Option(names = "--stage", paramLabel = "STAGE", description = "stage of rows that name none")
    String stage = "";

    @Option(names = "--method", paramLabel = "METHOD", description = "wash, tap, card or visual")
    @Nullable SamplingMethod method;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            description = "when samples were cut that are new and have no date; today if not said")
    @Nullable LocalDate date;

    @Option(names = "--as-new", description = "a sheet of its own, not an earlier one grown")
    boolean asNew;

    @Option(names = "--add-places", description = "add houses, benches and varieties not known yet")
    boolean addPlaces;

    @Option(names = "--preview", description = "say what would be done, and do nothing")
    boolean preview;

    @Option(names = "--take-back", paramLabel = "IMPORT", description = "take back an import whole")
    @Nullable String takeBack;

    @Option(names = "--reason", paramLabel = "TEXT", description = "why it is taken back")
    String reason = "taken back on the command line";

    @Option(names = "--person", paramLabel = "CODE", description = "role code of who does it")
    String person = "desk";

    /**
     * Makes the command.
     *
     * @param out where the answer goes
     * @param usualAddress where the data lie when no option says
     */
    public ImportCommand(PrintStream out, String usualAddress, InstantSource clock) {
        this.out = out;
        this.data = new DataOptions(usualAddress);
        this.clock = clock;
    }

    @Override
    public Integer call() {
        // Read first: a sheet that cannot be read must not leave a nursery behind.
        Optional<SheetFile> file = takeBack == null ? Optional.of(read()) : Optional.empty();
        try (ImportDesk desk = ImportDesk.open(data.address, clock)) {
            Nursery site =
                    desk.nursery(
                            Optional.ofNullable(nursery),
                            ZoneId.systemDefault(),
                            takeBack == null && !preview);
            if (takeBack != null) {
                ImportBatch batch = desk.takeBack().run(site.slug(), takeBack, person, reason);
                out.print(ImportAnswer.takenBack(batch, answer.json));
            } else {
                out.print(takeIn(desk, site, file.orElseThrow()));
            }
        }
        return Commands.DONE;
    }

    private SheetFile read() {
        if (sheet == null) {
            throw new Refused(Message.of("import.no-sheet"));
        }
        Optional<String> named = Optional.ofNullable(columns.worksheet);
        return SheetFile.read(sheet, String.valueOf(sheet.getFileName()), named);
    }

    private String takeIn(ImportDesk desk, Nursery site, SheetFile file) {
        ImportChoices choices =
                choices(desk.preview().choicesFor(site.slug(), file), file, day(site));
        if (preview) {
            ImportPlan plan = desk.preview().run(site.slug(), file, choices);
            return new ImportAnswer(plan, Optional.empty(), true, addPlaces).print(answer.json);
        }
        ImportSheet.Outcome outcome = desk.importSheet().run(site.slug(), person, file, choices);
        return new ImportAnswer(outcome.plan(), outcome.batch(), false, addPlaces)
                .print(answer.json);
    }

    private LocalDate day(Nursery site) {
        return date == null ? LocalDate.ofInstant(clock.instant(), site.zone()) : date;
    }

    /** What was understood last time, or guessed, with what the options say instead. */
    private ImportChoices choices(ImportChoices usual, SheetFile file, LocalDate day) {
        ColumnMapping mapping = usual.mapping();
        for (Map.Entry<KnownColumn, String> renamed :
                SheetReader.renamed(file.table(), columns.renames).columns().entrySet()) {
            if (columns.renames.containsKey(renamed.getKey().text())) {
                mapping = mapping.with(renamed.getKey(), renamed.getValue());
            }
        }
        if (!columns.countColumns.isEmpty()) {
            mapping = mapping.withCountColumns(columns.countColumns);
        }
        if (columns.frequency != null) {
            mapping = mapping.withFrequency(columns.frequency);
        }
        ImportChoices.Unnamed unnamed =
                new ImportChoices.Unnamed(
                        pest.isBlank() ? usual.unnamed().pest() : Optional.of(pest),
                        stage.isBlank() ? usual.unnamed().stage() : Optional.of(stage),
                        method == null ? usual.unnamed().method() : method,
                        Optional.of(day));
        return new ImportChoices(
                Optional.ofNullable(columns.worksheet),
                mapping,
                unnamed,
                usual.pestWords(),
                usual.stageWords(),
                asNew,
                addPlaces);
    }
}
