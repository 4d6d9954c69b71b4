package jarwise.store.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.sample.Photo;
import jarwise.sample.SampleCode;
import jarwise.sample.SeededFilter;
import jarwise.sample.SeededFilter.Placed;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.SiteStore;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the stores of known filters and pictures promise, on both databases. */
class MicroscopeStoresContractTest {

    private static final Instant NOW = Instant.parse("2026-05-07T05:40:00.000001Z");
    private static final LocalDate DAY = LocalDate.of(2026, 5, 7);
    private static final SampleCode CODE = new SampleCode("7K4-M9QS");

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

        private final DatabaseUnderTest kind;
        @TempDir Path folder;
        private Database database;
        private SeededFilterStore filters;
        private PhotoStore photos;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            for (String slug : List.of("lane", "other")) {
                new SiteStore(database).save(new Nursery(slug, slug, ZoneOffset.UTC, "en"));
            }
            filters = new SeededFilterStore(database);
            photos = new PhotoStore(database);
        }

        @AfterEach
        void close() {
            database.close();
        }

        private static SeededFilter filter(SampleCode code, LocalDate madeOn) {
            return new SeededFilter(
                    code,
                    "May larvae \"dense\"",
                    List.of(
                            new Placed("A5", "FRANOC", "larva2"),
                            new Placed("A5", "FRANOC", "larva2"),
                            new Placed("B6", "FRANOC", "adult")),
                    madeOn,
                    "ES-1",
                    Optional.empty());
        }

        @Test
        void aKnownFilterComesBackAsItWasMade() {
            filters.put("lane", filter(CODE, DAY), NOW);

            assertThat(filters.find("lane", CODE)).contains(filter(CODE, DAY));
            assertThat(filters.find("other", CODE)).isEmpty();
        }

        @Test
        void whatLiesOnAFilterNeverChanges() {
            filters.put("lane", filter(CODE, DAY), NOW);

            assertThatThrownBy(() -> filters.put("lane", filter(CODE, DAY.plusDays(1)), NOW))
                    .isInstanceOf(RuntimeException.class);
            assertThat(filters.all("lane")).containsExactly(filter(CODE, DAY));
        }

        @Test
        void theNewestFiltersComeFirst() {
            SampleCode later = new SampleCode("LATER");
            filters.put("lane", filter(CODE, DAY), NOW);
            filters.put("lane", filter(later, DAY.plusDays(1)), NOW);

            assertThat(filters.all("lane"))
                    .extracting(SeededFilter::code)
                    .containsExactly(later, CODE);
        }

        @Test
        void aRetiredFilterStaysOnRecordAndRetiresOnce() {
            filters.put("lane", filter(CODE, DAY), NOW);

            assertThat(filters.retire("other", CODE, DAY)).isFalse();
            assertThat(filters.retire("lane", CODE, DAY)).isTrue();
            assertThat(filters.retire("lane", CODE, DAY.plusDays(3))).isFalse();
            assertThat(filters.find("lane", CODE).orElseThrow().retiredOn()).contains(DAY);
        }

        @Test
        void aPictureIsKeptOnceByteByByte() {
            byte[] bytes = {0, -1, 7, 127, -128};
            photos.put("lane", "ab".repeat(32), Photo.of("image/png", bytes), at());
            photos.put(
                    "lane",
                    "ab".repeat(32),
                    Photo.of("image/jpeg", new byte[] {1}),
                    Optional.empty());
            Photo kept = photos.find("lane", "ab".repeat(32)).orElseThrow();

            assertThat(kept.bytes()).isEqualTo(bytes);
            assertThat(kept.mediaType()).isEqualTo("image/png");
            assertThat(photos.find("other", "ab".repeat(32))).isEmpty();
            assertThat(photos.hashes("lane")).containsExactly("ab".repeat(32));
            assertThat(photos.hashes("other")).isEmpty();
        }

        @Test
        void aPictureOfTheLargestSizeComesBackWhole() {
            byte[] bytes = new byte[2 * 1024 * 1024];
            new Random(3).nextBytes(bytes);
            Photo photo = Photo.of("image/jpeg", bytes);
            photos.put("lane", photo.sha256(), photo, Optional.empty());

            assertThat(photos.find("lane", photo.sha256()).orElseThrow().bytes()).isEqualTo(bytes);
        }

        private static Optional<Instant> at() {
            return Optional.of(NOW);
        }
    }
}
