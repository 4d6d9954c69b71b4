package jarwise.render.map;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.Verdict;
import jarwise.plan.Spot;
import jarwise.site.Bench;
import jarwise.site.House;
import jarwise.site.floor.BenchGrid;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.HotSpot;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.xml.sax.InputSource;

class MapPictureTest {

    @ParameterizedTest
    @CsvSource({"0,1", "0.199,1", "0.2,2", "0.5,3", "0.79,4", "0.8,5", "1,5"})
    void aChanceHasOneOfFiveSteps(double chance, int step) {
        assertThat(ChanceSteps.of(chance)).isEqualTo(step);
    }

    @Test
    void aStepHasAsManyStrokesAsItsNumber() {
        for (int step = 1; step <= ChanceSteps.STEPS; step++) {
            assertThat(count(ChanceSteps.swatch(step), "stroke-width=\"2.2\"")).isEqualTo(step);
        }
    }

    @Test
    void whatIsNotKnownIsHatchedAndWhatIsEmptyIsNot() throws Exception {
        Tile unknown =
                new Tile(
                        "A1",
                        "‘Rubia <Tarn>’",
                        "",
                        OptionalDouble.empty(),
                        Tile.Ground.UNKNOWN,
                        Optional.empty(),
                        Optional.empty(),
                        "P1-A1: not sampled");
        String hatched = picture(1, 1, unknown).desk();
        String empty = picture(1, 1, Tile.empty("A1", "P1-A1")).desk();

        assertThat(count(hatched, "stroke-width=\"1.1\"")).isEqualTo(1);
        assertThat(count(empty, "stroke-width=\"1.1\"")).isZero();
        assertThat(hatched).contains("Rubia &lt;Tarn&gt;");
        parse(hatched);
        parse(empty);
    }

    @Test
    void aBenchThatWasReadCarriesStepStrokesFigureAndVerdict() throws Exception {
        String map = picture(1, 2, read(Optional.empty())).desk();

        assertThat(map).contains(ChanceSteps.fill(5)).contains("0.31").contains("Cloudmarsh");
        assertThat(count(map, "stroke-width=\"2.2\"")).isEqualTo(2 * 5);
        parse(map);
        parse(picture(1, 2, read(Optional.of("do not enter"))).phone());
        assertThat(picture(1, 2, read(Optional.of("do not enter"))).desk())
                .contains("do not enter");
    }

    @Test
    void aNurseryTooLargeToBeDrawnToScaleIsDrawnHouseByHouseWithoutAScale() throws Exception {
        String large = picture(4, 30, read(Optional.empty())).desk();

        assertThat(large).doesNotContain("10 metres");
        assertThat(picture(2, 6, read(Optional.empty())).desk()).contains("10 metres");
        parse(large);
        parse(picture(4, 30, read(Optional.empty())).phone());
    }

    private static Tile read(Optional<String> noEntry) {
        return new Tile(
                "B5",
                "Cloudmarsh",
                "0.31",
                OptionalDouble.of(.98),
                Tile.Ground.READ,
                Optional.of(Verdict.ABOVE_THE_LINE),
                noEntry,
                "all of it");
    }

    private static MapPicture picture(int bays, int each, Tile tile) {
        List<Bench> benches = new ArrayList<>();
        Map<String, Tile> tiles = new HashMap<>();
        for (int bay = 0; bay < bays; bay++) {
            for (int i = 1; i <= each; i++) {
                String code = "P1-" + BenchGrid.letters(bay) + i;
                benches.add(new Bench(code, "P1", BenchGrid.letters(bay), benches.size()));
                tiles.put(code, tile);
            }
        }
        HotSpot door =
                new HotSpot(
                        "S1",
                        "P1",
                        Optional.empty(),
                        HotSpot.Kind.DOOR,
                        new HotSpot.Point(0, 1),
                        "");
        FloorPlan plan =
                FloorPlan.of(
                        List.of(new House("P1", "", OptionalDouble.of(60 * bays * each))),
                        benches,
                        new FloorPlan.Drawn(Map.of(), Map.of(), List.of(door)));
        String last = benches.get(benches.size() - 1).code();
        return new MapPicture(
                plan,
                tiles,
                new MapPicture.Marks(
                        Map.of("P1", new MapPicture.HouseTitle("P1 & co", "600 m²")),
                        Map.of("S1", "door"),
                        List.of(new MapPicture.Arrow("P1-A1", last, "180 plants")),
                        Map.of("P1-A1", List.of(new Spot(0, 0), new Spot(1, 1))),
                        new MapPicture.ScaleBar(10, "10 metres")),
                "what it shows");
    }

    private static long count(String text, String part) {
        return Pattern.compile(Pattern.quote(part)).matcher(text).results().count();
    }

    private static void parse(String svg) throws Exception {
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)));
    }
}
