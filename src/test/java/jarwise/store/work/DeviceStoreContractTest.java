package jarwise.store.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.site.Device;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.Row;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the store of devices promises, on both databases. */
class DeviceStoreContractTest {

    private static final Instant START = Instant.parse("2026-03-27T17:00:00.000001Z");

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
        private DeviceStore devices;

        @SuppressWarnings("NullAway.Init")
        Contract(DatabaseUnderTest kind) {
            this.kind = kind;
        }

        @BeforeEach
        void open() {
            database = kind.fresh(folder);
            devices = new DeviceStore(database);
            for (String slug : List.of("lane", "other")) {
                database.write(
                        handle -> {
                            Row.of("nursery")
                                    .with("slug", slug)
                                    .with("name", slug)
                                    .with("zone", "UTC")
                                    .with("language", "en")
                                    .insert(handle);
                            return slug;
                        });
            }
        }

        @AfterEach
        void close() {
            database.close();
        }

        private Device device(String id, Instant letInAt, boolean plain) {
            return new Device(
                    id, "Tablet " + id, "SC-1", plain, letInAt, letInAt, Optional.empty());
        }

        @Test
        void findsADeviceByItsSecretInItsOwnNurseryOnly() {
            devices.add("lane", device("a", START, false), "hash-a");

            assertThat(devices.find("lane", "hash-a")).contains(device("a", START, false));
            assertThat(devices.find("lane", "hash-b")).isEmpty();
            assertThat(devices.find("other", "hash-a")).isEmpty();
        }

        @Test
        void listsThoseLetInLastFirst() {
            devices.add("lane", device("a", START, false), "hash-a");
            devices.add("lane", device("b", START.plusSeconds(1), true), "hash-b");
            devices.add("other", device("c", START, false), "hash-c");

            assertThat(devices.devices("lane"))
                    .containsExactly(
                            device("b", START.plusSeconds(1), true), device("a", START, false));
        }

        @Test
        void aDeviceIsShutOutOnceAndStaysOnRecord() {
            devices.add("lane", device("a", START, false), "hash-a");
            Instant later = START.plusSeconds(60);

            assertThat(devices.revoke("other", "a", later)).isFalse();
            assertThat(devices.revoke("lane", "a", later)).isTrue();
            assertThat(devices.revoke("lane", "a", later.plusSeconds(1))).isFalse();
            assertThat(devices.find("lane", "hash-a").orElseThrow().revokedAt()).contains(later);
        }

        @Test
        void notesWhenADeviceWasSeen() {
            devices.add("lane", device("a", START, false), "hash-a");
            devices.seen("lane", "a", START.plusSeconds(600));

            assertThat(devices.devices("lane"))
                    .extracting(Device::lastSeen)
                    .containsExactly(START.plusSeconds(600));
        }

        @Test
        void noTwoDevicesShareASecret() {
            devices.add("lane", device("a", START, false), "hash-a");

            assertThatThrownBy(() -> devices.add("lane", device("b", START, false), "hash-a"))
                    .isInstanceOf(RuntimeException.class);
            assertThat(devices.devices("lane")).hasSize(1);
        }
    }
}
