package jarwise.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import jarwise.base.Refused;
import jarwise.tally.StageKey;
import jarwise.usecase.exchange.Phone;
import jarwise.usecase.exchange.TakeEvents;
import jarwise.usecase.samples.FirstCounts;
import jarwise.web.exchange.ExchangeServer;
import jarwise.wire.exchange.ExchangeJson;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What comes from devices is cut off, too large, too new or dated by a wrong clock. */
@Tag("slow")
class ExchangeFaultsTest {

    private static final StageKey ADULT = new StageKey("FRANOC", "adult");

    @TempDir Path folder;
    private ExchangeServer server;

    @BeforeEach
    void start() {
        ExchangeServer.prepare(folder, List.of("J-1"));
        server = ExchangeServer.start(folder);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void aBodyThatBreaksOffLeavesNothingAndTheNextSendingIsTaken() throws Exception {
        String batch = BatchText.of(Phone.ONE, BatchText.adult(1), BatchText.adult(2));

        for (int part : List.of(0, 1, batch.length() / 2, batch.length() - 1)) {
            assertThat(sendPart(batch, part))
                    .as("no answer that it was taken")
                    .doesNotContain("upTo");
        }

        assertThat(server.events().count()).isEqualTo(1);
        assertThat(server.send(batch).body()).isEqualTo("{\"upTo\":2}");
        assertThat(server.fold("J-1").tally().of(ADULT)).hasValue(2);
    }

    /** A device that says how long its request is, sends a part of it, and hangs up. */
    private String sendPart(String batch, int part) throws IOException {
        List<String> head =
                List.of(
                        "POST /lane/events HTTP/1.1",
                        "Host: 127.0.0.1:" + server.port(),
                        "Content-Length: " + batch.length(),
                        "Content-Type: application/json",
                        "Cookie: jarwise-form=" + ExchangeServer.TOKEN,
                        "Jarwise-Form: " + ExchangeServer.TOKEN,
                        "",
                        "");
        try (Socket line = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            String sent = String.join("\r\n", head) + batch.substring(0, part);
            line.getOutputStream().write(sent.getBytes(StandardCharsets.UTF_8));
            line.shutdownOutput();
            return new String(line.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aBodyThatWasCutButLooksWholeIsRefusedAsCutOff() throws Exception {
        String batch = BatchText.of(Phone.ONE, BatchText.adult(1), BatchText.adult(2));

        HttpResponse<String> answer = server.send(batch.substring(0, batch.length() / 2));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("cut off").contains("nothing was saved");
        assertThat(server.events().count()).isEqualTo(1);
    }

    @Test
    void aBodyThatIsTooLargeIsRefusedWithTheLimit() throws Exception {
        String batch = BatchText.of(Phone.ONE, BatchText.adult(1));

        HttpResponse<String> answer = server.send(batch + " ".repeat(4 * 1024 * 1024));

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("refused")
                .contains("4 MB")
                .contains("Nothing was saved");
        assertThat(server.events().count()).isEqualTo(1);
        assertThat(server.send(batch).body()).isEqualTo("{\"upTo\":1}");
    }

    @Test
    void aDeedOfANewerVersionIsRefusedWholeAndWhatCameBeforeItIsTakenAlone() throws Exception {
        String newer = BatchText.event(2, "2026-05-11T09:00:00Z", BatchText.deed("weighed"));
        String both = BatchText.of(Phone.ONE, BatchText.adult(1), newer, BatchText.adult(3));

        HttpResponse<String> answer = server.send(both);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Step 2").contains("weighed").contains("open it again");
        assertThat(server.events().count()).isEqualTo(1);
        assertThat(server.send(BatchText.of(Phone.ONE, BatchText.adult(1))).body())
                .isEqualTo("{\"upTo\":1}");
    }

    @Test
    void aFieldOfANewerVersionIsPassedOver() throws Exception {
        String newer = BatchText.adult(1).replace("\"individuals\"", "\"size\":3,\"individuals\"");

        assertThat(server.send(BatchText.of(Phone.ONE, newer)).body()).isEqualTo("{\"upTo\":1}");
        assertThat(server.fold("J-1").tally().of(ADULT)).hasValue(1);
    }

    @ParameterizedTest(name = "a clock at {0}")
    @ValueSource(strings = {"1970-01-01T00:00:00Z", "2099-12-31T23:59:59.999Z"})
    void aClockThatIsYearsOffChangesNoCountAndNoPage(String at) throws Exception {
        String press = BatchText.event(2, at, BatchText.deed("counted"));

        String answer = server.send(BatchText.of(Phone.ONE, BatchText.adult(1), press)).body();

        assertThat(answer).isEqualTo("{\"upTo\":2}");
        assertThat(server.fold("J-1").tally().of(ADULT)).hasValue(2);
        for (String page : List.of("samples/J-1", "samples", "today", "microscope/data")) {
            assertThat(server.status(page)).as(page).isEqualTo(200);
        }
    }

    @Test
    void aFullDiskRefusesTheBatchWholeAndTakesItAfterRoomIsMade() throws Exception {
        String[] many =
                LongStream.rangeClosed(1, 400).mapToObj(BatchText::adult).toArray(String[]::new);
        String batch = BatchText.of(Phone.ONE, many);

        Refused refused = catchThrowableOfType(Refused.class, () -> takeWithoutRoom(batch));

        assertThat(FaultyData.told(refused)).contains("disk is full").contains("nothing");
        assertThat(server.events().count()).as("nothing half written").isEqualTo(1);
        assertThat(server.events().staleSamples(ExchangeServer.SLUG)).isEmpty();
        assertThat(server.send(batch).body()).isEqualTo("{\"upTo\":400}");
        assertThat(server.fold("J-1").tally().of(ADULT)).hasValue(400);
    }

    private long takeWithoutRoom(String batch) {
        TakeEvents take = new TakeEvents(server.database, FirstCounts.UNWATCHED);
        return FaultyData.withoutRoom(
                server.database, () -> take.run(ExchangeServer.SLUG, ExchangeJson.read(batch)));
    }
}
