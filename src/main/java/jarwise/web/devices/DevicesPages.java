package jarwise.web.devices;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import jarwise.usecase.devices.RevokeDevice;
import jarwise.usecase.devices.ShowDevices;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.lan.Door;
import java.util.Map;
import java.util.Objects;

/** Devices of a nursery, at the desk only: whoever stands before this screen may let others in. */
public final class DevicesPages implements Pages {

    private final Server.Kit kit;
    private final ShowDevices devices;
    private final RevokeDevice revoke;

    /** Makes the page. */
    public DevicesPages(Server.Kit kit, ShowDevices devices, RevokeDevice revoke) {
        this.kit = kit;
        this.devices = devices;
        this.revoke = revoke;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/devices", this::show);
        routes.post("/{nursery}/devices/code", this::code);
        routes.post("/{nursery}/devices/revoke", this::revoke);
    }

    private void show(Context http) {
        Frame frame = atTheDesk(http);
        DevicesView view =
                new DevicesView(
                        frame,
                        devices.run(slug(frame), frame.now().toInstant()),
                        kit.reach().get());
        kit.templates().answer(http, "devices.jte", Map.of("frame", frame, "view", view));
    }

    private void code(Context http) {
        Frame frame = atTheDesk(http);
        String person = Objects.requireNonNullElse(http.formParam("person"), "");
        devices.showCode(slug(frame), person, frame.now().toInstant());
        http.redirect(frame.to("devices#code"), HttpStatus.SEE_OTHER);
    }

    private void revoke(Context http) {
        Frame frame = atTheDesk(http);
        String id = Objects.requireNonNullElse(http.formParam("device"), "");
        revoke.run(slug(frame), id, frame.now().toInstant());
        http.redirect(frame.to("devices#known"), HttpStatus.SEE_OTHER);
    }

    private Frame atTheDesk(Context http) {
        if (Door.of(http) != Door.DESK) {
            throw new ForbiddenResponse("desk");
        }
        return kit.frames().ofSite(http, "settings");
    }

    private static String slug(Frame frame) {
        return frame.nursery().orElseThrow().slug();
    }
}
