package jarwise.web.rounds;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.plan.RoundPlan;
import jarwise.store.work.RoundPlanStore;
import jarwise.usecase.planning.PlanSite;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@Tag("slow")
class RoundPagesTest {

    private static final String MONDAY = "sent=1&day=2026-05-11&stand=P1-B1%2FL-2&k=0.5";

    @TempDir Path folder;

    @Test
    void answersWithoutScriptWhatWasTypedIntoTheSentence() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            String asked = "rounds/new?question=detect&efficiency=0.6&" + MONDAY;

            assertThat(server.get(asked + "&density=0.1").body())
                    .contains("8 jars of 10 growing points")
                    .as("0.093 is never shown tighter than it is")
                    .contains("fewer than 1 in 10.")
                    .contains("Save this round")
                    .contains("8 jars at random places");
            assertThat(server.get(asked + "&density=0.2").body())
                    .contains("5 jars of 10 growing points");
        }
    }

    @Test
    void theAnswerAloneIsAPartOfThePage() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            String part = server.get("rounds/new/answer?question=detect&" + MONDAY).body();

            assertThat(part).doesNotContain("<html").contains("If none is found you can say");
            assertThat(server.get("rounds/new?question=detect&" + MONDAY).body())
                    .contains(part.strip());
        }
    }

    @Test
    void everyQuestionHasItsPage() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            for (String question : List.of("detect", "estimate", "decide", "delimit", "compare")) {
                HttpResponse<String> page =
                        server.get(
                                "rounds/new?question="
                                        + question
                                        + "&find=H2-A1&check=H2-A1%2FL-1&each=2&"
                                        + MONDAY);
                assertThat(page.statusCode()).as(question).isEqualTo(200);
                assertThat(page.body()).contains("growing points, about");
            }
        }
    }

    @Test
    void asLongAsNoFindIsChosenNoJarIsSpokenOf() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            assertThat(server.get("rounds/new?question=delimit&" + MONDAY).body())
                    .contains("Choose the bench with the find")
                    .doesNotContain("growing points, about", "jars at random places");
        }
    }

    @Test
    void aFaultIsSaidAndWhatWasTypedStays() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            String page = server.get("rounds/new?question=detect&density=lots&" + MONDAY).body();

            assertThat(page)
                    .contains("role=\"alert\"")
                    .contains("Number on a growing point:")
                    .contains("value=\"lots\"")
                    .doesNotContain("Save this round");
        }
    }

    @Test
    void textsFromOutsideAreEscaped() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            String page =
                    server.get("rounds/new?density=%3Cscript%3Ealert(1)%3C%2Fscript%3E").body();

            assertThat(page).doesNotContain("<script>alert");
        }
    }

    @Test
    void aSavedRoundIsListedShownAndWithdrawn() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            String plan = "rounds/new?question=detect&" + MONDAY;
            HttpResponse<String> saved =
                    server.post("rounds/new", "question=detect&jars=3&" + MONDAY, plan);

            assertThat(saved.statusCode()).isEqualTo(303);
            assertThat(saved.headers().firstValue("Location"))
                    .hasValue("/lane/rounds/2026-05-11-a");
            RoundPlan round =
                    new RoundPlanStore(server.database)
                            .find(PlanSite.SLUG, "2026-05-11-a")
                            .orElseThrow();
            assertThat(round.jars()).hasSize(3);
            assertThat(server.get("rounds").body())
                    .contains("1 round waits to be walked.")
                    .contains("/lane/rounds/2026-05-11-a");
            assertThat(server.get("rounds/2026-05-11-a").body())
                    .contains("3 jars to cut")
                    .contains(round.jars().get(2).code().text());
            assertThat(server.get("today").body())
                    .as("Today leads to the sheet of the round")
                    .contains("href=\"/lane/walk/2026-05-11-a\"");

            server.post("rounds/2026-05-11-a/withdraw", "reason=Wet+leaves", "rounds/2026-05-11-a");
            assertThat(server.get("rounds/2026-05-11-a").body()).contains("Wet leaves");
            assertThat(server.get("rounds/none").statusCode()).isEqualTo(404);
        }
    }

    @Test
    void aRunningIntervalLeavesNoButtonButAnException() throws Exception {
        try (RoundServer server = new RoundServer(folder)) {
            server.site.sprayed("P1-B1", Instant.parse("2026-05-10T20:00:00Z"), 24);
            String plan = "rounds/new?question=detect&" + MONDAY;

            assertThat(server.get(plan).body())
                    .contains("No entry to P1-B1 before Mon 11 May, 20:00.")
                    .contains("The product label is the law.")
                    .contains("Who answers for it");
            String form = "question=detect&jars=3&" + MONDAY;
            assertThat(server.post("rounds/new", form, plan).statusCode()).isEqualTo(422);
            String excepted = form + "&exception_by=HG-1&exception_reason=label";
            assertThat(server.post("rounds/new", excepted, plan).statusCode()).isEqualTo(303);
            assertThat(server.get("rounds/2026-05-11-a").body()).contains("HG-1: label");
        }
    }
}
