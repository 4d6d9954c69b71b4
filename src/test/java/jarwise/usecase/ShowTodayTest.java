package jarwise.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.usecase.findings.Jar;
import jarwise.usecase.findings.Story;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.findings.Today;
import jarwise.usecase.findings.Today.Due;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShowTodayTest {

    @TempDir private Path folder;
    private TestSite site;

    @BeforeEach
    void openSite() {
        site = new TestSite(folder);
    }

    @AfterEach
    void closeSite() {
        site.close();
    }

    @Test
    void saysThatNothingIsOnRecord() {
        Today today = at(Story.NOW);

        assertThat(today.empty()).isTrue();
        assertThat(today.due()).isEmpty();
        assertThat(today.known()).isEmpty();
    }

    @Test
    void putsWhatIsDueInOrder() {
        Story.toldTo(site);

        List<Due> due = at(Story.NOW).due();

        assertThat(due)
                .hasExactlyElementsOfTypes(
                        Due.NoEntry.class, Due.Read.class, Due.Decide.class, Due.Walk.class);
    }

    /** Washed Monday 10:00, in the freezer at 11: readable from Tuesday 11:00 to Thursday 10:00. */
    @Test
    void readsFiltersBetweenTheFreezerAndTheirDrying() {
        Story.toldTo(site);

        Due.Read read = only(Due.Read.class, at(Story.NOW));

        assertThat(read.filters()).isEqualTo(3);
        assertThat(read.stand().bench()).contains("P1-B4");
        assertThat(read.window().earliest()).isEqualTo(Instant.parse("2026-03-17T11:00:00Z"));
        assertThat(read.window().readBy()).isEqualTo(Instant.parse("2026-03-19T10:00:00Z"));
        assertThat(read.needed()).isEqualTo(Duration.ofMinutes(21));
    }

    @Test
    void keepsPeopleOutUntilTheIntervalHasPassed() {
        Story.toldTo(site);
        Instant end = Instant.parse("2026-03-19T18:30:00Z");

        assertThat(only(Due.NoEntry.class, at(Story.NOW)).until()).contains(end);
        assertThat(at(end.minusSeconds(1)).due()).anyMatch(Due.NoEntry.class::isInstance);
        assertThat(at(end).due()).noneMatch(Due.NoEntry.class::isInstance);
    }

    @Test
    void saysWhatIsKnownOfEachBench() {
        Story.toldTo(site);

        Today today = at(Story.NOW);

        assertThat(verdictOf(today, "P1-B5")).contains(Verdict.ABOVE_THE_LINE);
        assertThat(verdictOf(today, "P1-B3")).contains(Verdict.BELOW_THE_LINE);
        assertThat(findingOf(today, "P1-B4").notRead()).isTrue();
        assertThat(today.bare())
                .containsExactly(new Stand(Optional.of("P1-D1"), Optional.of("Tessellate")));
        assertThat(today.round()).contains(new Today.RoundState(Story.ROUND, 61, 58, 3));
    }

    @Test
    void asksForAnAnswerWhereOneStepWasRecordedTwice() {
        site.with(Jar.of("J-1", TestSite.START).at("P1", "P1-B3", "Rubia Tarn"));
        site.with(Jar.of("J-1", TestSite.START).at("P1", "P1-B4", "Rubia Tarn").by("phone-2"));

        assertThat(only(Due.Answer.class, at(Story.NOW)).samples()).isEqualTo(1);
    }

    /**
     * The page stays quick because it asks little, and no more the more jars there are. Some of it
     * is only whether anything was recorded since.
     */
    @Test
    void asksTheDatabaseAFewQuestionsAndNoMoreForMoreJars() {
        Story.toldTo(site);
        int questions = site.questionsAskedBy(() -> at(Story.NOW));
        site.with(
                java.util.stream.IntStream.range(0, 60)
                        .mapToObj(
                                i ->
                                        Jar.of("X-" + i, LocalDate.of(2026, 3, 16))
                                                .at("P1", "P1-B" + (10 + i), "Rubia Tarn")
                                                .counted("larva1", i % 2))
                        .toList());

        assertThat(site.questionsAskedBy(() -> at(Story.NOW)))
                .isLessThanOrEqualTo(questions)
                .isLessThanOrEqualTo(25);
    }

    private Optional<Verdict> verdictOf(Today today, String bench) {
        return findingOf(today, bench).verdict();
    }

    private static Finding findingOf(Today today, String bench) {
        return today.known().stream()
                .filter(finding -> finding.stand().bench().equals(Optional.of(bench)))
                .findFirst()
                .orElseThrow();
    }

    private static <T extends Due> T only(Class<T> type, Today today) {
        List<T> all = today.due().stream().filter(type::isInstance).map(type::cast).toList();
        assertThat(all).hasSize(1);
        return all.get(0);
    }

    private Today at(Instant moment) {
        return site.showToday().run(site.nursery, moment.atZone(ZoneOffset.UTC));
    }
}
