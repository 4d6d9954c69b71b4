package jarwise.web.map;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.web.findings.StoryServer;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MapPagesTest {

    private static final Pattern ROW =
            Pattern.compile("<tr class=\"strips-row\">(.*?)</tr>", Pattern.DOTALL);

    @TempDir Path folder;

    @Test
    void theMapAndFindingsSayTheSameOfTheNewestRound() throws Exception {
        try (StoryServer server = new StoryServer(folder, true)) {
            List<String> map = rows(server.text("map"));

            assertThat(map).isNotEmpty().isEqualTo(rows(server.text("findings")));
            assertThat(map.get(0)).contains("P1-B5").contains("above the line");
        }
    }

    @Test
    void theAnswerCountsEveryBenchAndComesBeforeThePicture() throws Exception {
        try (StoryServer server = new StoryServer(folder, true)) {
            String page = server.text("map");

            assertThat(page)
                    .contains(
                            "1 bench is above the line; 1 is below it; 1 is cut and not read yet;"
                                    + " 1 was not sampled.");
            assertThat(page.indexOf("<h1")).isLessThan(page.indexOf("map-page"));
            assertThat(page.indexOf("map-page")).isLessThan(page.indexOf("strips-row"));
            assertThat(page).contains("Targeted samples, apart").contains("W2-hunt-00");
        }
    }

    @Test
    void aClosedBenchSaysUntilWhenInWords() throws Exception {
        try (StoryServer server = new StoryServer(folder, true)) {
            assertThat(server.text("map"))
                    .contains("P1-B4: do not enter until 19 March 2026, 18:30.");
        }
    }

    @Test
    void roundsAreLinksThatKeepTheAnimals() throws Exception {
        try (StoryServer server = new StoryServer(folder, true)) {
            String page = server.text("map?pest=FRANOC&stage=adult&round=2026-03-09");

            assertThat(page)
                    .contains("Adults of western flower thrips, round of 9 March 2026")
                    .contains("?pest=FRANOC&amp;round=2026-03-02&amp;stage=adult");
            assertThat(Pattern.compile("aria-current=\"true\"").matcher(page).results()).hasSize(1);
        }
    }

    @Test
    void withoutARoundOrAHouseThePageSaysWhatToDo() throws Exception {
        try (StoryServer server = new StoryServer(folder, false)) {
            assertThat(server.text("map")).contains("Nothing is drawn here yet.");
            assertThat(server.get("map/draw").statusCode()).isEqualTo(200);
            assertThat(server.get("map/lots").statusCode()).isEqualTo(200);
        }
    }

    @Test
    void thePlanIsAFileThatSaysItsMetresAreLocal() throws Exception {
        try (StoryServer server = new StoryServer(folder, true)) {
            var answer = server.get("map.geojson");
            String json = new String(answer.body(), StandardCharsets.UTF_8);

            assertThat(answer.headers().firstValue("Content-Type"))
                    .hasValue("application/geo+json; charset=utf-8");
            assertThat(json).contains("\"FeatureCollection\"").contains("\"local\" : true");
            assertThat(Pattern.compile("\"Feature\"").matcher(json).results()).hasSize(5);
            assertThat(json).contains("Tessellate");
        }
    }

    @Test
    void aFormThatIsRefusedSaysWhyAndKeepsWhatWasTyped() throws Exception {
        try (StoryServer server = new StoryServer(folder, true)) {
            HttpResponse<String> layout =
                    post(
                            server,
                            "map/draw",
                            "map/house",
                            "code=H2&length=50&width=24&layout=4+x+6");
            assertThat(layout.statusCode()).isEqualTo(422);
            assertThat(layout.body())
                    .contains("Maybe 4 bays × 6 benches, or 4 benches × 6 bays.")
                    .contains("value=\"4 x 6\"");

            HttpResponse<String> move =
                    post(
                            server,
                            "map/lots",
                            "map/move",
                            "stand=L-1+%40+P1-D1&to=P1-D1&day=2026-03-18&plants=5");
            assertThat(move.statusCode()).isEqualTo(422);
            assertThat(move.body())
                    .contains("They stand on P1-D1 already; two benches are needed.")
                    .contains("value=\"2026-03-18\"");
        }
    }

    private static HttpResponse<String> post(
            StoryServer server, String page, String action, String fields) throws Exception {
        HttpClient client = HttpClient.newBuilder().cookieHandler(new CookieManager()).build();
        String form =
                client.send(
                                HttpRequest.newBuilder(URI.create(server.page(page))).build(),
                                HttpResponse.BodyHandlers.ofString())
                        .body();
        Matcher token = Pattern.compile("name=\"form_token\" value=\"(\\w+)\"").matcher(form);
        assertThat(token.find()).isTrue();
        return client.send(
                HttpRequest.newBuilder(URI.create(server.page(action)))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(
                                HttpRequest.BodyPublishers.ofString(
                                        fields + "&form_token=" + token.group(1)))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** Rows as text: pictures differ in size, words and figures do not. */
    private static List<String> rows(String page) {
        return ROW.matcher(page)
                .results()
                .map(MatchResult::group)
                .map(row -> row.replaceAll("<svg.*?</svg>", "").replaceAll("<[^>]+>", " "))
                .map(row -> row.replaceAll("\\s+", " "))
                .toList();
    }
}
