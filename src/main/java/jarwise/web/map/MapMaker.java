package jarwise.web.map;

import jarwise.plan.Spot;
import jarwise.render.chart.Strip;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.site.PlantMove;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.LengthUnit;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.map.CropMap;
import jarwise.usecase.map.CropMap.Status;
import jarwise.web.Frame;
import jarwise.web.findings.BenchStrips;
import jarwise.web.findings.FindingsView;
import jarwise.web.findings.Reasons;
import jarwise.web.findings.TargetedTable;
import jarwise.web.piece.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the crop map into words. */
final class MapMaker {

    /** Narrow enough to stand beside the picture. */
    private static final Strip.Size BESIDE = new Strip.Size(150, 130, 40, 5.5, 13);

    private final Frame frame;
    private final CropMap map;
    private final FindingWords say;
    private final Words words;
    private final LengthUnit unit;
    private final MapAddress address;

    MapMaker(Frame frame, CropMap map, FindingWords say, LengthUnit unit, MapAddress address) {
        this.frame = frame;
        this.map = map;
        this.say = say;
        this.words = frame.words();
        this.unit = unit;
        this.address = address;
    }

    MapView view() {
        return new MapView(
                new MapChooser(map, say, address.asked().getOrDefault("to", "")).view(),
                new MapAnswer(map, say).answer(),
                noEntry(),
                map.stops().stream().map(this::stop).toList(),
                new MapFigure(map, say, unit).map(),
                rows(),
                new MapView.Around(hotSpots(), targeted(), moves(), notes()),
                map.findings()
                        .filter(round -> round.sampled())
                        .map(round -> new Reasons(round, say).all())
                        .orElse(List.of()));
    }

    private List<String> noEntry() {
        List<String> sentences = new ArrayList<>();
        for (CropMap.NoEntry closed : map.extras().noEntry()) {
            String places =
                    closed.application().benches().isEmpty()
                            ? closed.application().house()
                            : say.list(List.copyOf(closed.application().benches()));
            sentences.add(
                    closed.ends()
                            .map(ends -> words.say("map.no-entry", places, frame.moment(ends)))
                            .orElseGet(() -> words.say("map.no-entry.open", places)));
        }
        return sentences;
    }

    private MapView.Stop stop(CropMap.Stop stop) {
        String above =
                stop.walked()
                        ? say.figures().counted("map.stop.above", stop.above())
                        : words.say("map.stop.planned");
        return new MapView.Stop(
                address.ofRound(stop.day()),
                new Days(words).brief(stop.day()),
                above,
                stop.day().equals(map.day()),
                stop.walked());
    }

    private Optional<MapView.Rows> rows() {
        return map.findings()
                .flatMap(round -> new BenchStrips(round, say, BESIDE).benches())
                .map(
                        benches ->
                                new MapView.Rows(
                                        benches.title(), sub(), benches.head(), benches.rows()));
    }

    private String sub() {
        Findings round = map.findings().orElseThrow();
        int jars = round.series().stream().mapToInt(one -> one.last().evidence().samples()).sum();
        return words.say(
                "map.rows.sub",
                say.start(say.animals(round.scope().subject())),
                say.figures().jars(jars));
    }

    private Optional<FindingsView.Targeted> targeted() {
        return map.findings().flatMap(round -> new TargetedTable(round, say).table());
    }

    private Optional<Table> hotSpots() {
        List<HotSpot> spots = map.plan().hotSpots();
        if (spots.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Table(
                        words.say("map.spots"),
                        List.of(
                                words.say("map.spot.place"),
                                words.say("map.spot.note"),
                                words.say("map.spot.targeted")),
                        spots.stream().map(this::row).toList()));
    }

    private List<String> row(HotSpot spot) {
        String place =
                words.say(
                        "map.spot.at",
                        spot.bench().orElse(spot.house()),
                        MapFigure.name(words, spot));
        return List.of(place, spot.note(), targetedAt(spot));
    }

    /** Only jars labelled with the bench of a hot spot can be told to be from it. */
    private String targetedAt(HotSpot spot) {
        List<Findings.Targeted> there =
                map.findings().stream()
                        .flatMap(round -> round.targeted().stream())
                        .filter(one -> spot.bench().isPresent())
                        .filter(one -> one.sample().place().bench().equals(spot.bench()))
                        .toList();
        if (there.isEmpty()) {
            return words.say("map.spot.none");
        }
        String jars = say.figures().counted("map.spot.jars", there.size());
        List<Long> read = there.stream().flatMap(one -> one.individuals().stream()).toList();
        String found =
                read.isEmpty()
                        ? words.say("figure.not-read")
                        : say.counted(
                                map.findings().orElseThrow().scope().subject(),
                                read.stream().mapToLong(Long::longValue).sum());
        return words.say("map.spot.found", jars, found);
    }

    private List<String> moves() {
        return map.extras().moves().stream().map(move -> sentence(frame, say, move)).toList();
    }

    /** {@return "180 plants of L-117 went from P1-B3 to H2-B4 on 14 April 2026."} */
    static String sentence(Frame frame, FindingWords say, PlantMove move) {
        return frame.say(
                "map.moved",
                say.figures().counted("map.plants", move.plants()),
                move.cropLot(),
                move.fromBench(),
                move.toBench(),
                frame.day(move.movedOn()));
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add(words.say("map.note.targeted"));
        if (map.count(Status.EMPTY) > 0) {
            notes.add(words.say("map.note.empty"));
        }
        notes.add(
                map.extras().places().isEmpty()
                        ? words.say("map.note.no-places")
                        : words.say(
                                "map.note.places",
                                say.figures()
                                        .whole(
                                                map.extras().places().values().stream()
                                                        .mapToLong(List<Spot>::size)
                                                        .sum())));
        notes.add(words.say("notes.unseen"));
        line().ifPresent(notes::add);
        return notes;
    }

    private Optional<String> line() {
        return map.findings()
                .flatMap(
                        round ->
                                round.rules()
                                        .lineOn(round.scope().subject(), round.scope().to())
                                        .map(
                                                line ->
                                                        words.say(
                                                                "notes.line",
                                                                say.figures().plain(line.density()),
                                                                say.animals(
                                                                        round.scope().subject()),
                                                                frame.day(line.setOn()),
                                                                line.setBy(),
                                                                line.reason())));
    }
}
