package jarwise.web.quality;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.quality.AdoptMeasured;
import jarwise.usecase.quality.MakeSeededFilter;
import jarwise.usecase.quality.ShowQuality;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.piece.Form;
import java.util.Map;
import java.util.TreeMap;

/** Quality: how far counts can be trusted, and what corrects them. */
public final class QualityPages implements Pages {

    private static final String NOBODY = "desk";

    private final Server.Kit kit;
    private final ShowQuality quality;
    private final Deeds deeds;

    /** Makes the page. */
    public QualityPages(Server.Kit kit, ShowQuality quality, Deeds deeds) {
        this.kit = kit;
        this.quality = quality;
        this.deeds = deeds;
    }

    /** What can be done on this page. */
    public record Deeds(AdoptMeasured adopt, MakeSeededFilter seeded) {}

    /** One form taken. */
    private interface Change {
        void make(Frame frame, Fields fields);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/quality", this::show);
        change(
                routes,
                "adopt",
                (frame, fields) ->
                        deeds.adopt()
                                .run(
                                        slug(frame),
                                        fields,
                                        frame.now().toLocalDate(),
                                        frame.now().toInstant()));
        change(
                routes,
                "end",
                (frame, fields) ->
                        deeds.adopt().end(slug(frame), fields, frame.now().toLocalDate()));
        change(
                routes,
                "seeded",
                (frame, fields) ->
                        deeds.seeded()
                                .run(
                                        slug(frame),
                                        frame.person().isEmpty() ? NOBODY : frame.person(),
                                        fields,
                                        frame.now().toLocalDate(),
                                        frame.now().toInstant()));
        change(
                routes,
                "retire",
                (frame, fields) ->
                        deeds.seeded().retire(slug(frame), fields, frame.now().toLocalDate()));
    }

    private void change(RoutesConfig routes, String name, Change change) {
        routes.post("/{nursery}/quality/" + name, http -> make(http, name, change));
    }

    private void show(Context http) {
        Frame frame = kit.frames().ofSite(http, "quality");
        show(http, frame, Form.fresh(frame));
    }

    private void show(Context http, Frame frame, Form form) {
        QualityView view =
                new QualityView(frame, quality.run(slug(frame), frame.now().toLocalDate()), form);
        SeededView seeded =
                new SeededView(frame, deeds.seeded().all(slug(frame)), deeds.seeded().placeable());
        kit.templates()
                .answer(
                        http,
                        "quality.jte",
                        Map.of("frame", frame, "view", view, "seeded", seeded));
    }

    private void make(Context http, String name, Change change) {
        Frame frame = kit.frames().ofSite(http, "quality");
        Map<String, String> typed = new TreeMap<>();
        http.formParamMap().forEach((field, values) -> typed.put(field, values.get(0)));
        try {
            change.make(frame, Fields.of(typed));
            http.redirect(
                    frame.to("quality#" + (name.equals("retire") ? "seeded" : name)),
                    HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(http, frame, Form.refused(frame, name, typed, refused));
        }
    }

    private static String slug(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new).slug();
    }
}
