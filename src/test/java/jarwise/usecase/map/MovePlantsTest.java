package jarwise.usecase.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Occupancy;
import jarwise.site.PlantMove;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MovePlantsTest {

    private static final LocalDate CAME = LocalDate.of(2026, 2, 23);
    private static final LocalDate MOVED = LocalDate.of(2026, 4, 14);
    private static final LocalDate TODAY = LocalDate.of(2026, 5, 7);
    private static final String LOT = "L-117";

    @TempDir Path folder;
    private TestSite site;
    private MovePlants move;

    @BeforeEach
    void fill() {
        site = new TestSite(folder);
        move = new MovePlants(site.database);
        site.site.save(TestSite.SLUG, new House("P1", "", OptionalDouble.empty()), 0);
        for (String bench : List.of("P1-B3", "P1-B4", "H2-B4")) {
            site.site.save(TestSite.SLUG, new Bench(bench, "P1", "B", 0));
        }
        site.site.save(
                TestSite.SLUG,
                new CropLot(LOT, "", "Rubia Tarn", Optional.empty(), Optional.of(CAME), false));
        stands("P1-B3", CAME, OptionalDouble.of(420));
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void aPartOfALotStandsElsewhereFromThatDayAndTheRestStays() {
        move("P1-B3", "H2-B4", MOVED, "180");

        assertThat(stands("P1-B3"))
                .containsExactly("420.0 2026-02-23 2026-04-13", "240.0 2026-04-14 -");
        assertThat(stands("H2-B4")).containsExactly("180.0 2026-04-14 -");
        assertThat(site.rounds.moves(TestSite.SLUG))
                .containsExactly(new PlantMove(MOVED, "P1-B3", "H2-B4", LOT, 180));
    }

    @Test
    void aWholeLotLeavesItsBenchBehindEmpty() {
        move("P1-B3", "H2-B4", MOVED, "");

        assertThat(stands("P1-B3")).containsExactly("420.0 2026-02-23 2026-04-13");
        assertThat(stands("H2-B4")).containsExactly("420.0 2026-04-14 -");
    }

    @Test
    void twoLoadsOnOneDayAreOneMoveOfBothTogether() {
        move("P1-B3", "H2-B4", MOVED, "100");
        move("P1-B3", "H2-B4", MOVED, "80");

        assertThat(stands("P1-B3"))
                .containsExactly("420.0 2026-02-23 2026-04-13", "240.0 2026-04-14 -");
        assertThat(stands("H2-B4")).containsExactly("180.0 2026-04-14 -");
        assertThat(site.rounds.moves(TestSite.SLUG))
                .containsExactly(new PlantMove(MOVED, "P1-B3", "H2-B4", LOT, 180));
    }

    @Test
    void plantsJoinThoseOfTheirLotThatStandThereAlready() {
        move("P1-B3", "H2-B4", MOVED, "100");
        move("P1-B3", "H2-B4", MOVED.plusDays(7), "50");

        assertThat(stands("H2-B4"))
                .containsExactly("100.0 2026-04-14 2026-04-20", "150.0 2026-04-21 -");
    }

    @Test
    void plantsThatArrivedOnTheSameDayCanLeaveAgain() {
        move("P1-B3", "H2-B4", MOVED, "100");
        move("H2-B4", "P1-B4", MOVED, "");

        assertThat(stands("H2-B4")).containsExactly("100.0 2026-04-14 2026-04-14");
        assertThat(stands("P1-B4")).containsExactly("100.0 2026-04-14 -");
    }

    @Test
    void aPartOfAnUncountedLotCanBeMovedButNotAllOfIt() {
        stands("P1-B4", CAME, OptionalDouble.empty());

        assertThat(faults("P1-B4", "H2-B4", MOVED.toString(), ""))
                .containsExactly(Map.entry("plants", "map.move.count"));
        move("P1-B4", "H2-B4", MOVED, "30");
        assertThat(stands("P1-B4")).containsExactly("? 2026-02-23 2026-04-13", "? 2026-04-14 -");
        assertThat(stands("H2-B4")).containsExactly("30.0 2026-04-14 -");
    }

    @ParameterizedTest(name = "{0} to {1} on {2}, {3} plants")
    @CsvSource(
            nullValues = "-",
            value = {
                "P1-B3, P1-B3, 2026-04-14, 10, to, map.move.same",
                "P1-B3, X9, 2026-04-14, 10, to, settings.place.unknown",
                "P1-B3, '', 2026-04-14, 10, to, form.needed",
                "H2-B4, P1-B4, 2026-04-14, 10, stand, settings.place.gone",
                "P1-B3, H2-B4, 2026-02-22, 10, day, map.move.before",
                "P1-B3, H2-B4, 2026-05-08, 10, day, form.day.future",
                "P1-B3, H2-B4, '', 10, day, form.needed",
                "P1-B3, H2-B4, tomorrow, 10, day, form.day",
                "P1-B3, H2-B4, 2026-04-14, 421, plants, map.move.more",
                "P1-B3, H2-B4, 2026-04-14, 0, plants, form.whole",
                "P1-B3, H2-B4, 2026-04-14, ten, plants, form.whole",
            })
    void refusesAMistakeWithItsReasonAndChangesNothing(
            String from, String to, String day, String plants, String field, String key) {
        List<Occupancy> before = site.site.occupancies(TestSite.SLUG);

        assertThat(faults(from, to, day, plants)).containsExactly(Map.entry(field, key));
        assertThat(site.site.occupancies(TestSite.SLUG)).isEqualTo(before);
        assertThat(site.rounds.moves(TestSite.SLUG)).isEmpty();
    }

    @Test
    void nothingBeforeTheLastChangeOfEitherBenchCanBeChanged() {
        move("P1-B3", "H2-B4", MOVED, "100");

        assertThat(faults("P1-B3", "P1-B4", "2026-04-13", "10"))
                .containsExactly(Map.entry("day", "map.move.before"));
        move("H2-B4", "P1-B4", MOVED.plusDays(3), "");
        assertThat(faults("P1-B3", "H2-B4", "2026-04-16", "10"))
                .containsExactly(Map.entry("day", "map.move.target"));
        move("P1-B3", "H2-B4", MOVED.plusDays(3), "10");
        assertThat(stands("H2-B4"))
                .containsExactly("100.0 2026-04-14 2026-04-16", "10.0 2026-04-17 -");
    }

    private void move(String from, String to, LocalDate day, String plants) {
        move.run(TestSite.SLUG, TODAY, fields(from, to, day.toString(), plants));
    }

    private Map<String, String> faults(String from, String to, String day, String plants) {
        Map<String, String> faults = new HashMap<>();
        assertThatThrownBy(() -> move.run(TestSite.SLUG, TODAY, fields(from, to, day, plants)))
                .isInstanceOfSatisfying(
                        FormRefused.class,
                        refused ->
                                refused.faults()
                                        .forEach((name, said) -> faults.put(name, said.key())));
        return faults;
    }

    private static Fields fields(String from, String to, String day, String plants) {
        return Fields.of(
                Map.of("stand", LOT + " @ " + from, "to", to, "day", day, "plants", plants));
    }

    private void stands(String bench, LocalDate from, OptionalDouble plants) {
        site.site.save(
                TestSite.SLUG,
                new Occupancy(
                        bench,
                        LOT,
                        from,
                        Optional.empty(),
                        plants,
                        OptionalDouble.empty(),
                        Optional.empty()));
    }

    private List<String> stands(String bench) {
        return site.site.occupancies(TestSite.SLUG).stream()
                .filter(stand -> stand.bench().equals(bench))
                .map(
                        stand ->
                                "%s %s %s"
                                        .formatted(
                                                stand.plants().isPresent()
                                                        ? stand.plants().getAsDouble()
                                                        : "?",
                                                stand.from(),
                                                stand.to().map(LocalDate::toString).orElse("-")))
                .toList();
    }
}
