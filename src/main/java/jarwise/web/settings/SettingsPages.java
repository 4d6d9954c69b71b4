package jarwise.web.settings;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import io.javalin.http.SameSite;
import jarwise.render.words.Language;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.settings.AddPest;
import jarwise.usecase.settings.AdoptShare;
import jarwise.usecase.settings.ChangePlaces;
import jarwise.usecase.settings.ChangeSite;
import jarwise.usecase.settings.ChooseValue;
import jarwise.usecase.settings.SavePerson;
import jarwise.usecase.settings.SetLine;
import jarwise.usecase.settings.SetProtocol;
import jarwise.usecase.settings.ShowSettings;
import jarwise.web.Frame;
import jarwise.web.Frames;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.piece.Form;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;

/** Settings: everything the site has chosen on one page, with a form below each list. */
public final class SettingsPages implements Pages {

    private static final String NOBODY = "desk";
    private static final int A_YEAR = 365 * 24 * 3600;

    private final Server.Kit kit;
    private final ShowSettings settings;
    private final Deeds deeds;

    /** Makes the page. */
    public SettingsPages(Server.Kit kit, ShowSettings settings, Deeds deeds) {
        this.kit = kit;
        this.settings = settings;
        this.deeds = deeds;
    }

    /** What can be done on this page. */
    public record Deeds(
            ChangeSite site,
            SetLine line,
            ChooseValue value,
            SetProtocol protocol,
            AdoptShare share,
            AddPest pest,
            SavePerson person,
            ChangePlaces places) {}

    /** Who writes, where and when. */
    private record Writing(String nursery, String person, Instant now, Frame frame) {}

    /** One form taken. */
    private interface Change {
        void make(Writing writing, Fields fields);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/settings", this::show);
        routes.post("/{nursery}/settings/here", this::here);
        change(routes, "site", (w, fields) -> deeds.site().run(w.nursery(), fields));
        change(
                routes,
                "line",
                (w, fields) -> deeds.line().run(w.nursery(), w.person(), fields, w.now()));
        change(
                routes,
                "value",
                (w, fields) -> deeds.value().run(w.nursery(), w.person(), fields, w.now()));
        change(routes, "protocol", (w, f) -> deeds.protocol().run(w.nursery(), f, w.now()));
        change(routes, "share", (w, f) -> deeds.share().run(w.nursery(), f, w.now()));
        change(routes, "withdraw", this::withdraw);
        change(routes, "pest", (w, fields) -> deeds.pest().run(fields));
        change(routes, "person", (w, fields) -> deeds.person().run(w.nursery(), fields));
        change(routes, "house", (w, fields) -> deeds.places().house(w.nursery(), fields));
        change(routes, "bench", (w, fields) -> deeds.places().bench(w.nursery(), fields));
        change(routes, "lot", (w, fields) -> deeds.places().cropLot(w.nursery(), fields));
        change(routes, "place", (w, fields) -> deeds.places().place(w.nursery(), fields));
        change(routes, "end-place", (w, fields) -> deeds.places().endPlace(w.nursery(), fields));
    }

    private void change(RoutesConfig routes, String name, Change change) {
        routes.post("/{nursery}/settings/" + name, http -> make(http, name, change));
    }

    private void show(Context http) {
        Frame frame = kit.frames().ofSite(http, "settings");
        show(http, frame, Form.fresh(frame));
    }

    private void show(Context http, Frame frame, Form form) {
        SettingsView view =
                new SettingsView(
                        frame,
                        settings.run(slug(frame), frame.now().toLocalDate()),
                        form,
                        deeds.pest().offered());
        kit.templates().answer(http, "settings.jte", Map.of("frame", frame, "view", view));
    }

    private void make(Context http, String name, Change change) {
        Frame frame = kit.frames().ofSite(http, "settings");
        Map<String, String> typed = typed(http);
        String person = frame.person().isEmpty() ? NOBODY : frame.person();
        Writing writing = new Writing(slug(frame), person, frame.now().toInstant(), frame);
        try {
            change.make(writing, Fields.of(typed));
            http.redirect(frame.to("settings#" + name), HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(http, frame, Form.refused(frame, name, typed, refused));
        }
    }

    private void withdraw(Writing writing, Fields fields) {
        String position = fields.text("position");
        deeds.share()
                .withdraw(
                        writing.nursery(),
                        position.matches("[0-9]{1,6}") ? Integer.parseInt(position) : -1,
                        writing.frame().now().toLocalDate());
    }

    /** Who is at this screen and in which language: known to this browser, not to the site. */
    private void here(Context http) {
        Frame frame = kit.frames().ofSite(http, "settings");
        Fields fields = Fields.of(typed(http));
        String person = fields.text("person");
        boolean known =
                settings.run(slug(frame), frame.now().toLocalDate()).readers().stream()
                        .anyMatch(reader -> reader.code().equals(person));
        http.cookie(cookie(Frames.PERSON_COOKIE, known ? person : ""));
        Language.of(fields.text("language"))
                .ifPresent(
                        language -> http.cookie(cookie(Frames.LANGUAGE_COOKIE, language.code())));
        http.redirect(frame.to("settings"), HttpStatus.SEE_OTHER);
    }

    private static Cookie cookie(String name, String value) {
        Cookie cookie = new Cookie(name, value);
        cookie.setPath("/");
        cookie.setMaxAge(value.isEmpty() ? 0 : A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        return cookie;
    }

    private static Map<String, String> typed(Context http) {
        Map<String, String> typed = new TreeMap<>();
        http.formParamMap().forEach((name, values) -> typed.put(name, values.get(0)));
        return typed;
    }

    private static String slug(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new).slug();
    }
}
