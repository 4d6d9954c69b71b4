package jarwise.web.walk;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.plan.PlannedJar;
import jarwise.render.scan.PhotoCode;
import jarwise.sample.Step;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.rounds.ShowRounds;
import jarwise.usecase.samples.EndSample;
import jarwise.usecase.walk.RecordStep;
import jarwise.usecase.walk.ShowWalk;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.piece.Form;
import jarwise.wire.json.JsonObject;
import jarwise.wire.walk.WalkJson;
import jarwise.wire.walk.WalkSheet;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The round sheet: a page that walks the round with a phone, without a server for a whole day; and
 * the same steps as plain forms where its script does not run.
 */
public final class WalkPages implements Pages {

    private static final String NOBODY = "phone";
    private static final int DAYS_SHOWN = 14;

    private final Server.Kit kit;
    private final Deeds deeds;

    public WalkPages(Server.Kit kit, Deeds deeds) {
        this.kit = kit;
        this.deeds = deeds;
    }

    /** What can be done on these pages. */
    public record Deeds(ShowRounds rounds, ShowWalk walk, RecordStep record, EndSample end) {}

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/walk", this::list);
        routes.get("/{nursery}/walk/shell", this::shell);
        routes.get("/{nursery}/walk/{round}", this::round);
        routes.get("/{nursery}/walk/{round}/data", this::data);
        routes.post("/{nursery}/walk/{round}/step", this::step);
        routes.post("/{nursery}/walk/photo", this::photo);
    }

    private void list(Context http) {
        Frame frame = kit.frames().ofSite(http, "walk");
        LocalDate today = frame.now().toLocalDate();
        List<ShowRounds.Shown> rounds =
                deeds
                        .rounds()
                        .run(slug(frame), today.minusDays(DAYS_SHOWN), today.plusDays(DAYS_SHOWN))
                        .stream()
                        .filter(shown -> shown.withdrawal().isEmpty())
                        .toList();
        WalkList view = new WalkList(frame, rounds);
        kit.templates().answer(http, "walk.jte", Map.of("frame", frame, "view", view));
    }

    /** The page without a round: what a phone shows where the server cannot be reached. */
    private void shell(Context http) {
        Frame frame = kit.frames().ofSite(http, "walk");
        kit.templates().answer(http, "walk_shell.jte", Map.of("frame", frame));
    }

    private void round(Context http) {
        Frame frame = kit.frames().ofSite(http, "walk");
        show(http, frame, Form.fresh(frame));
    }

    private void show(Context http, Frame frame, Form form) {
        ShowRounds.Shown shown =
                deeds.rounds()
                        .find(slug(frame), http.pathParam("round"))
                        .orElseThrow(NotFoundResponse::new);
        WalkSheet sheet = sheet(http, frame);
        String wanted = form.typedOr("jar", Optional.ofNullable(http.queryParam("jar")).orElse(""));
        WalkView view = new WalkView(frame, sheet, shown, wanted, form);
        kit.templates().answer(http, "walk_round.jte", Map.of("frame", frame, "view", view));
    }

    private void data(Context http) {
        Frame frame = kit.frames().ofSite(http, "walk");
        WalkSheet.Visitor visitor =
                new WalkSheet.Visitor(
                        slug(frame),
                        frame.nursery().orElseThrow().name(),
                        frame.now().getZone().getId(),
                        frame.now().toInstant(),
                        frame.words().language().code(),
                        frame.person(),
                        frame.formToken(),
                        WalkWords.of(frame.words()));
        http.header("Cache-Control", "no-store");
        http.contentType("application/json");
        http.result(WalkJson.write(sheet(http, frame), visitor));
    }

    /** Reads the code in a photo; the answer is null where there is none in it. */
    private void photo(Context http) {
        kit.frames().ofSite(http, "walk");
        String width = Optional.ofNullable(http.queryParam("width")).orElse("");
        int pixels = width.matches("[0-9]{1,4}") ? Integer.parseInt(width) : 0;
        http.header("Cache-Control", "no-store");
        http.contentType("application/json");
        http.result(
                new JsonObject()
                        .putText("code", PhotoCode.read(http.bodyAsBytes(), pixels))
                        .text());
    }

    private void step(Context http) {
        Frame frame = kit.frames().ofSite(http, "walk");
        Map<String, String> typed = new TreeMap<>();
        http.formParamMap().forEach((name, values) -> typed.put(name, values.get(0)));
        try {
            record(frame, sheet(http, frame), typed);
            http.redirect(
                    frame.to("walk/" + http.pathParam("round") + "?plain=yes"),
                    HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(http, frame, Form.refused(frame, "step", typed, refused));
        }
    }

    private void record(Frame frame, WalkSheet sheet, Map<String, String> typed) {
        PlannedJar jar =
                sheet.plan().jars().stream()
                        .filter(one -> one.code().text().equals(typed.get("jar")))
                        .findAny()
                        .orElseThrow(NotFoundResponse::new);
        Fields fields = Fields.of(typed);
        boolean ends = fields.word("how", Step.class).isPresent();
        if (ends) {
            deeds.end().run(slug(frame), person(frame), jar.code(), fields);
        } else {
            deeds.record().run(slug(frame), person(frame), jar, frame.now(), fields);
        }
    }

    private WalkSheet sheet(Context http, Frame frame) {
        return deeds.walk()
                .find(slug(frame), http.pathParam("round"), frame.now().toInstant())
                .orElseThrow(NotFoundResponse::new);
    }

    private static String person(Frame frame) {
        return frame.person().isEmpty() ? NOBODY : frame.person();
    }

    private static String slug(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new).slug();
    }
}
