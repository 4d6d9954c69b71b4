package jarwise.web.devices;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.lan.Door;
import jarwise.web.lan.LanNames;
import jarwise.web.lan.Reach;
import jarwise.web.lan.TrustProfile;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How a new phone comes to trust this machine. It tells nothing of any site. */
public final class TrustPages implements Pages {

    private final Server.Kit kit;

    /** Makes the page. */
    public TrustPages(Server.Kit kit) {
        this.kit = kit;
    }

    /**
     * What the page shows.
     *
     * @param fingerprint lines to compare; none where nothing is to be installed
     * @param secure where to go on, over https
     * @param plain whether the page itself came over plain http
     */
    public record View(List<String> fingerprint, String secure, boolean plain) {
        public View {
            fingerprint = List.copyOf(fingerprint);
        }
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/trust", this::show);
        routes.get("/trust/authority.crt", this::certificate);
        routes.get("/trust/authority.mobileconfig", this::profile);
    }

    private void show(Context http) {
        Reach reach = kit.reach().get().orElseThrow(NotFoundResponse::new);
        Frame frame = kit.frames().ofProgram(http, "");
        View view =
                new View(
                        FingerprintLines.of(Optional.of(reach)),
                        reach.secure(LanNames.asked(http, reach)) + "let-in",
                        Door.of(http) == Door.PLAIN);
        kit.templates().answer(http, "trust.jte", Map.of("frame", frame, "view", view));
    }

    private void certificate(Context http) {
        send(http, "application/x-x509-ca-cert", "authority.crt", encoded());
    }

    private void profile(Context http) {
        Frame frame = kit.frames().ofProgram(http, "");
        byte[] profile = TrustProfile.of(encoded(), "Jarwise", frame.say("trust.profile"));
        send(http, "application/x-apple-aspen-config", "jarwise.mobileconfig", profile);
    }

    private byte[] encoded() {
        return kit.reach().get().flatMap(Reach::encoded).orElseThrow(NotFoundResponse::new);
    }

    private static void send(Context http, String type, String name, byte[] content) {
        http.contentType(type);
        http.header("Cache-Control", "no-store");
        http.header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        http.result(content);
    }
}
