package jarwise.web.lan;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpStatus;
import io.javalin.http.SameSite;
import jarwise.site.Device;
import jarwise.usecase.devices.RecogniseDevice;
import java.time.InstantSource;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Lets other devices in to the pages of the nursery they were let in for, and to nothing else.
 * Whatever is not named here as open is shut.
 *
 * <p>A device that was let in over plain http has a secret of its own, which opens the round sheet
 * only: a secret that goes over https never travels in plain.
 */
public final class Admission {

    private static final String DEVICE = "jarwise.device";
    private static final String SITES = "jarwise.sites";
    private static final String SECURE_COOKIE = "__Host-jarwise-";
    private static final String PLAIN_COOKIE = "jarwise-plain-";
    private static final int LARGEST_FORM_BYTES = 10_000;
    private static final int A_YEAR = 365 * 24 * 3600;

    private static final Pattern OPEN =
            Pattern.compile(
                    "/let-in|/trust|/trust/authority\\.(crt|mobileconfig)"
                            + "|/assets/[0-9a-f]{12}/[a-z0-9./-]+");
    private static final Pattern OF_SITE = Pattern.compile("/([a-z0-9]+(?:-[a-z0-9]+)*)/(.+)");
    private static final Pattern ROUND_SHEET = Pattern.compile("walk(/.*)?|events");

    /** Calendars cannot keep a cookie; the page asks for a secret of its own in the address. */
    private static final String FEED = "calendar.ics";

    private final RecogniseDevice devices;
    private final InstantSource clock;

    /** Tells devices by what {@code devices} knows. */
    public Admission(RecogniseDevice devices, InstantSource clock) {
        this.devices = devices;
        this.clock = clock;
    }

    /** Keeps the names of sites from whoever is not let in, also in what a fault says. */
    public static void hideSites(Context http, Door door) {
        if (door != Door.DESK) {
            http.attribute(SITES, Set.of());
        }
    }

    /**
     * Lets a request from another device pass, or not.
     *
     * @throws ForbiddenResponse "device" where the device is not let in, "plain" where the page is
     *     not for plain http
     */
    public void check(Context http, Door door) {
        hideSites(http, door);
        String path = http.path();
        if (path.equals("/")) {
            showIn(http, door);
            return;
        }
        if (OPEN.matcher(path).matches()) {
            refuseIfLarge(http);
            return;
        }
        Matcher page = OF_SITE.matcher(path);
        if (!page.matches()) {
            throw new ForbiddenResponse("device");
        }
        boolean feed = door == Door.LAN && page.group(2).equals(FEED);
        if (!feed && !recognise(http, page.group(1), door)) {
            throw new ForbiddenResponse("device");
        }
        if (door == Door.PLAIN && !ROUND_SHEET.matcher(page.group(2)).matches()) {
            throw new ForbiddenResponse("plain");
        }
        http.attribute(SITES, Set.of(page.group(1)));
    }

    /** A stranger sends a code and a name. */
    private static void refuseIfLarge(Context http) {
        boolean sends = !Set.of("GET", "HEAD").contains(http.req().getMethod());
        int length = http.req().getContentLength();
        if (sends && (length < 0 || length > LARGEST_FORM_BYTES)) {
            throw new ForbiddenResponse("device");
        }
    }

    /** The first page: where a new device begins, or the pages of the site it was let in for. */
    private void showIn(Context http, Door door) {
        String start = door == Door.PLAIN ? "/trust" : "/let-in";
        String first =
                http.cookieMap().keySet().stream()
                        .filter(name -> name.startsWith(prefix(door)))
                        .map(name -> name.substring(prefix(door).length()))
                        .sorted()
                        .filter(nursery -> recognise(http, nursery, door))
                        .findFirst()
                        .map(nursery -> home(nursery, door))
                        .orElse(start);
        http.redirect(first, HttpStatus.SEE_OTHER);
        http.skipRemainingHandlers();
    }

    private boolean recognise(Context http, String nursery, Door door) {
        String secret = http.cookie(prefix(door) + nursery);
        if (secret == null) {
            return false;
        }
        Optional<RecogniseDevice.Seen> seen =
                devices.run(nursery, secret, door == Door.PLAIN, clock.instant());
        seen.ifPresent(
                known -> {
                    http.attribute(DEVICE, known.device());
                    if (known.noted()) {
                        keep(http, nursery, secret);
                    }
                });
        return seen.isPresent();
    }

    /** Gives a device the secret of a nursery to keep for a year. */
    public static void keep(Context http, String nursery, String secret) {
        Door door = Door.of(http);
        Cookie cookie = new Cookie(prefix(door) + nursery, secret);
        cookie.setPath("/");
        cookie.setMaxAge(A_YEAR);
        cookie.setHttpOnly(true);
        cookie.setSecure(door != Door.PLAIN);
        cookie.setSameSite(SameSite.STRICT);
        http.cookie(cookie);
    }

    /** {@return where a device begins that was let in} */
    public static String home(String nursery, Door door) {
        return "/" + nursery + (door == Door.PLAIN ? "/walk" : "/today");
    }

    /** {@return whether a request may see a site; the desk may see all} */
    public static boolean maySee(Context http, String nursery) {
        Set<String> sites = http.attribute(SITES);
        return sites == null || sites.contains(nursery);
    }

    /** {@return the device that asks; empty at the desk} */
    public static Optional<Device> deviceOf(Context http) {
        return Optional.ofNullable(http.attribute(DEVICE));
    }

    private static String prefix(Door door) {
        return door == Door.PLAIN ? PLAIN_COOKIE : SECURE_COOKIE;
    }
}
