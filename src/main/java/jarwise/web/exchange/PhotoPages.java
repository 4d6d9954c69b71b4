package jarwise.web.exchange;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.Photo;
import jarwise.usecase.exchange.ShowPhoto;
import jarwise.usecase.exchange.TakePhoto;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.wire.exchange.ExchangeJson;
import java.util.regex.Pattern;

/** Pictures of kept finds: devices send them here, and pages show them from here. */
public final class PhotoPages implements Pages {

    /** The page makes them smaller before; this is four times what a sharp one needs. */
    private static final int LARGEST_MEGABYTES = 2;

    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");
    private static final String ADDRESS = "/{nursery}/photos/{sha256}";

    private final Server.Kit kit;
    private final TakePhoto take;
    private final ShowPhoto show;

    public PhotoPages(Server.Kit kit, TakePhoto take, ShowPhoto show) {
        this.kit = kit;
        this.take = take;
        this.show = show;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post(ADDRESS, this::take);
        routes.get(ADDRESS, this::show);
    }

    private void take(Context http) {
        Frame frame = kit.frames().ofSite(http, "");
        String hash = hash(http);
        http.header("Cache-Control", "no-store");
        http.contentType("application/json");
        byte[] picture = http.bodyAsBytes();
        if (picture.length > LARGEST_MEGABYTES * 1024 * 1024) {
            Message why = Message.of("exchange.photo.too-large", String.valueOf(LARGEST_MEGABYTES));
            refuse(http, HttpStatus.CONTENT_TOO_LARGE, frame.words().say(why));
            return;
        }
        try {
            take.run(slug(frame), hash, picture);
            http.result(ExchangeJson.kept(hash));
        } catch (InvalidInput refused) {
            refuse(http, HttpStatus.UNPROCESSABLE_CONTENT, sentence(frame, refused));
        }
    }

    private static void refuse(Context http, HttpStatus status, String sentence) {
        http.status(status);
        http.result(ExchangeJson.refused(sentence));
    }

    private static String sentence(Frame frame, InvalidInput refused) {
        return refused instanceof Refused known
                ? frame.words().say(known.reason())
                : String.valueOf(refused.getMessage());
    }

    /** What is known by its hash never changes: a browser keeps it, but nothing on the way does. */
    private void show(Context http) {
        String slug = slug(kit.frames().ofSite(http, ""));
        Photo photo = show.run(slug, hash(http)).orElseThrow(NotFoundResponse::new);
        http.header("Cache-Control", "private, max-age=31536000, immutable");
        http.contentType(photo.mediaType());
        http.result(photo.bytes());
    }

    private static String hash(Context http) {
        String hash = http.pathParam("sha256");
        if (!HASH.matcher(hash).matches()) {
            throw new NotFoundResponse();
        }
        return hash;
    }

    private static String slug(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new).slug();
    }
}
