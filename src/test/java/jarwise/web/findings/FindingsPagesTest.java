package jarwise.web.findings;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingsPagesTest {

    @TempDir private Path folder;
    private StoryServer server;

    @BeforeEach
    void start() {
        server = new StoryServer(folder, true);
    }

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void answersForTheChoiceInTheAddress() throws Exception {
        assertThat(server.text("findings?bench=P1-B3"))
                .contains("Larvae are below the line on P1-B3.", "in 48 jars")
                .doesNotContain("‘Cloudmarsh’</span>");
        assertThat(server.text("findings?pest=HEMTLA")).contains("none has been read");
    }

    @Test
    void tellsDaysThatRunBackwards() throws Exception {
        HttpResponse<byte[]> answer = server.get("findings?from=2026-03-20&to=2026-03-01");

        assertThat(answer.statusCode()).isEqualTo(422);
    }

    @Test
    void handsTheSameChoiceOutAsASheetAndAPicture() throws Exception {
        HttpResponse<byte[]> csv = server.get("findings.csv?bench=P1-B5");
        HttpResponse<byte[]> svg = server.get("findings.svg?bench=P1-B5");

        assertThat(csv.headers().firstValue("content-type"))
                .hasValueSatisfying(type -> assertThat(type).startsWith("text/csv"));
        assertThat(new String(csv.body(), java.nio.charset.StandardCharsets.UTF_8).lines())
                .hasSize(4)
                .anyMatch(
                        line -> line.startsWith("P1-B5,Cloudmarsh,2026-03-16,FRANOC,larva,8,80,"));
        assertThat(new String(svg.body(), java.nio.charset.StandardCharsets.UTF_8))
                .startsWith("<svg");
    }

    @Test
    void showsEveryZeroWithItsBound() throws Exception {
        assertThat(server.text("findings?bench=P1-B3")).contains("below 0.0", "fewer than 1 in");
    }

    @Test
    void printsTheLetterAndAnswersForSitesWithoutData() throws Exception {
        assertThat(server.get("report.pdf").statusCode()).isEqualTo(200);
        assertThat(server.text("report"))
                .contains("Decide today: ‘Cloudmarsh’, P1-B5.", "The product label is the law.");
        assertThat(server.text("report?pest=HEMTLA&stage=motile")).contains("no verdict yet");
    }
}
