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
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.samples.FirstCounts;
import jarwise.wire.exchange.EventBatch;
import jarwise.wire.pest.ShippedPests;
import java.nio.file.Path;
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
