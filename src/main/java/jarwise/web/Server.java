package jarwise.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import jarwise.base.InvalidInput;
import jarwise.base.Refused;
import jarwise.site.Nursery;
import jarwise.web.lan.Admission;
import jarwise.web.lan.Lan;
import jarwise.web.lan.LanDoors;
import jarwise.web.lan.Reach;
import java.time.InstantSource;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.eclipse.jetty.io.EofException;

/** The web server: pages on this machine's own address, and in the local network if asked to. */
public final class Server implements AutoCloseable {

    /** A sheet of a million rows is below 50 MB; nothing else that is sent comes near. */
    private static final long LARGEST_REQUEST_BYTES = 52L * 1024 * 1024;

    private static final Logger LOG = Logger.getLogger(Server.class.getName());

    /** How far down the reason of a refused file lies at the most. */
    private static final int DEEPEST_CAUSE = 8;

    private final Javalin javalin;
    private final Templates templates = new Templates();
    private final Frames frames;
    private volatile Optional<Reach> reach = Optional.empty();

    /**
     * Builds the server; {@link #start} opens it.
     *
     * @param nurseries the sites in the database
     * @param clock what time it is
     * @param admission lets other devices in
     * @param screens makes the screens, given what they need to answer
     */
    public Server(
            Supplier<List<Nursery>> nurseries,
            InstantSource clock,
            Admission admission,
            Function<Kit, List<Pages>> screens) {
        Assets assets = new Assets();
        this.frames = new Frames(nurseries, clock, assets);
        List<Pages> pages = screens.apply(new Kit(templates, frames, this::reach));
        this.javalin =
                Javalin.create(
                        config -> {
                            configure(config);
                            new Guard(assets, admission, this::reach).addTo(config.routes);
                            assets.addTo(config.routes);
                            Stream.of(OfflineFiles.Page.ROUND, OfflineFiles.Page.MICROSCOPE)
                                    .map(page -> new OfflineFiles(assets, frames, page))
                                    .forEach(files -> files.addTo(config.routes));
                            addFaults(config.routes);
                            pages.forEach(page -> page.addTo(config.routes));
                        });
    }

    /**
     * What a screen needs to answer.
     *
     * @param templates turns records into HTML
     * @param frames what stands around the content
     * @param reach how other devices reach the running server; empty where they do not
     */
    public record Kit(Templates templates, Frames frames, Supplier<Optional<Reach>> reach) {}

    /** {@return how other devices reach the running server; empty where they do not} */
    public Optional<Reach> reach() {
        return reach;
    }

    /**
     * Opens the server on 127.0.0.1.
     *
     * @param port wanted port, 0 for any
     * @return the port it got
     */
    public int start(int port) {
        javalin.start("127.0.0.1", port);
        return javalin.port();
    }

    /**
     * Opens the server on 127.0.0.1 and to the local network.
     *
     * @param port wanted port on 127.0.0.1, 0 for any
     * @param lan where else
     * @return the port it got on 127.0.0.1
     */
    public int start(int port, Lan lan) {
        LanDoors doors = new LanDoors(lan);
        doors.addTo(javalin.unsafe.jetty, port);
        javalin.start();
        reach = Optional.of(doors.reach());
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }

    private static void configure(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = LARGEST_REQUEST_BYTES;
        config.http.prefer405over404 = true;
        config.jetty.multipartConfig.maxFileSize(50, io.javalin.config.SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(52, io.javalin.config.SizeUnit.MB);
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
    }

    private void addFaults(RoutesConfig routes) {
        routes.exception(Refused.class, (refused, http) -> refuse(http, refused));
        routes.exception(InvalidInput.class, (fault, http) -> invalid(http, fault));
        routes.exception(HttpResponseException.class, (answer, http) -> httpFault(http, answer));
        routes.exception(Exception.class, (fault, http) -> ourFault(http, fault));
    }

    private void refuse(Context http, Refused refused) {
        Frame frame = frames.ofProgram(http, "");
        answerFault(http, frame, 422, frame.words().say(refused.reason()));
    }

    private void invalid(Context http, InvalidInput fault) {
        String said = fault.getMessage();
        answerFault(http, frames.ofProgram(http, ""), 422, said == null ? "" : said);
    }

    private void httpFault(Context http, HttpResponseException answer) {
        Frame frame = frames.ofProgram(http, "");
        String key =
                switch (answer.getStatus()) {
                    case 403 -> forbidden(String.valueOf(answer.getMessage()));
                    case 404 -> "fault.not-found";
                    case 413 -> "fault.too-large";
                    default -> "fault.request";
                };
        answerFault(http, frame, answer.getStatus(), frame.say(key));
    }

    private static String forbidden(String why) {
        return switch (why) {
            case "form" -> "fault.form";
            case "device" -> "fault.device";
            case "plain" -> "fault.plain";
            case "desk" -> "fault.desk";
            default -> "fault.host";
        };
    }

    private void ourFault(Context http, Exception fault) {
        if (tooLarge(fault)) {
            httpFault(http, new HttpResponseException(413, "", Map.of()));
            return;
        }
        if (fault instanceof EofException) {
            LOG.log(Level.INFO, "The line broke while {0} was sent", http.path());
            httpFault(http, new HttpResponseException(400, "", Map.of()));
            return;
        }
        LOG.log(Level.SEVERE, "While answering " + http.path(), fault);
        Frame frame = frames.ofProgram(http, "");
        answerFault(http, frame, 500, frame.say("fault.ours"));
    }

    /** The server below tells a file that is too large only in words, three causes deep. */
    private static boolean tooLarge(Exception fault) {
        return Stream.<Throwable>iterate(fault, Objects::nonNull, Throwable::getCause)
                .limit(DEEPEST_CAUSE)
                .map(cause -> String.valueOf(cause.getMessage()))
                .anyMatch(said -> said.startsWith("max ") && said.contains("exceeded"));
    }

    private void answerFault(Context http, Frame frame, int status, String sentence) {
        http.status(status);
        templates.answer(http, "fault.jte", Map.of("frame", frame, "sentence", sentence));
    }
}
