package jarwise.web.samples;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.pest.Pests;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import jarwise.tally.Events;
import jarwise.tally.SampleEvent;
import jarwise.web.Frame;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HistoryRowTest {

    private static final Frame FRAME =
            Frame.withoutPage(
                    Words.of(Language.ENGLISH),
                    new Nursery("lane", "Lane", ZoneOffset.UTC, "en"),
                    Events.AT.atZone(ZoneOffset.UTC));

    @Test
    void pressesCellByCellAreOneLineWithTheirSlips() {
        List<SampleEvent> history =
                List.of(
                        Events.step("desk", 1, Step.CUT, Map.of()),
                        Events.event("bench", 1, pressed("A1")),
                        Events.event("bench", 2, new Deed.Voided(new EventId("bench", 1), "slip")),
                        Events.event("bench", 3, new Deed.CellDone("A1", false)),
                        Events.event("bench", 4, new Deed.CellDone("A2", true)),
                        Events.event("bench", 5, new Deed.FilterDone(Set.of("FRANOC"))));

        List<HistoryRow> rows = HistoryRow.of(history);

        assertThat(rows).hasSize(3);
        assertThat(rows.get(1).events()).hasSize(4);
        assertThat(rows.get(1).summary(new DeedWords(FRAME, new Pests(List.of()))))
                .isEqualTo("read cell by cell: 2 cells, 4 entries");
    }

    @Test
    void whatWasIdentifiedAtOnceIsOneLineThatSaysAsWhat() {
        List<SampleEvent> history =
                List.of(
                        Events.event("bench", 1, new Deed.CellDone("A1", false)),
                        atOnce(1, new Deed.Voided(new EventId("bench", 7), "identified")),
                        atOnce(2, new Deed.Counted("FRANOC", "adult", 1, Optional.of("A1"))),
                        atOnce(3, new Deed.Counted("unsure", "any", 2, Optional.of("A1"))));

        List<HistoryRow> rows = HistoryRow.of(history);

        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).summary(new DeedWords(FRAME, new Pests(List.of()))))
                .isEqualTo("unsure, identified: 1 × adult, FRANOC, cell A1");
    }

    private static SampleEvent atOnce(long sequence, Deed deed) {
        EventId id = new EventId("desk", sequence);
        return new SampleEvent(id, Events.JAR, Events.AT, "SC-2", Optional.empty(), deed);
    }

    @Test
    void anotherDeviceAndACountWithoutACellStandApart() {
        List<SampleEvent> history =
                List.of(
                        Events.event("first", 1, new Deed.CellDone("A1", false)),
                        Events.event("second", 1, new Deed.CellDone("A2", false)),
                        Events.event("second", 2, pressed("")));

        assertThat(HistoryRow.of(history)).hasSize(3).noneMatch(HistoryRow::folded);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyEventStandsOnceTheLatestFirst(long seed) {
        List<SampleEvent> history = Events.random(new Random(seed));
        List<SampleEvent> newestFirst = new ArrayList<>(history);
        Collections.reverse(newestFirst);

        assertThat(HistoryRow.of(history).stream().flatMap(row -> row.events().stream()))
                .isEqualTo(newestFirst);
    }

    @Test
    void aKeptFindAndItsPhotoAreSaid() {
        SampleEvent kept =
                Events.event("bench", 8, new Deed.VoucherKept("D5", 1, Optional.empty()));
        SampleEvent photo =
                Events.event("bench", 9, new Deed.PhotoTaken(kept.id(), "ab".repeat(32), 900));
        DeedWords words = new DeedWords(FRAME, new Pests(List.of()));

        assertThat(words.say(kept)).isEqualTo("voucher 1 kept, from cell D5");
        assertThat(words.say(photo)).isEqualTo("photo of the voucher kept in no. 8");
    }

    private static Deed pressed(String cell) {
        Optional<String> where = cell.isEmpty() ? Optional.empty() : Optional.of(cell);
        return new Deed.Counted("FRANOC", "adult", 1, where);
    }
}
