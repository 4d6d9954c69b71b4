package jarwise.web.exchange;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.usecase.exchange.TakeEvents;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.wire.exchange.ExchangeJson;

/** The one address to which devices send what they recorded. */
public final class ExchangePages implements Pages {

    /** 500 events with every fact as long as it may be stay below. */
    private static final int LARGEST_MEGABYTES = 4;

    private final Server.Kit kit;
    private final TakeEvents take;

    public ExchangePages(Server.Kit kit, TakeEvents take) {
        this.kit = kit;
        this.take = take;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.post("/{nursery}/events", this::exchange);
    }

    private void exchange(Context http) {
        Frame frame = kit.frames().ofSite(http, "");
        String slug = frame.nursery().orElseThrow(NotFoundResponse::new).slug();
        http.header("Cache-Control", "no-store");
        http.contentType("application/json");
        try {
            http.result(ExchangeJson.upTo(take.run(slug, ExchangeJson.read(body(http)))));
        } catch (InvalidInput refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            http.result(ExchangeJson.refused(sentence(frame, refused)));
        }
    }

    private static String body(Context http) {
        if (http.bodyAsBytes().length > LARGEST_MEGABYTES * 1024 * 1024) {
            throw new Refused(Message.of("exchange.too-large", String.valueOf(LARGEST_MEGABYTES)));
        }
        return http.body();
    }

    private static String sentence(Frame frame, InvalidInput refused) {
        return refused instanceof Refused known
                ? frame.words().say(known.reason())
                : String.valueOf(refused.getMessage());
    }
}
