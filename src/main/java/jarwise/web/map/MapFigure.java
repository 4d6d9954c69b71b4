package jarwise.web.map;

import jarwise.decision.Finding;
import jarwise.decision.Judgement;
import jarwise.render.chart.Palette;
import jarwise.render.chart.VerdictMarks;
import jarwise.render.finding.FindingWords;
import jarwise.render.map.ChanceSteps;
import jarwise.render.map.MapPicture;
import jarwise.render.map.MapPicture.Arrow;
import jarwise.render.map.MapPicture.HouseTitle;
import jarwise.render.map.Tile;
import jarwise.render.words.Days;
import jarwise.render.words.Interval;
import jarwise.render.words.Words;
import jarwise.site.House;
import jarwise.site.PlantMove;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.LengthUnit;
import jarwise.usecase.map.CropMap;
import jarwise.usecase.map.CropMap.BenchState;
import jarwise.usecase.map.CropMap.Status;
import jarwise.web.piece.Picture;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The picture of the map: what stands on each bench, in the reader's words. */
final class MapFigure {

    private static final double SQUARE_FEET = 0.3048 * 0.3048;

    private final CropMap map;
    private final FindingWords say;
    private final Words words;
    private final LengthUnit unit;

    MapFigure(CropMap map, FindingWords say, LengthUnit unit) {
        this.map = map;
        this.say = say;
        this.words = say.words();
        this.unit = unit;
    }

    Optional<MapView.Map> map() {
        if (map.plan().houses().isEmpty()) {
            return Optional.empty();
        }
        MapPicture picture = new MapPicture(map.plan(), tiles(), marks(), label());
        return Optional.of(
                new MapView.Map(
                        title(),
                        words.say(sub()),
                        new Picture.Panel(picture.desk(), picture.phone()),
                        key()));
    }

    private String title() {
        return map.walked()
                ? words.say("map.title.round", new Days(words).dayMonth(map.day()))
                : words.say("map.title");
    }

    private String sub() {
        boolean chances =
                map.benches().stream()
                        .flatMap(bench -> bench.findings().stream())
                        .anyMatch(finding -> finding.judgement().isPresent());
        return chances ? "map.sub" : "map.sub.no-line";
    }

    /** Everything drawn, in words: the table says the same in figures. */
    private String label() {
        List<String> benches =
                map.benches().stream()
                        .filter(bench -> bench.status() != Status.EMPTY)
                        .map(bench -> words.say("map.label.bench", bench.code(), inWords(bench)))
                        .toList();
        return words.say("map.label", title(), String.join("; ", benches));
    }

    private Map<String, Tile> tiles() {
        Map<String, Tile> tiles = new HashMap<>();
        map.benches().forEach(bench -> tiles.put(bench.code(), tile(bench)));
        return tiles;
    }

    private Tile tile(BenchState bench) {
        String title = shortCode(bench);
        Optional<String> noEntry =
                map.extras().noEntry().stream()
                        .filter(closed -> closed.benches().contains(bench.code()))
                        .findFirst()
                        .map(closed -> words.say("map.tile.no-entry"));
        if (bench.status() == Status.EMPTY && noEntry.isEmpty()) {
            return Tile.empty(title, words.say("map.tip.empty", named(bench)));
        }
        Optional<Finding> first = bench.findings().stream().findFirst();
        boolean read = first.flatMap(Finding::estimated).isPresent();
        return new Tile(
                title,
                under(bench),
                figure(bench, first),
                chance(first),
                read
                        ? Tile.Ground.READ
                        : bench.status() == Status.EMPTY ? Tile.Ground.EMPTY : Tile.Ground.UNKNOWN,
                first.flatMap(Finding::verdict),
                noEntry,
                tip(bench, noEntry));
    }

    private static OptionalDouble chance(Optional<Finding> finding) {
        return finding.flatMap(Finding::judgement)
                .map(Judgement::probabilityAbove)
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    /** A bench is P1-B3 in the nursery, and B3 in its house. */
    private static String shortCode(BenchState bench) {
        String house = bench.placed().bench().house() + "-";
        String code = bench.code();
        return code.startsWith(house) && code.length() > house.length()
                ? code.substring(house.length())
                : code;
    }

    private String named(BenchState bench) {
        String name = bench.placed().name();
        return name.isEmpty() ? bench.code() : words.say("map.tip.named", bench.code(), name);
    }

    private String under(BenchState bench) {
        return bench.findings().stream()
                .findFirst()
                .flatMap(finding -> finding.stand().variety())
                .or(() -> bench.lots().stream().findFirst().map(lot -> lot.variety()))
                .orElse("");
    }

    private String figure(BenchState bench, Optional<Finding> first) {
        if (bench.status() == Status.NOT_READ) {
            return words.say("map.tile.not-read");
        }
        return bench.status() == Status.NOT_SAMPLED
                ? words.say("figure.not-sampled")
                : first.map(this::figure).orElse("");
    }

    /** The estimate, or the bound after a zero. */
    private String figure(Finding finding) {
        Interval interval = FindingWords.interval(finding);
        if (interval instanceof Interval.Found found) {
            return say.figures().density(found.estimate());
        }
        if (interval instanceof Interval.NoneFound none && none.upper().isPresent()) {
            return words.say("map.tile.below", say.figures().upper(none.upper().getAsDouble()));
        }
        return "";
    }

    private String inWords(BenchState bench) {
        if (bench.findings().isEmpty()) {
            return words.say("figure.not-sampled");
        }
        return say.list(bench.findings().stream().map(say::verdict).toList());
    }

    private String tip(BenchState bench, Optional<String> noEntry) {
        List<String> lines = new ArrayList<>();
        noEntry.ifPresent(lines::add);
        for (Finding finding : bench.findings()) {
            String tip = say.tip(finding);
            lines.add(
                    finding.judgement()
                            .map(
                                    judgement ->
                                            words.say(
                                                    "map.tip.chance",
                                                    tip,
                                                    say.verdict(finding),
                                                    say.figures()
                                                            .likelyAbove(
                                                                    judgement.probabilityAbove())))
                            .orElse(tip));
        }
        if (bench.findings().isEmpty()) {
            lines.add(
                    words.say(
                            "finding.tip.blank",
                            named(bench),
                            words.say(
                                    bench.lots().isEmpty()
                                            ? "map.tip.no-crop"
                                            : "figure.not-sampled")));
        }
        return String.join(" · ", lines);
    }

    private MapPicture.Marks marks() {
        Map<String, HouseTitle> houses = new HashMap<>();
        map.plan().houses().forEach(house -> houses.put(house.house().code(), houseTitle(house)));
        Map<String, String> spots = new HashMap<>();
        map.plan().hotSpots().forEach(spot -> spots.put(spot.code(), name(words, spot)));
        return new MapPicture.Marks(
                houses,
                spots,
                map.extras().moves().stream().map(this::arrow).toList(),
                map.extras().places(),
                scale());
    }

    private MapPicture.ScaleBar scale() {
        return unit == LengthUnit.FOOT
                ? new MapPicture.ScaleBar(unit.toMetres(30), words.say("map.scale.feet", "30"))
                : new MapPicture.ScaleBar(10, words.say("map.scale.metres", "10"));
    }

    private Arrow arrow(PlantMove move) {
        return new Arrow(
                move.fromBench(),
                move.toBench(),
                words.say(
                        "map.arrow",
                        say.figures().counted("map.plants", move.plants()),
                        new Days(words).brief(move.movedOn())));
    }

    private HouseTitle houseTitle(PlacedHouse placed) {
        House house = placed.house();
        String name =
                house.name().isEmpty()
                        ? house.code()
                        : words.say("map.house", house.code(), house.name());
        OptionalDouble area = house.areaM2();
        if (area.isEmpty()) {
            return new HouseTitle(name, "");
        }
        double metres = area.getAsDouble();
        return new HouseTitle(
                name,
                unit == LengthUnit.FOOT
                        ? words.say(
                                "map.area.feet",
                                say.figures().whole(Math.round(metres / SQUARE_FEET)))
                        : words.say("map.area.metres", say.figures().whole(Math.round(metres))));
    }

    /** {@return what a hot spot is called} */
    static String name(Words words, HotSpot spot) {
        return words.say("hot-spot." + jarwise.usecase.form.Fields.wordOf(spot.kind()));
    }

    private List<MapView.Swatch> key() {
        List<MapView.Swatch> key = new ArrayList<>();
        if (sub().equals("map.sub")) {
            for (int step = 1; step <= ChanceSteps.STEPS; step++) {
                key.add(
                        new MapView.Swatch(
                                ChanceSteps.swatch(step), words.say("map.key.step." + step)));
            }
        }
        key.add(new MapView.Swatch(ChanceSteps.hatched(), words.say("map.key.unknown")));
        for (jarwise.decision.Verdict verdict : jarwise.decision.Verdict.values()) {
            key.add(
                    new MapView.Swatch(
                            VerdictMarks.draw(verdict, 29, Palette.DESK),
                            words.say(FindingWords.key(verdict))));
        }
        return key;
    }
}
