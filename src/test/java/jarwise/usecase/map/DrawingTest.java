package jarwise.usecase.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.LengthUnit;
import jarwise.site.floor.Rectangle;
import jarwise.store.work.FloorStore;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drawing houses, putting benches in place, hot spots, deliveries. */
class DrawingTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 5, 7);

    @TempDir Path folder;
    private TestSite site;

    @BeforeEach
    void open() {
        site = new TestSite(folder);
    }

    @AfterEach
    void close() {
        site.close();
    }

    @Test
    void aHouseIsDrawnFromItsSizeAndAFewWords() {
        draw("P1", "40", "15", "6 benches × 2 bays");

        FloorPlan plan = plan();
        assertThat(plan.house("P1").orElseThrow().place()).isEqualTo(new Rectangle(0, 0, 40, 15));
        assertThat(plan.house("P1").orElseThrow().house().areaM2()).hasValue(600);
        assertThat(site.site.benches(TestSite.SLUG))
                .extracting(Bench::code)
                .startsWith("P1-A1", "P1-A2")
                .endsWith("P1-B6")
                .hasSize(12);
        assertThat(plan.bench("P1-B6").orElseThrow().drawn()).isTrue();
    }

    @Test
    void theNextHouseIsDrawnBelowAndFeetAreKeptAsMetres() {
        draw("P1", "40", "15", "2 bays of 6 benches");
        new DrawHouse(site.database)
                .run(
                        TestSite.SLUG,
                        LengthUnit.FOOT,
                        fields("code", "H2", "length", "100", "width", "50", "layout", "3 tables"));

        FloorPlan plan = plan();
        Rectangle second = plan.house("H2").orElseThrow().place();
        assertThat(second.length()).isCloseTo(30.48, within(1e-9));
        assertThat(second.overlaps(plan.house("P1").orElseThrow().place())).isFalse();
        assertThat(plan.bench("H2-A3").orElseThrow().bench().position()).isEqualTo(14);
    }

    @Test
    void whatCannotBeDrawnIsRefusedWithEveryReasonAndNothingIsWritten() {
        draw("P1", "40", "15", "2 bays of 6 benches");

        assertThat(
                        faults(
                                () ->
                                        new DrawHouse(site.database)
                                                .run(
                                                        TestSite.SLUG,
                                                        LengthUnit.METRE,
                                                        fields(
                                                                "code", "P1", "length", "0",
                                                                "layout", "4 × 6"))))
                .containsOnly(
                        Map.entry("code", "settings.place.there"),
                        Map.entry("length", "form.number"),
                        Map.entry("width", "form.needed"),
                        Map.entry("layout", "map.layout.two-ways"));
        assertThat(site.site.benches(TestSite.SLUG)).hasSize(12);
    }

    @Test
    void benchesAreNamedMovedSizedAndTurned() {
        draw("P1", "40", "15", "2 benches");

        adjust(
                "name-0",
                "arrivals",
                "bay-0",
                "Z",
                "x-0",
                "1",
                "y-0",
                "2",
                "length-0",
                "8",
                "width-0",
                "2",
                "x-1",
                "20",
                "y-1",
                "4",
                "length-1",
                "8",
                "width-1",
                "2",
                "turn-1",
                "yes");

        FloorPlan plan = plan();
        assertThat(plan.bench("P1-A1").orElseThrow().name()).isEqualTo("arrivals");
        assertThat(plan.bench("P1-A1").orElseThrow().bench().bay()).isEqualTo("Z");
        assertThat(plan.bench("P1-A1").orElseThrow().place()).isEqualTo(new Rectangle(1, 2, 8, 2));
        assertThat(plan.bench("P1-A2").orElseThrow().place()).isEqualTo(new Rectangle(23, 1, 2, 8));
    }

    @Test
    void benchesStandInTheirHouseAndNotOnEachOther() {
        draw("P1", "40", "15", "2 benches");
        String[] wrong = {
            "x-0",
            "35",
            "y-0",
            "2",
            "length-0",
            "8",
            "width-0",
            "2",
            "x-1",
            "34",
            "y-1",
            "3",
            "length-1",
            "4",
            "width-1",
            "2"
        };

        assertThat(faults(() -> adjust(wrong)))
                .containsOnly(
                        Map.entry("x-0", "map.draw.outside"), Map.entry("x-1", "map.draw.overlap"));
    }

    @Test
    void everyNumberOfABenchIsNeeded() {
        draw("P1", "40", "15", "2 benches");
        String[] wrong = {
            "x-0",
            "two",
            "y-0",
            "2",
            "length-0",
            "8",
            "width-0",
            "2",
            "x-1",
            "30",
            "y-1",
            "3",
            "length-1",
            "4",
            "width-1",
            ""
        };

        assertThat(faults(() -> adjust(wrong)))
                .containsOnly(Map.entry("x-0", "form.number"), Map.entry("width-1", "form.needed"));
    }

    @Test
    void aBenchDrawnByMistakeIsTakenOffAndOneWithACropIsNot() {
        draw("P1", "40", "15", "2 benches");
        AdjustHouse adjust = new AdjustHouse(site.database);
        adjust.takeOff(TestSite.SLUG, fields("bench", "P1-A2"));
        new ChangeLots(site.database)
                .bring(
                        TestSite.SLUG,
                        TODAY,
                        fields("lot", "L", "bench", "P1-A1", "from", "2026-05-04", "variety", "X"));

        assertThat(faults(() -> adjust.takeOff(TestSite.SLUG, fields("bench", "P1-A1"))))
                .containsOnly(Map.entry("bench", "map.draw.used"));
        assertThat(site.site.benches(TestSite.SLUG))
                .extracting(Bench::code)
                .containsExactly("P1-A1");
    }

    @Test
    void hotSpotsAreAddedInTheirHouseAndTakenOff() {
        draw("P1", "40", "15", "2 benches");
        KeepHotSpots spots = new KeepHotSpots(site.site, new FloorStore(site.database));
        spots.add(
                TestSite.SLUG,
                LengthUnit.METRE,
                fields(
                        "house", "P1", "kind", "door", "x", "0", "y", "7,5", "bench", "P1-A1",
                        "note", "yard"));

        HotSpot door = plan().hotSpots().get(0);
        assertThat(door.kind()).isEqualTo(HotSpot.Kind.DOOR);
        assertThat(door.bench()).hasValue("P1-A1");
        assertThat(door.at()).isEqualTo(new HotSpot.Point(0, 7.5));
        assertThat(
                        faults(
                                () ->
                                        spots.add(
                                                TestSite.SLUG,
                                                LengthUnit.METRE,
                                                fields(
                                                        "house", "P1", "kind", "gate", "x", "41",
                                                        "y", "1", "bench", "P1-A9"))))
                .containsOnly(
                        Map.entry("kind", "form.word"),
                        Map.entry("x", "map.draw.outside"),
                        Map.entry("bench", "settings.place.unknown"));
        spots.remove(TestSite.SLUG, fields("spot", door.code()));
        assertThat(plan().hotSpots()).isEmpty();
    }

    @Test
    void aDeliveryIsANewLotOnABenchAndAKnownLotNeedsNoVariety() {
        draw("P1", "40", "15", "2 benches");
        ChangeLots lots = new ChangeLots(site.database);
        lots.bring(
                TestSite.SLUG,
                TODAY,
                fields(
                        "lot",
                        "L-9",
                        "bench",
                        "P1-A1",
                        "from",
                        "2026-05-04",
                        "variety",
                        "Rubia Tarn",
                        "plants",
                        "400"));
        lots.bring(
                TestSite.SLUG, TODAY, fields("lot", "L-9", "bench", "P1-A2", "from", "2026-05-05"));

        assertThat(site.site.cropLots(TestSite.SLUG))
                .extracting(CropLot::code, CropLot::deliveredOn)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(
                                "L-9", Optional.of(LocalDate.of(2026, 5, 4))));
        assertThat(site.site.occupancies(TestSite.SLUG)).hasSize(2);
        assertThat(bringFaults("L-9", "P1-A1", "2026-05-06"))
                .containsOnly(Map.entry("bench", "map.lot.there"));
        assertThat(bringFaults("L-9", "P1-A1", "2026-05-03")).containsKey("from");
        assertThat(bringFaults("L-10", "P1-A7", "2026-05-06"))
                .containsOnly(
                        Map.entry("bench", "settings.place.unknown"),
                        Map.entry("variety", "form.needed"));
    }

    @Test
    void aLotLeavesOnADayThatIsNotBeforeItCame() {
        draw("P1", "40", "15", "2 benches");
        ChangeLots lots = new ChangeLots(site.database);
        lots.bring(
                TestSite.SLUG,
                TODAY,
                fields("lot", "L-9", "bench", "P1-A1", "from", "2026-05-04", "variety", "X"));

        assertThat(
                        faults(
                                () ->
                                        lots.end(
                                                TestSite.SLUG,
                                                TODAY,
                                                fields(
                                                        "stand",
                                                        "L-9 @ P1-A1",
                                                        "to",
                                                        "2026-05-03"))))
                .containsOnly(Map.entry("to", "map.move.before"));
        lots.end(TestSite.SLUG, TODAY, fields("stand", "L-9 @ P1-A1", "to", "2026-05-06"));
        assertThat(site.site.occupancies(TestSite.SLUG).get(0).to())
                .hasValue(LocalDate.of(2026, 5, 6));
    }

    private Map<String, String> bringFaults(String lot, String bench, String from) {
        return faults(
                () ->
                        new ChangeLots(site.database)
                                .bring(
                                        TestSite.SLUG,
                                        TODAY,
                                        fields("lot", lot, "bench", bench, "from", from)));
    }

    private void draw(String code, String length, String width, String layout) {
        new DrawHouse(site.database)
                .run(
                        TestSite.SLUG,
                        LengthUnit.METRE,
                        fields("code", code, "length", length, "width", width, "layout", layout));
    }

    private void adjust(String... benches) {
        Map<String, String> typed = new HashMap<>(typed(benches));
        typed.putAll(Map.of("house", "P1", "x", "0", "y", "0", "length", "40", "width", "15"));
        new AdjustHouse(site.database).run(TestSite.SLUG, LengthUnit.METRE, Fields.of(typed));
    }

    private FloorPlan plan() {
        return new ShowFloor(site.database).run(TestSite.SLUG).plan();
    }

    private static Map<String, String> faults(Runnable work) {
        Map<String, String> faults = new HashMap<>();
        assertThatThrownBy(work::run)
                .isInstanceOfSatisfying(
                        FormRefused.class,
                        refused ->
                                refused.faults()
                                        .forEach((name, said) -> faults.put(name, said.key())));
        return faults;
    }

    private static Fields fields(String... namesAndTexts) {
        return Fields.of(typed(namesAndTexts));
    }

    private static Map<String, String> typed(String... namesAndTexts) {
        Map<String, String> typed = new HashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            typed.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return typed;
    }
}
