package jarwise.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.SameSite;
import jarwise.web.lan.Admission;
import jarwise.web.lan.Door;
import jarwise.web.lan.Reach;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Keeps strangers out: only names under which this machine is shown as host (a page elsewhere could
 * point its own name at 127.0.0.1), only devices that were let in, only forms of our own pages may
 * write, and a content policy that runs no script but ours.
 *
 * <p>A form carries the value of a cookie that other sites can neither read nor set. It outlives a
 * restart of the program, so that a half-filled form is not lost by one.
 */
final class Guard {

    static final String TOKEN_FIELD = "form_token";

    /** Where what is sent is no form but events of a device. */
    static final String TOKEN_HEADER = "Jarwise-Form";

    private static final String TOKEN_COOKIE = "jarwise-form";

    /** Over https one that nobody can set over plain http. */
    private static final String SECURE_TOKEN_COOKIE = "__Host-jarwise-form";

    private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final int A_YEAR = 365 * 24 * 3600;

    private final SecureRandom random = new SecureRandom();
    private final String contentPolicy;
    private final Admission admission;
    private final Supplier<Optional<Reach>> reach;

    Guard(Assets assets, Admission admission, Supplier<Optional<Reach>> reach) {
        this.admission = admission;
        this.reach = reach;
        this.contentPolicy =
                String.join(
                        "; ",
                        "default-src 'none'",
                        "script-src 'self' " + assets.importMapHash(),
                        "style-src 'self'",
                        "img-src 'self' data:",
                        "font-src 'self'",
                        "connect-src 'self'",
                        "manifest-src 'self'",
                        "form-action 'self'",
                        "base-uri 'none'",
                        "frame-ancestors 'none'");
    }

    void addTo(RoutesConfig routes) {
        routes.before(this::check);
    }

    /** {@return the value every form of this visitor's pages carries} */
    static String tokenOf(Context http) {
        String token = http.attribute(TOKEN_COOKIE);
        return token == null ? "" : token;
    }

    private void check(Context http) {
        http.header("Content-Security-Policy", contentPolicy);
        http.header("X-Content-Type-Options", "nosniff");
        http.header("Referrer-Policy", "same-origin");
        http.header("Cross-Origin-Resource-Policy", "same-origin");
        Door door = Door.of(http);
        if (door != Door.PLAIN) {
            http.header("Cross-Origin-Opener-Policy", "same-origin");
        }
        if (!isOurs(http.host(), door)) {
            Admission.hideSites(http, door);
            throw new ForbiddenResponse("host");
        }
        if (door != Door.DESK) {
            admission.check(http, door);
        }
        String token = tokenCookie(http, door);
        http.attribute(TOKEN_COOKIE, token);
        if (writes(http)) {
            checkWrite(http, token);
        }
    }

    private boolean isOurs(@Nullable String host, Door door) {
        String named = host == null ? "" : host;
        return door == Door.DESK
                ? OWN_NAMES.contains(named.replaceFirst(":\\d+$", ""))
                : reach.get().map(shown -> shown.isOurs(named)).orElse(false);
    }

    private static boolean writes(Context http) {
        return !Set.of("GET", "HEAD", "OPTIONS").contains(http.req().getMethod());
    }

    private static void checkWrite(Context http, String token) {
        String site = http.header("Sec-Fetch-Site");
        boolean ours = site == null || site.equals("same-origin") || site.equals("none");
        String header = http.header(TOKEN_HEADER);
        String given = header == null ? http.formParam(TOKEN_FIELD) : header;
        if (!ours || given == null || !same(given, token)) {
            throw new ForbiddenResponse("form");
        }
    }

    private String tokenCookie(Context http, Door door) {
        String name = door == Door.LAN ? SECURE_TOKEN_COOKIE : TOKEN_COOKIE;
        String known = http.cookie(name);
        if (known != null && known.matches("[0-9a-f]{32}")) {
            return known;
        }
        byte[] bytes = new byte[16];
        random.nextBytes(bytes);
        String fresh = HexFormat.of().formatHex(bytes);
        Cookie cookie = new Cookie(name, fresh);
        cookie.setPath("/");
        cookie.setMaxAge(A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSecure(door == Door.LAN);
        cookie.setSameSite(SameSite.STRICT);
        http.cookie(cookie);
        return fresh;
    }

    private static boolean same(String one, String other) {
        return MessageDigest.isEqual(
                one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
