package jarwise.web.devices;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jarwise.base.Refused;
import jarwise.usecase.devices.LetDeviceIn;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.lan.Admission;
import jarwise.web.lan.Door;
import jarwise.web.piece.Form;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/** Where a new phone shows the code of the desk's screen. It tells nothing of any site. */
public final class LetInPages implements Pages {

    private final Server.Kit kit;
    private final LetDeviceIn letIn;

    /** Makes the page. */
    public LetInPages(Server.Kit kit, LetDeviceIn letIn) {
        this.kit = kit;
        this.letIn = letIn;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/let-in", this::ask);
        routes.post("/let-in", this::take);
    }

    private void ask(Context http) {
        if (Door.of(http) == Door.DESK) {
            http.redirect("/", HttpStatus.SEE_OTHER);
            return;
        }
        Frame frame = kit.frames().ofProgram(http, "");
        show(http, frame, Form.fresh(frame));
    }

    private void show(Context http, Frame frame, Form form) {
        kit.templates()
                .answer(
                        http,
                        "let_in.jte",
                        Map.of("frame", frame, "form", form, "usual", usualName(http)));
    }

    private void take(Context http) {
        Frame frame = kit.frames().ofProgram(http, "");
        Map<String, String> typed = new TreeMap<>();
        http.formParamMap().forEach((name, values) -> typed.put(name, values.get(0)));
        Door door = Door.of(http);
        try {
            LetDeviceIn.Admitted admitted =
                    letIn.run(
                            new LetDeviceIn.Stranger(http.ip(), door == Door.PLAIN),
                            Fields.of(typed),
                            frame.now().toInstant());
            Admission.keep(http, admitted.nursery(), admitted.secret());
            http.redirect(Admission.home(admitted.nursery(), door), HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            refuse(http, frame, typed, refused);
        } catch (Refused refused) {
            refuse(http, frame, typed, new FormRefused(Map.of("code", refused.reason())));
        }
    }

    private void refuse(Context http, Frame frame, Map<String, String> typed, FormRefused why) {
        http.status(HttpStatus.UNPROCESSABLE_CONTENT);
        show(http, frame, Form.refused(frame, "let-in", typed, why));
    }

    /** What the browser says it runs on: a start for the name, which people may change. */
    private static String usualName(Context http) {
        String agent = Objects.requireNonNullElse(http.userAgent(), "");
        for (String kind : new String[] {"iPhone", "iPad", "Android"}) {
            if (agent.contains(kind)) {
                return kind;
            }
        }
        return "";
    }
}
