package jarwise.web.intake;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.tally.ImportBatch;
import jarwise.usecase.MakeTemplate;
import jarwise.usecase.intake.ImportDesk;
import jarwise.usecase.intake.ImportPlan;
import jarwise.usecase.intake.ImportSheet;
import jarwise.usecase.intake.SheetFile;
import jarwise.usecase.intake.UploadShelf;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.wire.sheet.TemplateSheet;
import jarwise.wire.table.SheetRefused;
import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Counts in: a sheet is dropped, its columns are checked, then it is taken in or refused whole. */
public final class ImportPages implements Pages {

    private static final String NOBODY = "desk";
    private static final String XLSX_TYPE =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final Server.Kit kit;
    private final ImportDesk desk;
    private final UploadShelf shelf;

    /** Makes the pages of one set of data. */
    public ImportPages(Server.Kit kit, ImportDesk desk, UploadShelf shelf) {
        this.kit = kit;
        this.desk = desk;
        this.shelf = shelf;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/import", http -> start(http, Optional.empty()));
        routes.post("/{nursery}/import", this::keep);
        routes.get("/{nursery}/import/{sheet}", this::preview);
        routes.post("/{nursery}/import/{sheet}", this::takeIn);
        routes.post("/{nursery}/take-back", this::takeBack);
        routes.get("/{nursery}/sheet-template.csv", http -> template(http, "csv"));
        routes.get("/{nursery}/sheet-template.xlsx", http -> template(http, "xlsx"));
    }

    private void start(Context http, Optional<SheetRefused> refused) {
        Frame frame = kit.frames().ofSite(http, "import");
        List<ImportBatch> batches = desk.batches(slug(frame));
        Optional<ImportBatch> done =
                batches.stream()
                        .filter(batch -> batch.id().equals(http.queryParam("done")))
                        .findAny();
        Map<String, Object> parameters = new LinkedHashMap<>();
        parameters.put("frame", frame);
        parameters.put("batches", batches);
        parameters.put("done", done);
        parameters.put("nothingNew", http.queryParam("nothing-new") != null);
        parameters.put("refused", refused);
        kit.templates().answer(http, "import.jte", parameters);
    }

    private void keep(Context http) throws IOException {
        UploadedFile sheet = http.uploadedFile("sheet");
        if (sheet == null || sheet.filename().isBlank()) {
            throw new Refused(Message.of("import.no-file"));
        }
        UploadShelf.Kept kept;
        try (InputStream in = sheet.content()) {
            kept = shelf.keep(in, sheet.filename());
        }
        try {
            read(kept);
        } catch (SheetRefused refused) {
            shelf.drop(kept);
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            start(http, Optional.of(refused));
            return;
        }
        Frame frame = kit.frames().ofSite(http, "import");
        http.redirect(frame.to("import/" + kept.id()), HttpStatus.SEE_OTHER);
    }

    private static SheetFile read(UploadShelf.Kept kept) {
        return SheetFile.read(kept.path(), kept.name(), Optional.empty());
    }

    private void preview(Context http) {
        Frame frame = kit.frames().ofSite(http, "import");
        UploadShelf.Kept kept = shelf.find(http.pathParam("sheet"));
        SheetFile file = read(kept);
        show(http, frame, view(http, frame, kept, file));
    }

    private PreviewView view(Context http, Frame frame, UploadShelf.Kept kept, SheetFile file) {
        ChoicesForm form = form(http, frame, file);
        Optional<ImportPlan> plan = Optional.empty();
        Optional<SheetRefused> refused = Optional.empty();
        try {
            plan = Optional.of(desk.preview().run(slug(frame), file, form.choices()));
        } catch (SheetRefused faults) {
            refused = Optional.of(faults);
        }
        return new PreviewView(kept, file, form, plan, refused, desk.pests());
    }

    private ChoicesForm form(Context http, Frame frame, SheetFile file) {
        List<String> header = file.table().header();
        return ChoicesForm.read(http, header)
                .orElseGet(
                        () ->
                                new ChoicesForm(
                                        desk.preview()
                                                .choicesFor(slug(frame), file)
                                                .on(frame.now().toLocalDate()),
                                        header));
    }

    private void show(Context http, Frame frame, PreviewView view) {
        kit.templates().answer(http, "import_preview.jte", Map.of("frame", frame, "view", view));
    }

    private void takeIn(Context http) {
        Frame frame = kit.frames().ofSite(http, "import");
        UploadShelf.Kept kept = shelf.find(http.pathParam("sheet"));
        SheetFile file = read(kept);
        try {
            ImportSheet.Outcome outcome =
                    desk.importSheet()
                            .run(
                                    slug(frame),
                                    person(frame),
                                    file,
                                    form(http, frame, file).choices());
            shelf.drop(kept);
            String what =
                    outcome.batch().map(batch -> "done=" + batch.id()).orElse("nothing-new=yes");
            http.redirect(frame.to("import?" + what), HttpStatus.SEE_OTHER);
        } catch (SheetRefused refused) {
            show(http, frame, view(http, frame, kept, file));
        }
    }

    private void takeBack(Context http) {
        Frame frame = kit.frames().ofSite(http, "import");
        String reason = Optional.ofNullable(http.formParam("reason")).orElse("").strip();
        if (reason.isEmpty()) {
            throw new Refused(Message.of("import.reason-missing"));
        }
        String batch = Optional.ofNullable(http.formParam("batch")).orElse("");
        desk.takeBack().run(slug(frame), batch, person(frame), reason);
        http.redirect(frame.to("import"), HttpStatus.SEE_OTHER);
    }

    private void template(Context http, String kind) {
        Frame frame = kit.frames().ofSite(http, "import");
        TemplateSheet sheet = MakeTemplate.run(frame.words().language());
        http.header("Content-Disposition", "attachment; filename=\"jarwise-sheet." + kind + "\"");
        http.contentType(kind.equals("csv") ? "text/csv; charset=utf-8" : XLSX_TYPE);
        http.result(kind.equals("csv") ? sheet.csv() : sheet.xlsx());
    }

    private static String person(Frame frame) {
        return frame.person().isEmpty() ? NOBODY : frame.person();
    }

    private static String slug(Frame frame) {
        return frame.nursery()
                .orElseThrow(() -> new InvalidInput("This page belongs to a nursery."))
                .slug();
    }
}
