package jarwise.usecase.exchange;

import static jarwise.usecase.exchange.Phone.JAR;
import static jarwise.usecase.exchange.Phone.ONE;
import static jarwise.usecase.exchange.Phone.OTHER;
import static jarwise.usecase.exchange.Phone.at;
import static jarwise.usecase.exchange.Phone.batch;
import static jarwise.usecase.exchange.Phone.cut;
import static jarwise.usecase.exchange.Phone.event;
import static jarwise.usecase.exchange.Phone.step;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.Refused;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SeededFilter;
import jarwise.sample.SeededFilter.Placed;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.store.work.SeededFilterStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.samples.FirstCounts;
import jarwise.wire.exchange.EventBatch;
import jarwise.wire.pest.ShippedPests;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a phone may rely on when it sends what it recorded; on both databases. */
class TakeEventsContractTest {

    private static final String SLUG = "lane";

    @Nested
    class OnSqlite extends Contract {
        OnSqlite() {
            super(DatabaseUnderTest.SQLITE);
        }
    }

    @Nested
    @Tag("slow")
    class OnPostgresql extends Contract {
        OnPostgresql() {
            super(DatabaseUnderTest.POSTGRESQL);
        }
    }

    abstract static class Contract {

        @TempDir Path folder;
        private final DatabaseUnderTest kind;
        private Database database;
        private EventStore events;
        private TakeEvents take;

        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            new SiteStore(database).save(new Nursery(SLUG, "Lane", ZoneOffset.UTC, "en"));
            PestStore pests = new PestStore(database);
            ShippedPests.read().forEach(pests::save);
            events = new EventStore(database);
            Deed registered = step(Step.REGISTERED, Map.of(Facts.SAMPLING_UNITS, "10"));
            events.append(SLUG, List.of(event("desk-lane", 1, registered, at(0))));
            take = new TakeEvents(database, FirstCounts.UNWATCHED);
        }

        @AfterEach
        void close() {
            database.close();
        }

        @Test
        void aFurtherWashIsRegisteredByTheDevice() {
            SampleCode wash = new SampleCode(JAR.text() + ".w2");
            Map<String, String> facts = furtherWash("2");

            take.run(SLUG, batch(registered(ONE, 1, wash, facts)));
            take.run(SLUG, batch(of(ONE, 2, wash, read())));
            take.run(SLUG, batch(registered(OTHER, 1, wash, facts)));

            SampleFold fold = events.fold(SLUG, wash).orElseThrow();
            assertThat(fold.sample().role()).isEqualTo(SampleRole.REPEAT_WASH);
            assertThat(fold.sample().samplingUnits()).isEqualTo(10);
            assertThat(fold.openQuestions()).isEmpty();
            assertThat(fold.history()).hasSize(3);
        }

        @Test
        void anotherReadingOfAKnownFilterIsRegisteredByTheDevice() {
            Placed larva = new Placed("A3", "FRANOC", "larva1");
            SampleCode base = new SampleCode("Q3D-25V7");
            LocalDate made = LocalDate.of(2026, 5, 1);
            SeededFilterStore filters = new SeededFilterStore(database);
            filters.put(
                    SLUG,
                    new SeededFilter(base, "A", List.of(larva), made, "SC-1", Optional.empty()),
                    at(0));
            filters.retire(SLUG, base, made.plusDays(1));
            SampleCode reading = new SampleCode("Q3D-25V7.s-00aabb-1");

            take.run(SLUG, batch(registered(ONE, 1, reading, seeded("Q3D-25V7"))));

            SampleFold fold = events.fold(SLUG, reading).orElseThrow();
            assertThat(fold.sample().role()).isEqualTo(SampleRole.SEEDED);
            assertThat(fold.sample().known()).hasValue(1);
        }

        @Test
        void aSampleThatADeviceRegistersMustComeFromAKnownOne() {
            SampleCode wash = new SampleCode(JAR.text() + ".w2");
            SampleCode twice = new SampleCode(JAR.text() + ".w2.w3");
            SampleCode reading = new SampleCode("Q3D-25V7.s-00aabb-1");
            SampleCode own = new SampleCode("Q3D-25V7");
            isRefused(of(ONE, 1, wash, read()), "exchange.sample");
            isRefused(registered(ONE, 1, own, furtherWash("2")), "exchange.sample");
            isRefused(registered(ONE, 1, wash, furtherWash("3")), "exchange.derived");
            isRefused(registered(ONE, 1, wash, seeded(JAR.text())), "exchange.derived");
            isRefused(registered(ONE, 1, wash, Map.of()), "exchange.derived");
            isRefused(registered(ONE, 1, reading, seeded("Q3D-25V7")), "exchange.known-filter");
            take.run(SLUG, batch(registered(ONE, 1, wash, furtherWash("2"))));
            isRefused(registered(ONE, 2, twice, furtherWash("3")), "exchange.washed-jar");
            assertThat(events.count()).isEqualTo(2);
        }

        private void isRefused(SampleEvent event, String key) {
            assertThatThrownBy(() -> take.run(SLUG, batch(event)))
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused -> assertThat(refused.reason().key()).isEqualTo(key));
        }

        private static Map<String, String> furtherWash(String number) {
            return Map.of(
                    Facts.METHOD, "wash",
                    Facts.ROLE, "repeat_wash",
                    Facts.REPEAT_OF, JAR.text(),
                    Facts.WASH_NUMBER, number,
                    Facts.SAMPLING_UNITS, "10");
        }

        private static Map<String, String> seeded(String base) {
            return Map.of(
                    Facts.METHOD, "wash",
                    Facts.ROLE, "seeded",
                    Facts.SEEDED_OF, base,
                    Facts.KNOWN, "1",
                    Facts.COLLECTED_ON, "2026-05-11");
        }

        private static Deed read() {
            return step(Step.FREEZER_OUT, Map.of(Facts.LID, JAR.text(), Facts.BASE, JAR.text()));
        }

        private static SampleEvent registered(
                String device, long sequence, SampleCode sample, Map<String, String> facts) {
            return of(device, sequence, sample, step(Step.REGISTERED, facts));
        }

        private static SampleEvent of(String device, long sequence, SampleCode sample, Deed deed) {
            EventId id = new EventId(device, sequence);
            return new SampleEvent(id, sample, at(sequence), "SC-1", Optional.empty(), deed);
        }

        @ParameterizedTest(name = "batch {0} of five is lost")
        @ValueSource(ints = {1, 2, 3, 4, 5})
        void whatComesAfterALostBatchIsAskedForAgain(int lost) {
            List<EventBatch> five = five();
            long answered = 0;
            for (int i = 1; i <= 5; i++) {
                if (i != lost) {
                    answered = take.run(SLUG, five.get(i - 1));
                }
            }
            assertThat(answered).isEqualTo(2L * (lost - 1));

            for (EventBatch again : five.subList((int) answered / 2, 5)) {
                answered = take.run(SLUG, again);
            }
            assertThat(answered).isEqualTo(10);
            assertThat(events.count()).isEqualTo(11);
        }

        @Test
        void aBatchSentTwiceCountsOnce() {
            EventBatch batch = batch(cut(ONE, 1, "10"), cut(ONE, 2, "9"));

            assertThat(take.run(SLUG, batch)).isEqualTo(2);
            assertThat(take.run(SLUG, batch)).isEqualTo(2);
            assertThat(events.count()).isEqualTo(3);
        }

        @Test
        void anyOrderGivesTheSameSample() {
            take.run(SLUG, batch(slip(3, 2), cut(ONE, 2, "9")));
            assertThat(take.run(SLUG, batch(cut(ONE, 1, "10")))).isEqualTo(3);

            assertThat(fold().sample().samplingUnits()).isEqualTo(10);
            assertThat(fold().openQuestions()).isEmpty();
        }

        @Test
        void twoPhonesAreAnsweredEachForItself() {
            assertThat(take.run(SLUG, batch(cut(ONE, 1, "10")))).isEqualTo(1);
            assertThat(take.run(SLUG, batch(cut(OTHER, 2, "10")))).isZero();
            assertThat(take.run(SLUG, batch(cut(OTHER, 1, "10")))).isEqualTo(2);

            assertThat(fold().openQuestions()).as("three records, all alike").isEmpty();
        }

        @Test
        void twoPhonesThatDisagreeMakeAQuestion() {
            take.run(SLUG, batch(cut(ONE, 1, "10")));
            take.run(SLUG, batch(cut(OTHER, 1, "8")));

            assertThat(fold().openQuestions()).hasSize(1);
            assertThat(fold().sample().samplingUnits()).as("the smaller name holds").isEqualTo(10);
        }

        @ParameterizedTest(name = "{0}")
        @MethodSource("jarwise.usecase.exchange.TakeEventsContractTest#badEvents")
        void aBatchWithOneBadEventIsRefusedWholeWithASentence(String word, SampleEvent bad) {
            EventBatch batch = batch(cut(ONE, 1, "10"), bad, cut(ONE, 3, "10"));

            assertThatThrownBy(() -> take.run(SLUG, batch))
                    .isInstanceOfSatisfying(
                            Refused.class,
                            refused ->
                                    assertThat(Words.of(Language.ENGLISH).say(refused.reason()))
                                            .contains(word)
                                            .contains("was saved"));
            assertThat(events.count()).as("nothing but the registered jar").isEqualTo(1);
            assertThat(take.run(SLUG, batch(cut(ONE, 1, "10")))).isEqualTo(1);
        }

        @Test
        void aKeptFindAndItsPhotoAreOnRecord() {
            SampleEvent kept =
                    event(ONE, 1, new Deed.VoucherKept("D5", 1, Optional.empty()), at(1));
            SampleEvent photo =
                    event(ONE, 2, new Deed.PhotoTaken(kept.id(), "ab".repeat(32), 81_234), at(2));

            assertThat(take.run(SLUG, batch(kept, photo))).isEqualTo(2);
            assertThat(fold().history()).contains(kept, photo);
        }

        @Test
        void oneNumberIsNeverTwoSteps() {
            take.run(SLUG, batch(cut(ONE, 1, "10")));

            assertThatThrownBy(() -> take.run(SLUG, batch(cut(ONE, 1, "9"), cut(ONE, 2, "9"))))
                    .hasMessageContaining("another content");
            assertThat(events.count()).isEqualTo(2);
        }

        @ParameterizedTest
        @ValueSource(strings = {"desk-lane", "phone", "Phone-00112233445566aa", ""})
        void aDeviceWithoutANameOfItsOwnIsRefused(String device) {
            EventBatch batch = new EventBatch(device, List.of());

            assertThatThrownBy(() -> take.run(SLUG, batch)).isInstanceOf(Refused.class);
        }

        @Test
        void moreThanADaysWorkAtOnceIsRefused() {
            List<SampleEvent> many =
                    LongStream.rangeClosed(1, 501).mapToObj(n -> cut(ONE, n, "10")).toList();

            assertThatThrownBy(() -> take.run(SLUG, new EventBatch(ONE, many)))
                    .isInstanceOf(Refused.class);
            assertThat(take.run(SLUG, new EventBatch(ONE, many.subList(0, 500)))).isEqualTo(500);
        }

        @Test
        void aClockThatJumpsBackAnHourChangesNothing() {
            Deed cut = step(Step.CUT, Map.of(Facts.SAMPLING_UNITS, "10"));
            Deed washed = step(Step.WASHED, Map.of(Facts.FLUID, "soap"));
            take.run(SLUG, batch(event(ONE, 1, cut, at(90)), event(ONE, 2, washed, at(30))));
            assertThat(take.run(SLUG, batch(cut(ONE, 3, "10")))).isEqualTo(3);

            assertThat(fold().sample().state()).isEqualTo(SampleState.WASHED);
            assertThat(fold().openQuestions()).isEmpty();
            assertThat(fold().sample().times().washed()).contains(at(30));
        }

        private SampleFold fold() {
            return events.fold(SLUG, JAR).orElseThrow();
        }

        private static List<EventBatch> five() {
            List<EventBatch> five = new ArrayList<>();
            for (int i = 1; i <= 9; i += 2) {
                five.add(batch(cut(ONE, i, "10"), cut(ONE, i + 1, "10")));
            }
            return five;
        }
    }

    static List<Object[]> badEvents() {
        Deed nobody = new Deed.FilterDone(Set.of("NOBODY"));
        return List.of(
                new Object[] {"sampling_units", cut(ONE, 2, "many")},
                new Object[] {"sampling units", cut(ONE, 2, "0")},
                new Object[] {"'colour'", fact("colour", "red")},
                new Object[] {"'rinses'", fact(Facts.RINSES, "9".repeat(501))},
                new Object[] {"'noon'", fact(Facts.AT, "noon")},
                new Object[] {
                    "no stage 'wing'",
                    event(ONE, 2, new Deed.Counted("FRANOC", "wing", 1, Optional.empty()), at(1))
                },
                new Object[] {"NOBODY", event(ONE, 2, nobody, at(1))},
                new Object[] {
                    "J-99",
                    new SampleEvent(
                            new EventId(ONE, 2),
                            new SampleCode("J-99"),
                            at(1),
                            "SC-1",
                            Optional.empty(),
                            step(Step.CUT, Map.of()))
                });
    }

    private static SampleEvent fact(String name, String value) {
        return event(ONE, 2, step(Step.WASHED, Map.of(name, value)), at(1));
    }

    private static SampleEvent slip(long sequence, long slip) {
        return event(ONE, sequence, new Deed.Voided(new EventId(ONE, slip), "wrong jar"), at(9));
    }
}
