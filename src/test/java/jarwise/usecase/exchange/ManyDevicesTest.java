package jarwise.usecase.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.tally.Tally;
import jarwise.usecase.samples.FirstCounts;
import jarwise.wire.exchange.ExchangeJson;
import jarwise.wire.pest.ShippedPests;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Several devices, several filters, and lines on which everything goes wrong: at the end all count
 * the same, and nothing is lost or doubled.
 */
@Tag("slow")
class ManyDevicesTest {

    @TempDir static Path folder;
    private static Database database;
    private static EventStore events;

    @BeforeAll
    static void open() {
        database = Database.open(folder.resolve("data").toString());
        events = new EventStore(database);
        PestStore pests = new PestStore(database);
        ShippedPests.read().forEach(pests::save);
    }

    @AfterAll
    static void close() {
        assertThat(events.firstBrokenLink()).isEmpty();
        database.close();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("jarwise.Seeds#some")
    void allCountTheSameWhateverTheLinesDid(long seed) {
        History history = History.of(seed);
        String slug = "site-" + seed;
        List<SampleEvent> registered = register(slug, history, seed);
        long before = events.count();

        send(slug, history, new Random(-seed));

        assertThat(events.count() - before)
                .isEqualTo(history.devices().stream().mapToLong(d -> d.log().size()).sum());
        assertThat(events.staleSamples(slug)).isEmpty();
        for (SampleEvent first : registered) {
            List<SampleEvent> all = new ArrayList<>(history.eventsOf(first.sample()));
            all.add(first);
            check(slug, all, history, new Random(seed));
        }
    }

    private void send(String slug, History history, Random random) {
        TakeEvents take = new TakeEvents(database, FirstCounts.UNWATCHED);
        BadLine.Server server = request -> take.run(slug, ExchangeJson.read(request));
        List<BadLine> lines =
                history.devices().stream()
                        .map(device -> new BadLine(device, server, random))
                        .toList();
        while (!lines.stream().allMatch(BadLine::isDone)) {
            lines.get(random.nextInt(lines.size())).goOn();
        }
        lines.forEach(BadLine::late);
    }

    private void check(String slug, List<SampleEvent> all, History history, Random random) {
        SampleCode code = all.get(0).sample();
        SampleFold server = events.fold(slug, code).orElseThrow();

        assertThat(server).isEqualTo(SampleFold.of(code, all, History.STAGES));
        assertThat(new SampleStore(database).countsOf(slug, code))
                .isEqualTo(server.tally().individuals());
        assertThat(everything(server.tally())).isEqualTo(pressedAndNotTakenBack(all));
        for (ReadingDevice device : history.devices()) {
            List<SampleEvent> arrived = new ArrayList<>(device.known(code));
            arrived.addAll(server.history());
            Collections.shuffle(arrived, random);
            assertThat(SampleFold.of(code, arrived, History.STAGES)).isEqualTo(server);
        }
    }

    private static long everything(Tally tally) {
        return Stream.of(tally.individuals(), tally.aside())
                .flatMap(counts -> counts.values().stream())
                .mapToLong(Long::longValue)
                .sum();
    }

    private static long pressedAndNotTakenBack(List<SampleEvent> all) {
        Set<EventId> slips = new HashSet<>();
        long pressed = 0;
        for (SampleEvent event : all) {
            if (event.deed() instanceof Deed.Voided voided) {
                slips.add(voided.slip());
            }
        }
        for (SampleEvent event : all) {
            if (event.deed() instanceof Deed.Counted counted && !slips.contains(event.id())) {
                pressed += counted.individuals();
            }
        }
        return pressed;
    }

    private List<SampleEvent> register(String slug, History history, long seed) {
        new SiteStore(database).save(new Nursery(slug, "Lane", ZoneOffset.UTC, "en"));
        List<SampleEvent> registered = new ArrayList<>();
        for (SampleCode filter : history.filters()) {
            registered.add(
                    new SampleEvent(
                            new EventId("desk-" + slug, registered.size() + 1L),
                            filter,
                            Phone.at(seed),
                            "SC-1",
                            Optional.empty(),
                            Phone.step(Step.REGISTERED, Map.of(Facts.SAMPLING_UNITS, "10"))));
        }
        events.append(slug, registered);
        return registered;
    }
}
