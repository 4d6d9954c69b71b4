package jarwise.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import jarwise.base.Refused;
import jarwise.sample.Photo;
import jarwise.store.work.PhotoStore;
import jarwise.usecase.exchange.TakePhoto;
import jarwise.web.exchange.ExchangeServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A picture breaks off on its way, and a disk has no room for it. */
@Tag("slow")
class PhotoFaultsTest {

    @TempDir Path folder;
    private ExchangeServer server;
    private PhotoStore photos;
    private final byte[] file = new byte[300_000];
    private String hash = "";

    @BeforeEach
    void start() {
        ExchangeServer.prepare(folder, List.of("J-1"));
        server = ExchangeServer.start(folder);
        photos = new PhotoStore(server.database);
        new Random(7).nextBytes(file);
        file[0] = (byte) 0xff;
        file[1] = (byte) 0xd8;
        file[2] = (byte) 0xff;
        hash = Photo.of("image/jpeg", file).sha256();
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void aPictureThatBreaksOffLeavesNothingAndTheNextSendingIsTaken() throws Exception {
        for (int part : List.of(0, 1, file.length / 2, file.length - 1)) {
            assertThat(sendPart(part)).as("no answer that it was taken").doesNotContain("kept");
        }
        assertThat(photos.hashes(ExchangeServer.SLUG)).isEmpty();

        assertThat(sendPart(file.length)).contains("kept");
        assertThat(photos.find(ExchangeServer.SLUG, hash).orElseThrow().bytes()).isEqualTo(file);
    }

    /** A device that says how long its picture is, sends a part of it, and hangs up. */
    private String sendPart(int part) throws IOException {
        List<String> head =
                List.of(
                        "POST /lane/photos/" + hash + " HTTP/1.1",
                        "Host: 127.0.0.1:" + server.port(),
                        "Connection: close",
                        "Content-Length: " + file.length,
                        "Content-Type: image/jpeg",
                        "Cookie: jarwise-form=" + ExchangeServer.TOKEN,
                        "Jarwise-Form: " + ExchangeServer.TOKEN,
                        "",
                        "");
        try (Socket line = new Socket(InetAddress.getLoopbackAddress(), server.port())) {
            byte[] first = String.join("\r\n", head).getBytes(StandardCharsets.UTF_8);
            line.getOutputStream().write(first);
            line.getOutputStream().write(Arrays.copyOf(file, part));
            line.shutdownOutput();
            return new String(line.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void aFullDiskRefusesThePictureWholeAndTakesItAfterRoomIsMade() {
        TakePhoto take = new TakePhoto(photos);

        Refused refused =
                catchThrowableOfType(
                        Refused.class,
                        () -> FaultyData.withoutRoom(server.database, () -> run(take)));

        assertThat(FaultyData.told(refused)).contains("disk is full").contains("nothing");
        assertThat(photos.hashes(ExchangeServer.SLUG)).isEmpty();
        assertThat(run(take)).containsExactly(hash);
    }

    private Set<String> run(TakePhoto take) {
        take.run(ExchangeServer.SLUG, hash, file);
        return photos.hashes(ExchangeServer.SLUG);
    }
}
