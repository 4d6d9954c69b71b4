package jarwise.usecase.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import jarwise.sample.Step;
import jarwise.store.work.CalendarStore;
import jarwise.treatment.Application;
import jarwise.treatment.ProductUse;
import jarwise.usecase.findings.Jar;
import jarwise.usecase.findings.Story;
import jarwise.usecase.findings.TestSite;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TellCalendarTest {

    private static final Instant NOW = Story.NOW;
    private static final LocalDate MONDAY = Story.ROUND;

    @TempDir private Path folder;
    private TestSite site;
    private TellCalendar calendar;

    @BeforeEach
    void openSite() {
        site = new TestSite(folder);
        calendar = new TellCalendar(site.database, site.counts);
    }

    @AfterEach
    void closeSite() {
        site.close();
    }

    private String told(Instant at) {
        return calendar.run(site.nursery, at);
    }

    private List<VEvent> events(Instant at) {
        return Biweekly.parse(told(at)).first().getEvents();
    }

    private VEvent only(Instant at) {
        List<VEvent> events = events(at);
        assertThat(events).hasSize(1);
        return events.get(0);
    }

    private static Jar jar(String code, String bench) {
        return Jar.of(code, MONDAY).at("P1", bench, "Rubia Tarn");
    }

    private static Application applied(String id, Instant start, boolean ended, double hours) {
        return new Application(
                id,
                "P1",
                Set.of("P1-B4"),
                start,
                ended ? Optional.of(start.plusSeconds(1800)) : Optional.empty(),
                List.of(
                        new ProductUse(
                                "Secret Oil",
                                Optional.empty(),
                                List.of("15"),
                                hours > 0 ? OptionalDouble.of(hours) : OptionalDouble.empty(),
                                OptionalInt.empty(),
                                OptionalInt.empty())),
                "1 L",
                "AP-1",
                "");
    }

    /** Washed Monday 10:00, in the freezer at 11: from Tuesday 11:00 to Thursday 10:00. */
    @Test
    void filtersOfOneBenchAndDayAreOneEntryInTheirWindow() {
        site.with(jar("A", "P1-B4"), jar("B", "P1-B4"), jar("C", "P1-B5"));

        List<VEvent> events = events(NOW);

        assertThat(events)
                .extracting(event -> event.getSummary().getValue())
                .containsExactly("Read 2 filters, P1-B4", "Read 1 filter, P1-B5");
        assertThat(events.get(0).getDateStart().getValue().toInstant())
                .isEqualTo(Instant.parse("2026-03-17T11:00:00Z"));
        assertThat(events.get(0).getDateEnd().getValue().toInstant())
                .isEqualTo(Instant.parse("2026-03-19T10:00:00Z"));
    }

    @Test
    void theSameIsToldAgainInTheSameBytes() {
        site.with(jar("A", "P1-B4"));

        assertThat(told(NOW.plusSeconds(60))).isEqualTo(told(NOW));
    }

    @Test
    void aChangeIsANewVersionOfTheSameEntry() {
        site.with(jar("A", "P1-B4"));
        VEvent first = only(NOW);
        site.with(jar("B", "P1-B4"));
        VEvent second = only(NOW.plusSeconds(60));

        assertThat(first.getSequence().getValue()).isZero();
        assertThat(second.getSequence().getValue()).isEqualTo(1);
        assertThat(second.getUid().getValue()).isEqualTo(first.getUid().getValue());
        assertThat(second.getDateTimeStamp().getValue().toInstant()).isEqualTo(NOW.plusSeconds(60));
        assertThat(second.getSummary().getValue()).isEqualTo("Read 2 filters, P1-B4");
    }

    @Test
    void whatWasReadOrLostBeforeItsTimeIsCancelledOnceAndComesBackIfItMust() {
        site.with(jar("A", "P1-B4"));
        Instant early = Instant.parse("2026-03-18T08:00:00Z");
        VEvent first = only(early);
        site.with(jar("A", "P1-B4").by("other").ended(Step.LOST));
        VEvent cancelled = only(early.plusSeconds(60));

        assertThat(cancelled.getStatus().isCancelled()).isTrue();
        assertThat(cancelled.getSequence().getValue()).isEqualTo(1);
        assertThat(only(early.plusSeconds(120)).getSequence().getValue()).isEqualTo(1);
        site.with(jar("B", "P1-B4"));
        VEvent again = only(early.plusSeconds(180));
        assertThat(again.getStatus().isConfirmed()).isTrue();
        assertThat(again.getSequence().getValue()).isEqualTo(2);
        assertThat(again.getUid().getValue()).isEqualTo(first.getUid().getValue());
    }

    @Test
    void theIntervalRunsFromTheEndOfTheApplication() {
        Instant start = NOW.minus(Duration.ofHours(3));
        site.treatments.add(TestSite.SLUG, applied("T1", start, true, 12), NOW);
        VEvent event = only(NOW);

        assertThat(event.getSummary().getValue()).isEqualTo("No entry: P1-B4");
        assertThat(event.getCategories().get(0).getValues()).containsExactly("REI");
        assertThat(event.getDateStart().getValue().toInstant()).isEqualTo(start.plusSeconds(1800));
        assertThat(event.getDateEnd().getValue().toInstant())
                .isEqualTo(start.plusSeconds(1800).plus(Duration.ofHours(12)));
        assertThat(event.getDescription().getValue())
                .contains("Nobody may enter", "The product label is the law.");
    }

    @Test
    void withoutAnEndNobodyMayEnterForTheRestOfEachDay() {
        Instant start = NOW.minus(Duration.ofHours(3));
        site.treatments.add(TestSite.SLUG, applied("T1", start, false, 12), NOW);
        VEvent first = only(NOW);
        VEvent next = only(NOW.plus(Duration.ofDays(1)));

        assertThat(first.getSummary().getValue()).contains("its end is not recorded");
        assertThat(first.getDateStart().getValue().toInstant()).isEqualTo(start);
        assertThat(first.getDateEnd().getValue().toInstant())
                .isEqualTo(Instant.parse("2026-03-20T00:00:00Z"));
        assertThat(next.getDateEnd().getValue().toInstant())
                .isEqualTo(Instant.parse("2026-03-21T00:00:00Z"));
        assertThat(next.getUid().getValue()).isEqualTo(first.getUid().getValue());
    }

    @Test
    void anApplicationThatWasWithdrawnIsCancelled() {
        site.treatments.add(
                TestSite.SLUG, applied("T1", NOW.minus(Duration.ofHours(3)), true, 12), NOW);
        only(NOW);
        site.treatments.withdraw(TestSite.SLUG, "T1", NOW, "HG-1", "wrong bench");

        assertThat(only(NOW.plusSeconds(60)).getStatus().isCancelled()).isTrue();
    }

    @Test
    void whatIsOverStaysForAWhileAndIsNotCancelled() {
        site.treatments.add(
                TestSite.SLUG, applied("T1", NOW.minus(Duration.ofHours(3)), true, 4), NOW);
        only(NOW);

        assertThat(only(NOW.plus(Duration.ofDays(20))).getStatus().isConfirmed()).isTrue();
        assertThat(events(NOW.plus(Duration.ofDays(70)))).isEmpty();
    }

    @Test
    void nothingThatIsTheClientsOwnIsTold() {
        Story.toldTo(site);
        site.treatments.add(
                TestSite.SLUG, applied("T2", NOW.minus(Duration.ofHours(3)), true, 12), NOW);
        List<String> secrets = new ArrayList<>(List.of("Secret Oil", "Invented-L", "Rubia Tarn"));
        secrets.addAll(List.of("Oak End", "oak-end", "FRANOC", "thrips", "AP-1", "wrong"));

        assertThat(told(NOW)).doesNotContain(secrets);
    }

    @Test
    void anAddressOpensUntilItIsClosedOrAnotherIsMade() {
        OpenCalendar access = new OpenCalendar(new CalendarStore(site.database));
        assertThat(access.opens(TestSite.SLUG, "")).isFalse();
        access.open(TestSite.SLUG, NOW);
        String first = access.secret(TestSite.SLUG).orElseThrow();
        assertThat(first).hasSize(43);
        assertThat(access.opens(TestSite.SLUG, first)).isTrue();
        assertThat(access.opens("other", first)).isFalse();

        access.open(TestSite.SLUG, NOW);
        assertThat(access.opens(TestSite.SLUG, first)).isFalse();
        String second = access.secret(TestSite.SLUG).orElseThrow();
        access.close(TestSite.SLUG, NOW);
        assertThat(access.opens(TestSite.SLUG, second)).isFalse();
        assertThat(access.secret(TestSite.SLUG)).isEmpty();
    }
}
