package jarwise.web.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.Program;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Facts;
import jarwise.usecase.exchange.Phone;
import jarwise.wire.pest.ShippedPests;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The address for events: a real server, a real client, and a connection that breaks. */
@Tag("slow")
class ExchangePagesTest {

    private static final String TOKEN = "00112233445566778899aabbccddeeff";
    private static final String SLUG = "lane";

    @TempDir Path folder;
    private final HttpClient client = HttpClient.newHttpClient();
    private Database database;
    private EventStore events;
    private Program program;
    private int port;

    @BeforeEach
    void open() {
        String address = folder.resolve("data").toString();
        program = Program.open(address, () -> Instant.parse("2026-05-11T12:00:00Z"));
        database = Database.open(address);
        new SiteStore(database).save(new Nursery(SLUG, "Lane", ZoneOffset.UTC, "es"));
        PestStore pests = new PestStore(database);
        ShippedPests.read().forEach(pests::save);
        events = new EventStore(database);
        events.append(
                SLUG,
                List.of(
                        Phone.event(
                                "desk-lane",
                                1,
                                Phone.step(Step.REGISTERED, Map.of(Facts.SAMPLING_UNITS, "10")),
                                Phone.at(0))));
        port = program.serve(0);
    }

    @AfterEach
    void close() {
        database.close();
        program.close();
    }

    @Test
    void aRequestOfThisReleaseIsTakenAndAnswered() throws Exception {
        HttpResponse<String> answer = send(port, TOKEN, golden());

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("{\"upTo\":9}");
        assertThat(answer.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(events.fold(SLUG, new SampleCode("J-1")).orElseThrow().sample().state())
                .isEqualTo(SampleState.READING);
    }

    @Test
    void anAnswerLostAfterTheCommitIsHeardAtTheSecondSending() throws Exception {
        try (CuttingProxy proxy = new CuttingProxy(port)) {
            // The client tries once more by itself where a connection ends without an answer.
            proxy.lose(2);
            assertThatThrownBy(() -> send(proxy.port(), TOKEN, golden()))
                    .isInstanceOf(IOException.class);
            assertThat(events.count()).as("the server had committed").isEqualTo(10);
            proxy.lose(0);

            assertThat(send(proxy.port(), TOKEN, golden()).body()).isEqualTo("{\"upTo\":9}");
            assertThat(events.count()).isEqualTo(10);
        }
    }

    @Test
    void aRefusalIsASentenceInTheLanguageOfTheSite() throws Exception {
        HttpResponse<String> answer = send(port, TOKEN, golden().replace("J-1", "J-9"));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).startsWith("{\"refused\":\"El frasco J-9 no está registrado");
        assertThat(events.count()).isEqualTo(1);
    }

    @Test
    void nobodyWritesWithoutTheTokenOfThePage() throws Exception {
        assertThat(send(port, "0".repeat(32), golden()).statusCode()).isEqualTo(403);
        assertThat(events.count()).isEqualTo(1);
    }

    private static String golden() throws IOException {
        return Files.readString(Path.of("src/test/resources/golden/exchange/request-1.json"));
    }

    private HttpResponse<String> send(int to, String token, String body)
            throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(URI.create("http://127.0.0.1:%d/lane/events".formatted(to)))
                        .header("Content-Type", "application/json")
                        .header("Cookie", "jarwise-form=" + TOKEN)
                        .header("Jarwise-Form", token)
                        .POST(HttpRequest.BodyPublishers.ofString(body))
                        .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }
}
