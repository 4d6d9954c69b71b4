package jarwise.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.tally.StageKey;
import jarwise.usecase.exchange.Phone;
import jarwise.web.exchange.CuttingProxy;
import jarwise.web.exchange.ExchangeServer;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The server is killed after it has committed and before the device hears of it. */
@Tag("slow")
class KilledServerTest {

    private static final String BATCH =
            BatchText.of(Phone.ONE, BatchText.adult(1), BatchText.adult(2), BatchText.adult(3));

    @TempDir Path folder;

    @Test
    void whatWasCommittedBeforeTheKillIsCountedOnceAfterTheNextSending() throws Exception {
        ExchangeServer.prepare(folder, List.of("J-1"));
        Process server = Child.start(ServeUntilKilled.class, ExchangeServer.address(folder));
        try {
            sendAndHearNothing(port(server));
            assertThat(count()).as("committed, and nobody was told").isEqualTo(4);
        } finally {
            server.destroyForcibly();
        }
        assertThat(server.waitFor()).as("killed, not ended by itself").isNotZero();

        try (ExchangeServer next = ExchangeServer.start(folder)) {
            assertThat(next.send(BATCH).body()).isEqualTo("{\"upTo\":3}");
            assertThat(next.events().count()).isEqualTo(4);
            assertThat(next.fold("J-1").tally().of(new StageKey("FRANOC", "adult"))).hasValue(3);
            assertThat(next.events().firstBrokenLink()).isEmpty();
        }
    }

    private static void sendAndHearNothing(int port) {
        try (CuttingProxy proxy = new CuttingProxy(port)) {
            // The client tries once more by itself where a connection ends without an answer.
            proxy.lose(2);
            assertThatThrownBy(() -> ExchangeServer.send(proxy.port(), BATCH))
                    .isInstanceOf(IOException.class);
        }
    }

    private long count() {
        try (Database beside = Database.open(ExchangeServer.address(folder))) {
            return new EventStore(beside).count();
        }
    }

    private static int port(Process server) throws IOException {
        return Integer.parseInt(server.inputReader(StandardCharsets.US_ASCII).readLine());
    }
}
