package jarwise.web.calendar;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.site.Nursery;
import jarwise.usecase.calendar.OpenCalendar;
import jarwise.usecase.calendar.TellCalendar;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.lan.Door;
import jarwise.web.lan.LanNames;
import java.util.Map;
import java.util.Objects;

/** Deadlines for the calendars of phones: who has the address may read them. */
public final class CalendarPages implements Pages {

    private final Server.Kit kit;
    private final TellCalendar calendar;
    private final OpenCalendar access;

    /** Makes the page. */
    public CalendarPages(Server.Kit kit, TellCalendar calendar, OpenCalendar access) {
        this.kit = kit;
        this.calendar = calendar;
        this.access = access;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/calendar", this::show);
        routes.get("/{nursery}/calendar.ics", this::file);
        routes.post("/{nursery}/calendar/open", this::open);
        routes.post("/{nursery}/calendar/close", this::close);
    }

    private void show(Context http) {
        Frame frame = kit.frames().ofSite(http, "settings");
        String secret = access.secret(slug(frame)).orElse("");
        String path = frame.to("calendar.ics").substring(1) + "?token=" + secret;
        kit.templates()
                .answer(
                        http,
                        "calendar.jte",
                        Map.of(
                                "frame",
                                frame,
                                "open",
                                !secret.isEmpty(),
                                "address",
                                home(http) + path,
                                "reached",
                                kit.reach().get().isPresent()));
    }

    /** Where phones find this program; where they do not, this computer's own address. */
    private String home(Context http) {
        return kit.reach()
                .get()
                .map(
                        reach ->
                                reach.secure(
                                        Door.of(http) == Door.DESK
                                                ? reach.names().get(0)
                                                : LanNames.asked(http, reach)))
                .orElseGet(() -> "http://" + http.host() + "/");
    }

    private void file(Context http) {
        String given = Objects.requireNonNullElse(http.queryParam("token"), "");
        Frame frame = kit.frames().ofSite(http, "");
        Nursery nursery = frame.nursery().orElseThrow(NotFoundResponse::new);
        if (!access.opens(nursery.slug(), given)) {
            throw new NotFoundResponse();
        }
        http.contentType("text/calendar; charset=utf-8");
        http.header("Cache-Control", "private, no-cache");
        http.header("Content-Disposition", "inline; filename=\"calendar.ics\"");
        http.result(calendar.run(nursery, frame.now().toInstant()));
    }

    private void open(Context http) {
        Frame frame = kit.frames().ofSite(http, "settings");
        access.open(slug(frame), frame.now().toInstant());
        http.redirect(frame.to("calendar"), HttpStatus.SEE_OTHER);
    }

    private void close(Context http) {
        Frame frame = kit.frames().ofSite(http, "settings");
        access.close(slug(frame), frame.now().toInstant());
        http.redirect(frame.to("calendar"), HttpStatus.SEE_OTHER);
    }

    private static String slug(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new).slug();
    }
}
