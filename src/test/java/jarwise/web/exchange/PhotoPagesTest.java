package jarwise.web.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.Photo;
import jarwise.site.Nursery;
import jarwise.store.SiteStore;
import jarwise.store.work.PhotoStore;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The address for pictures: what is taken, what is refused and in which words, what is shown. */
@Tag("slow")
class PhotoPagesTest {

    private static final int LARGEST = 2 * 1024 * 1024;
    private static final byte[] JPEG = HexFormat.of().parseHex("ffd8ffe000104a464946");
    private static final byte[] PNG = HexFormat.of().parseHex("89504e470d0a1a0a0000000d49484452");

    /** Worked out with the command sha256sum of GNU coreutils. */
    private static final String JPEG_HASH =
            "45ae705277879f7f01d778f7c95a065bb0c06ab9936cf24307f375211fee13d1";

    private static final String PNG_HASH =
            "02a3e298f1533f62558c58e4c70edcab9af5a50d62d925fd5390942020fb0fb8";

    @TempDir Path folder;
    private final HttpClient client = HttpClient.newHttpClient();
    private ExchangeServer server;
    private PhotoStore photos;

    @BeforeEach
    void open() {
        ExchangeServer.prepare(folder, List.of("J-1"));
        server = ExchangeServer.start(folder);
        photos = new PhotoStore(server.database);
        new SiteStore(server.database).save(new Nursery("other", "Other", ZoneOffset.UTC, "es"));
    }

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void aPictureComesBackAsItWasSent() throws Exception {
        HttpResponse<String> answer = send("lane", JPEG_HASH, JPEG);
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.body()).isEqualTo("{\"kept\":\"" + JPEG_HASH + "\"}");
        assertThat(answer.headers().firstValue("Cache-Control")).contains("no-store");

        HttpResponse<byte[]> shown = show("lane", JPEG_HASH);
        assertThat(shown.statusCode()).isEqualTo(200);
        assertThat(shown.body()).isEqualTo(JPEG);
        assertThat(shown.headers().firstValue("Content-Type")).contains("image/jpeg");
        assertThat(shown.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        assertThat(shown.headers().firstValue("Cache-Control").orElse(""))
                .contains("private")
                .contains("max-age=31536000");
    }

    @Test
    void theKindIsKnownByTheFirstBytesWhateverTheHeaderSays() throws Exception {
        // send() always says that it sends a JPEG
        assertThat(send("lane", PNG_HASH, PNG).statusCode()).isEqualTo(200);

        assertThat(show("lane", PNG_HASH).headers().firstValue("Content-Type"))
                .contains("image/png");
    }

    @ParameterizedTest(name = "bytes {0}")
    @ValueSource(
            strings = {
                "",
                "ff",
                "ffd8",
                "89504e470d0a1a",
                "89504e470a1a0a0d",
                "474946383961",
                "3c7376673e"
            })
    void anotherKindIsRefusedWithASentence(String hex) throws Exception {
        byte[] file = HexFormat.of().parseHex(hex);
        String hash = Photo.of("image/jpeg", file).sha256();

        HttpResponse<String> answer = send("lane", hash, file);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .startsWith("{\"refused\":\"What was sent is no picture")
                .contains("JPEG or a PNG");
        assertThat(photos.hashes("lane")).isEmpty();
    }

    @Test
    void anotherHashIsRefusedWithBothInTheLanguageOfTheSite() throws Exception {
        HttpResponse<String> answer = send("other", PNG_HASH, JPEG);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .startsWith("{\"refused\":\"La imagen llegó como")
                .contains(JPEG_HASH, PNG_HASH);
        assertThat(photos.hashes("other")).isEmpty();
    }

    @Test
    void twoMegabytesAreTakenAndOneByteMoreIsTooLarge() throws Exception {
        byte[] largest = Arrays.copyOf(JPEG, LARGEST);
        byte[] larger = Arrays.copyOf(JPEG, LARGEST + 1);

        HttpResponse<String> answer = send("lane", hashOf(larger), larger);
        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).contains("refused").contains("2 MB is the most");
        assertThat(photos.hashes("lane")).isEmpty();

        assertThat(send("lane", hashOf(largest), largest).statusCode()).isEqualTo(200);
        assertThat(show("lane", hashOf(largest)).body()).isEqualTo(largest);
    }

    @Test
    void theSamePictureSentTwiceIsOnePicture() throws Exception {
        assertThat(send("lane", JPEG_HASH, JPEG).statusCode()).isEqualTo(200);
        assertThat(send("lane", JPEG_HASH, JPEG).statusCode()).isEqualTo(200);

        assertThat(photos.hashes("lane")).containsExactly(JPEG_HASH);
    }

    @Test
    void aPictureOfAnotherNurseryIsNotThere() throws Exception {
        assertThat(send("lane", JPEG_HASH, JPEG).statusCode()).isEqualTo(200);

        assertThat(show("other", JPEG_HASH).statusCode()).isEqualTo(404);
        assertThat(show("nowhere", JPEG_HASH).statusCode()).isEqualTo(404);
        assertThat(send("nowhere", JPEG_HASH, JPEG).statusCode()).isEqualTo(404);
        assertThat(show("lane", PNG_HASH).statusCode()).isEqualTo(404);
    }

    @ParameterizedTest(name = "address {0}")
    @ValueSource(strings = {"x", "0", "..", "%00", "%2e%2e%2fdata", "G", "A"})
    void anAddressThatIsNoHashIsNotThere(String odd) throws Exception {
        String hash = odd.length() == 1 ? odd.repeat(64).replace("0".repeat(64), "0") : odd;

        assertThat(send("lane", hash, JPEG).statusCode()).isBetween(400, 404);
        assertThat(show("lane", hash).statusCode()).isBetween(400, 404);
    }

    @Test
    void nobodySendsWithoutTheTokenOfThePage() throws Exception {
        HttpResponse<String> answer = send("lane", JPEG_HASH, JPEG, "0".repeat(32));

        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(photos.hashes("lane")).isEmpty();
    }

    @Test
    void dataThatAnotherProgramHoldsRefuseAPictureAndTakeItLater() throws Exception {
        Path file = server.database.file().orElseThrow();
        try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement hold = other.createStatement()) {
            hold.execute("begin immediate");

            HttpResponse<String> answer = send("lane", JPEG_HASH, JPEG);

            assertThat(answer.statusCode()).isEqualTo(422);
            assertThat(answer.body()).startsWith("{\"refused\":\"Another program is writing");
            hold.execute("rollback");
        }
        assertThat(send("lane", JPEG_HASH, JPEG).statusCode()).isEqualTo(200);
    }

    private static String hashOf(byte[] file) {
        return Photo.of("image/jpeg", file).sha256();
    }

    private HttpResponse<String> send(String nursery, String hash, byte[] file)
            throws IOException, InterruptedException {
        return send(nursery, hash, file, ExchangeServer.TOKEN);
    }

    private HttpResponse<String> send(String nursery, String hash, byte[] file, String token)
            throws IOException, InterruptedException {
        HttpRequest request =
                HttpRequest.newBuilder(address(nursery, hash))
                        .header("Content-Type", "image/jpeg")
                        .header("Cookie", "jarwise-form=" + ExchangeServer.TOKEN)
                        .header("Jarwise-Form", token)
                        .POST(HttpRequest.BodyPublishers.ofByteArray(file))
                        .build();
        return client.send(request, HttpResponse.BodyHandlers.ofString());
    }

    private HttpResponse<byte[]> show(String nursery, String hash)
            throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(address(nursery, hash)).build(),
                HttpResponse.BodyHandlers.ofByteArray());
    }

    private URI address(String nursery, String hash) {
        return URI.create(
                "http://127.0.0.1:%d/%s/photos/%s".formatted(server.port(), nursery, hash));
    }
}
