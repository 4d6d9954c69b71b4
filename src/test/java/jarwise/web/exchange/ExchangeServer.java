package jarwise.web.exchange;

import jarwise.Program;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.exchange.Phone;
import jarwise.wire.pest.ShippedPests;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A real server with one site, registered jars, and a client that sends as a device does. */
public final class ExchangeServer implements AutoCloseable {

    public static final String SLUG = "lane";
    public static final String TOKEN = "00112233445566778899aabbccddeeff";

    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    public final Database database;
    private final Program program;
    private final int port;

    private ExchangeServer(Path folder) {
        String address = address(folder);
        program = Program.open(address, () -> Instant.parse("2026-05-11T12:00:00Z"));
        database = Database.open(address);
        port = program.serve(0);
    }

    /** Makes the data of a site, with these jars. */
    public static void prepare(Path folder, List<String> jars) {
        try (Database database = Database.open(address(folder))) {
            new SiteStore(database).save(new Nursery(SLUG, "Lane", ZoneOffset.UTC, "en"));
            PestStore pests = new PestStore(database);
            ShippedPests.read().forEach(pests::save);
            for (int i = 0; i < jars.size(); i++) {
                SampleEvent registered =
                        new SampleEvent(
                                new EventId("desk-" + SLUG, i + 1L),
                                new SampleCode(jars.get(i)),
                                Phone.at(0),
                                "SC-1",
                                Optional.empty(),
                                Phone.step(Step.REGISTERED, Map.of(Facts.SAMPLING_UNITS, "10")));
                new EventStore(database).append(SLUG, List.of(registered));
            }
        }
    }

    /** Starts a server on data that were prepared. */
    public static ExchangeServer start(Path folder) {
        return new ExchangeServer(folder);
    }

    /** {@return where the data of such a server lie} */
    public static String address(Path folder) {
        return folder.resolve("data").toString();
    }

    public int port() {
        return port;
    }

    public EventStore events() {
        return new EventStore(database);
    }

    /** {@return what the server knows of a jar} */
    public SampleFold fold(String jar) {
        return events().fold(SLUG, new SampleCode(jar)).orElseThrow();
    }

    /** Sends a batch to this server. */
    public HttpResponse<String> send(String body) throws IOException, InterruptedException {
        return send(port, body);
    }

    /** Sends a batch to whatever listens at a port of this machine. */
    public static HttpResponse<String> send(int port, String body)
            throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/lane/events"))
                        .header("Content-Type", "application/json")
                        .header("Cookie", "jarwise-form=" + TOKEN)
                        .header("Jarwise-Form", TOKEN)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build();
        return CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
    }

    /** {@return the status of a page of the site} */
    public int status(String page) throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + port + "/lane/" + page);
        return CLIENT.send(
                        HttpRequest.newBuilder(address).build(),
                        HttpResponse.BodyHandlers.discarding())
                .statusCode();
    }

    @Override
    public void close() {
        database.close();
        program.close();
    }
}
