package jarwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.Refused;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole program on a real database, asked over HTTP. */
class ProgramTest {

    private static final Pattern TOKEN =
            Pattern.compile("name=\"form_token\" value=\"([0-9a-f]+)\"");

    @TempDir Path folder;
    private Program program;
    private String home;
    private final HttpClient browser =
            HttpClient.newBuilder()
                    .cookieHandler(new CookieManager())
                    .followRedirects(HttpClient.Redirect.NORMAL)
                    .build();

    @BeforeEach
    void start() {
        program = Program.open(folder.toString(), InstantSource.system());
        home = "http://127.0.0.1:" + program.serve(0);
    }

    @AfterEach
    void stop() {
        program.close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return browser.send(
                HttpRequest.newBuilder(URI.create(home + path)).build(), BodyHandlers.ofString());
    }

    private HttpResponse<String> post(String path, String form)
            throws IOException, InterruptedException {
        return browser.send(
                HttpRequest.newBuilder(URI.create(home + path))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form))
                        .build(),
                BodyHandlers.ofString());
    }

    private String token() throws IOException, InterruptedException {
        Matcher token = TOKEN.matcher(get("/").body());
        assertThat(token.find()).as("the form carries a token").isTrue();
        return token.group(1);
    }

    private void makeNursery() throws IOException, InterruptedException {
        String form = "form_token=" + token() + "&name=North+Lane&zone=UTC&language=es";
        assertThat(post("/", form).uri().getPath()).isEqualTo("/north-lane/today");
    }

    @Test
    void aFirstRunNamesTheNurseryAndShowsItInItsLanguage() throws Exception {
        makeNursery();

        assertThat(get("/").body()).contains("North Lane", "Aquí todavía no se ha contado nada.");
        assertThat(get("/north-lane/import").statusCode()).isEqualTo(200);
        assertThat(get("/north-lane/findings").statusCode()).isEqualTo(200);
        assertThat(get("/north-lane/methods").body()).contains("zero-bound");
    }

    @Test
    void aFormThatIsNotOursChangesNothing() throws Exception {
        token();

        assertThat(post("/", "name=North+Lane&zone=UTC").statusCode()).isEqualTo(403);
        assertThat(post("/", "form_token=00&name=North+Lane&zone=UTC").statusCode()).isEqualTo(403);
        assertThat(get("/").uri().getPath()).as("still no nursery").isEqualTo("/");
    }

    @Test
    void aTimeZoneNobodyKnowsIsSaidBesideTheFieldAndWhatWasTypedIsKept() throws Exception {
        HttpResponse<String> answer =
                post("/", "form_token=" + token() + "&name=North+Lane&zone=Nowhere/Land");

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("Nowhere/Land", "North Lane", "Maybe America/Toronto");
    }

    @Test
    void aFileThatIsTooLargeIsRefusedInASentence() throws Exception {
        makeNursery();
        String edge = "edge-of-a-part";
        String head =
                "--%s\r\nContent-Disposition: form-data; name=\"sheet\"; filename=\"big.csv\"\r\n\r\n"
                        .formatted(edge);
        HttpResponse<String> answer =
                browser.send(
                        HttpRequest.newBuilder(URI.create(home + "/north-lane/import"))
                                .header("Content-Type", "multipart/form-data; boundary=" + edge)
                                .POST(
                                        HttpRequest.BodyPublishers.ofByteArrays(
                                                List.of(
                                                        head.getBytes(StandardCharsets.UTF_8),
                                                        new byte[51 * 1024 * 1024],
                                                        ("\r\n--" + edge + "--\r\n")
                                                                .getBytes(StandardCharsets.UTF_8))))
                                .build(),
                        BodyHandlers.ofString());

        assertThat(answer.statusCode()).isEqualTo(413);
        assertThat(answer.body()).contains("50 MB");
    }

    @Test
    void anAddressThatIsNoPageIsSaidInAPage() throws Exception {
        assertThat(get("/nowhere/today").statusCode()).isEqualTo(404);
    }

    @Test
    void aPageRunsNoScriptButOurs() throws Exception {
        assertThat(get("/").headers().firstValue("Content-Security-Policy").orElse(""))
                .contains("default-src 'none'", "script-src 'self' 'sha256-")
                .doesNotContain("unsafe");
    }

    @Test
    void aSiteWithoutSamplesIsNotGreeted() throws Exception {
        makeNursery();

        assertThat(program.greetings()).isEmpty();
    }

    @Test
    void aSecondServerOnTheSameDataIsRefused() {
        assertThatThrownBy(() -> Program.open(folder.toString(), InstantSource.system()))
                .isInstanceOf(Refused.class);
    }
}
