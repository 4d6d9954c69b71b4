package jarwise.web.map;

import jarwise.pest.Pests;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Figures;
import jarwise.site.CropLot;
import jarwise.site.Occupancy;
import jarwise.usecase.map.ShowFloor;
import jarwise.usecase.map.Stands;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What the page shows on which crop lots are moved.
 *
 * @param frame the reader's language
 * @param floor what stands where
 * @param form the form that was refused, if one was
 */
public record LotsView(Frame frame, ShowFloor.Floor floor, Form form) {

    /** {@return how much stands where, as a sentence} */
    public String answer() {
        List<Occupancy> open = floor.stands().open();
        return open.isEmpty()
                ? frame.say("map.lots.answer.none")
                : frame.say(
                        "map.lots.answer",
                        open.stream().map(Occupancy::cropLot).distinct().count(),
                        open.stream().map(Occupancy::bench).distinct().count());
    }

    /** {@return the day of the page} */
    public LocalDate today() {
        return frame.now().toLocalDate();
    }

    /** {@return what stands somewhere now, by bench} */
    public List<Occupancy> open() {
        return floor.stands().open();
    }

    /** {@return what stood somewhere, newest first} */
    public List<Occupancy> past() {
        return floor.stands().all().stream()
                .filter(stand -> stand.to().isPresent())
                .sorted(
                        Comparator.comparing((Occupancy stand) -> stand.to().orElseThrow())
                                .reversed()
                                .thenComparing(Occupancy::bench))
                .toList();
    }

    /** {@return how a form names what stands somewhere} */
    public String key(Occupancy stand) {
        return Stands.key(stand);
    }

    /** {@return "P1-B3: L-117 ‘Rubia Tarn’, 240 plants"} */
    public String stand(Occupancy stand) {
        return frame.say("map.stand", stand.bench(), lot(stand.cropLot()), plants(stand));
    }

    /** {@return "L-117 ‘Rubia Tarn’"} */
    public String lot(String code) {
        CropLot lot = lots().get(code);
        return lot == null ? code : code + " ‘" + lot.variety() + "’";
    }

    private Map<String, CropLot> lots() {
        return floor.lots().stream().collect(Collectors.toMap(CropLot::code, Function.identity()));
    }

    /** {@return how many plants, or that nobody counted them} */
    public String plants(Occupancy stand) {
        OptionalDouble plants = stand.plants();
        return plants.isPresent()
                ? new Figures(frame.words()).counted("map.plants", Math.round(plants.getAsDouble()))
                : frame.say("map.plants.unknown");
    }

    /** {@return every move as a sentence, newest first} */
    public List<String> moves() {
        FindingWords say = new FindingWords(frame.words(), new Pests(List.of()));
        List<String> moves = new ArrayList<>();
        floor.moves().forEach(move -> moves.add(0, MapMaker.sentence(frame, say, move)));
        return moves;
    }

    /** {@return every bench} */
    public List<String> benches() {
        return floor.plan().houses().stream()
                .flatMap(house -> house.benches().stream())
                .map(bench -> bench.bench().code())
                .toList();
    }
}
