package jarwise.web.home;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jarwise.base.Refused;
import jarwise.render.words.Language;
import jarwise.site.Nursery;
import jarwise.usecase.OpenSite;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The first page: Today of the only site, or a form that names it. */
public final class HomePages implements Pages {

    private final Server.Kit kit;
    private final OpenSite site;

    /** Makes the pages. */
    public HomePages(Server.Kit kit, OpenSite site) {
        this.kit = kit;
        this.site = site;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/", this::open);
        routes.post("/", this::name);
    }

    private void open(Context http) {
        List<Nursery> all = site.nurseries();
        if (all.isEmpty()) {
            ask(http, Typed.NOTHING, "");
        } else {
            http.redirect("/" + all.get(0).slug() + "/today", HttpStatus.SEE_OTHER);
        }
    }

    /** What a person typed into the form, kept when it is refused. */
    public record Typed(String name, String zone) {
        static final Typed NOTHING = new Typed("", ZoneId.systemDefault().getId());
    }

    private void ask(Context http, Typed typed, String fault) {
        Frame frame = kit.frames().ofProgram(http, "");
        kit.templates()
                .answer(
                        http,
                        "first_run.jte",
                        Map.of("frame", frame, "typed", typed, "fault", fault));
    }

    private void name(Context http) {
        Typed typed =
                new Typed(
                        Objects.requireNonNullElse(http.formParam("name"), ""),
                        Objects.requireNonNullElse(http.formParam("zone"), ""));
        String language = Objects.requireNonNullElse(http.formParam("language"), "en");
        try {
            String known = Language.of(language).orElse(Language.ENGLISH).code();
            Nursery made = site.name(typed.name(), typed.zone(), known);
            http.redirect("/" + made.slug() + "/today", HttpStatus.SEE_OTHER);
        } catch (Refused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            Frame frame = kit.frames().ofProgram(http, "");
            ask(http, typed, frame.words().say(refused.reason()));
        }
    }
}
