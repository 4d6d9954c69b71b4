package jarwise.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.plan.RoundPlan;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SamplingMethod;
import jarwise.site.Nursery;
import jarwise.site.Setting;
import jarwise.store.Database;
import jarwise.store.DatabaseUnderTest;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.store.work.RoundStore;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.demo.DemoPests;
import jarwise.usecase.demo.DemoRounds;
import jarwise.usecase.demo.DemoSite;
import jarwise.usecase.demo.Streams;
import jarwise.usecase.demo.day.DemoEvents;
import jarwise.wire.pest.ShippedPests;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MakeDemoTest {

    private static final Nursery SOMEONE =
            new Nursery("someone-else", "Someone else", ZoneId.of("Europe/Berlin"), "en");

    @TempDir Path folder;

    @Test
    void makesTheDemoOnceAndUsesItAgain() {
        List<String> progress = new ArrayList<>();
        assertThat(MakeDemo.inFolder(folder, progress::add)).isTrue();
        assertThat(progress).isNotEmpty();
        assertThat(MakeDemo.inFolder(folder, progress::add)).isFalse();

        holdsTheSameAsTheFold(folder.toString());
    }

    @Test
    @Tag("slow")
    void holdsTheSameInPostgresql() {
        String address = DatabaseUnderTest.POSTGRESQL.freshAddress(folder);

        assertThat(MakeDemo.inDatabase(address, MakeDemoTest::quiet)).isTrue();
        assertThat(MakeDemo.inDatabase(address, MakeDemoTest::quiet)).isFalse();

        holdsTheSameAsTheFold(address);
    }

    /** What a killed process leaves on the disk is what lies there in the middle of the work. */
    @Test
    @Tag("slow")
    void makesADemoAnewThatWasKilledHalfWay() throws IOException {
        Path whole = Files.createDirectory(folder.resolve("whole"));
        Path killed = Files.createDirectory(folder.resolve("killed"));
        List<String> taken = new ArrayList<>();
        MakeDemo.inFolder(
                whole,
                said -> {
                    if (said.contains(" %") && taken.size() < 2) {
                        taken.add(said);
                        copy(whole, killed);
                    }
                });
        assertThat(taken).as("copied in the middle of the work").hasSize(2);
        assertThat(killed.resolve("jarwise.db")).as("not the demo yet").doesNotExist();
        assertThat(killed).isNotEmptyDirectory();

        assertThat(MakeDemo.inFolder(killed, MakeDemoTest::quiet)).isTrue();

        assertThat(codes(killed)).isEqualTo(codes(whole));
        assertThat(killed.resolve("demo-being-made.db")).doesNotExist();
    }

    @Test
    @Tag("slow")
    void leavesADatabaseEmptyWhenItIsStoppedHalfWay() {
        String address = DatabaseUnderTest.SQLITE.freshAddress(folder);
        assertThatThrownBy(() -> MakeDemo.inDatabase(address, MakeDemoTest::stopHalfWay))
                .isInstanceOf(IllegalStateException.class);
        try (Database database = Database.open(address)) {
            assertThat(new SiteStore(database).nurseries()).isEmpty();
            assertThat(new EventStore(database).count()).isZero();
        }

        assertThat(MakeDemo.inDatabase(address, MakeDemoTest::quiet)).isTrue();
    }

    @Test
    @Tag("slow")
    void makesADemoOfAnotherVersionAnew() {
        try (Database database = Database.open(folder.toString())) {
            new SiteStore(database).save(DemoSite.NURSERY);
            LocalDate day = LocalDate.of(2026, 3, 2);
            new SettingsStore(database)
                    .add(
                            DemoSite.NURSERY.slug(),
                            new Setting("demo-generator", "0", day, "demo", "an older one"),
                            Instant.parse("2026-03-02T11:00:00Z"));
        }

        assertThat(MakeDemo.inFolder(folder, MakeDemoTest::quiet)).isTrue();

        assertThat(codes(folder)).isNotEmpty();
    }

    @Test
    void refusesAFolderWithDataOfSomeoneElse() {
        holdsSomeoneElse(folder.toString());

        assertThatThrownBy(() -> MakeDemo.inFolder(folder, MakeDemoTest::quiet))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Someone else")
                .hasMessageContaining("Maybe");

        stillHoldsOnlySomeoneElse(folder.toString());
    }

    @Test
    void refusesDataOfSomeoneElseBesideAnUnfinishedDemo() {
        holdsSomeoneElse(folder.toString());
        try (Database database = Database.open(folder.toString())) {
            new SiteStore(database).save(DemoSite.NURSERY);
        }

        assertThatThrownBy(() -> MakeDemo.inFolder(folder, MakeDemoTest::quiet))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Someone else");
        try (Database database = Database.open(folder.toString())) {
            assertThat(new SiteStore(database).nurseries()).contains(SOMEONE);
        }
    }

    @Test
    void refusesADatabaseWithDataOfSomeoneElse() {
        String address = DatabaseUnderTest.SQLITE.freshAddress(folder);
        holdsSomeoneElse(address);

        assertThatThrownBy(() -> MakeDemo.inDatabase(address, MakeDemoTest::quiet))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Someone else");

        stillHoldsOnlySomeoneElse(address);
    }

    private static void holdsSomeoneElse(String address) {
        try (Database database = Database.open(address)) {
            new SiteStore(database).save(SOMEONE);
        }
    }

    private static void stillHoldsOnlySomeoneElse(String address) {
        try (Database database = Database.open(address)) {
            assertThat(new SiteStore(database).nurseries()).containsExactly(SOMEONE);
            assertThat(new EventStore(database).count()).isZero();
        }
    }

    /** Nobody listens. */
    private static void quiet(String said) {}

    private static void stopHalfWay(String said) {
        if (said.contains(" %") && !said.contains(" 0 %")) {
            throw new IllegalStateException("stopped: " + said);
        }
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.toList()) {
                Path copy = to.resolve(file.getFileName());
                Files.deleteIfExists(copy);
                Files.copy(file, copy);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<SampleCode> codes(Path folder) {
        try (Database database = Database.open(folder.toString())) {
            return new SampleStore(database)
                    .list(DemoSite.NURSERY.slug(), SampleFilter.ALL, 0, 10_000).stream()
                            .map(CollectedSample::code)
                            .toList();
        }
    }

    /** Each sample and each of its counts; zeros and what was not read are told apart. */
    private static void holdsTheSameAsTheFold(String address) {
        String nursery = DemoSite.NURSERY.slug();
        Map<SampleCode, SampleFold> folds = folds();
        try (Database database = Database.open(address)) {
            SampleStore samples = new SampleStore(database);
            RoundPlan eleventh = DemoRounds.eleventh();
            assertThat(samples.count(nursery)).isEqualTo(folds.size() + eleventh.jars().size());
            assertThat(new RoundPlanStore(database).find(nursery, eleventh.id()))
                    .hasValue(eleventh);
            assertThat(new RoundStore(database).rounds(nursery, eleventh.day(), eleventh.day()))
                    .filteredOn(round -> round.method() == SamplingMethod.WASH)
                    .singleElement()
                    .satisfies(round -> assertThat(round.samples()).isEqualTo(37 + 20));
            folds.forEach(
                    (code, fold) -> {
                        assertThat(samples.countsOf(nursery, code))
                                .as("counts of " + code)
                                .isEqualTo(fold.tally().individuals());
                        assertThat(samples.find(nursery, code)).hasValue(fold.sample());
                    });
            assertThat(samples.count(DemoSite.EMPTY.slug())).as("the second client").isZero();
            assertThat(new EventStore(database).firstBrokenLink()).isEmpty();
            assertThat(new EventStore(database).staleSamples(nursery)).isEmpty();
        }
    }

    private static Map<SampleCode, SampleFold> folds() {
        Map<String, List<String>> stagesOf =
                Stream.concat(ShippedPests.read().stream(), Stream.of(DemoPests.mummies()))
                        .collect(
                                Collectors.toMap(
                                        Pest::code,
                                        pest ->
                                                pest.lifeStages().stream()
                                                        .map(LifeStage::code)
                                                        .toList()));
        Map<SampleCode, List<SampleEvent>> events =
                DemoEvents.of(Streams.SEED).stream()
                        .flatMap(List::stream)
                        .collect(
                                Collectors.groupingBy(
                                        SampleEvent::sample, TreeMap::new, Collectors.toList()));
        Map<SampleCode, SampleFold> folds = new TreeMap<>();
        events.forEach((code, of) -> folds.put(code, SampleFold.of(code, of, stagesOf)));
        return folds;
    }
}
