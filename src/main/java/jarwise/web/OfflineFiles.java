package jarwise.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What lets a device keep a page that works without the server: the service worker with the list of
 * this version's files, and the manifest with which the page is put on the home screen.
 */
final class OfflineFiles {

    private static final String WORKER = "service-worker.js";

    private final Assets assets;
    private final Frames frames;
    private final String worker;
    private final Page page;

    /**
     * A page that a device can keep.
     *
     * @param address below the site's
     * @param title key of its name
     * @param ground colour behind it
     */
    record Page(String address, String title, String ground) {

        static final Page ROUND = new Page("walk", "walk.title", "#fcfbf7");
        static final Page MICROSCOPE = new Page("microscope", "tally.title", "#0d0e0b");
    }

    OfflineFiles(Assets assets, Frames frames, Page page) {
        this.page = page;
        this.assets = assets;
        this.frames = frames;
        this.worker = assets.text(WORKER);
    }

    void addTo(RoutesConfig routes) {
        String place = "/{nursery}/" + page.address() + "/";
        routes.get(place + WORKER, this::serveWorker);
        routes.get(place + "manifest.webmanifest", this::serveManifest);
    }

    private void serveWorker(Context http) {
        String slug = frames.ofSite(http, "").nursery().orElseThrow().slug();
        List<String> files = assets.addressesOfPages();
        String list =
                files.stream().map("\"%s\""::formatted).collect(Collectors.joining(",", "[", "]"));
        String version = Assets.fingerprint((list + worker).getBytes(StandardCharsets.UTF_8));
        http.header("Service-Worker-Allowed", "/" + slug + "/" + page.address());
        http.header("Cache-Control", "no-cache");
        http.contentType("text/javascript; charset=utf-8");
        http.result(
                "const VERSION = \"%s\"\nconst FILES = %s\n\n%s".formatted(version, list, worker));
    }

    private void serveManifest(Context http) {
        Frame frame = frames.ofSite(http, "");
        String manifest =
                """
                {"name":"%s","short_name":"%s","lang":"%s","start_url":"%s","scope":"%s",
                "display":"standalone","background_color":"%s","theme_color":"%s",
                "icons":[{"src":"%s","sizes":"192x192","type":"image/png"},
                {"src":"%s","sizes":"512x512","type":"image/png"},
                {"src":"%s","sizes":"any","type":"image/svg+xml"}]}
                """;
        http.header("Cache-Control", "no-cache");
        http.contentType("application/manifest+json; charset=utf-8");
        http.result(
                manifest.formatted(
                        plain(frame.say(page.title())) + ", " + plain(siteOf(frame)),
                        plain(frame.say(page.title())),
                        frame.words().language().code(),
                        frame.to(page.address()),
                        frame.to(page.address()),
                        page.ground(),
                        page.ground(),
                        assets.address("icons/round-192.png"),
                        assets.address("icons/round-512.png"),
                        assets.address("icons/filter.svg")));
    }

    private static String siteOf(Frame frame) {
        return frame.nursery().orElseThrow().name();
    }

    /** A name has no use for marks that end a text in JSON. */
    private static String plain(String name) {
        return name.replaceAll("[\"\\\\\\p{Cntrl}]", " ");
    }
}
