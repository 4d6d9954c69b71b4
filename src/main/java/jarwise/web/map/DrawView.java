package jarwise.web.map;

import jarwise.render.map.DraftPicture;
import jarwise.render.words.Figures;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedHouse;
import jarwise.site.floor.HotSpot;
import jarwise.site.floor.LengthUnit;
import jarwise.usecase.form.Fields;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the page shows on which the nursery is drawn.
 *
 * @param frame the reader's language
 * @param plan what is drawn already
 * @param unit in which lengths are typed
 * @param form the form that was refused, if one was
 * @param asked code of the house to adjust; the first one where there is none of it
 */
public record DrawView(Frame frame, FloorPlan plan, LengthUnit unit, Form form, String asked) {

    /** {@return how much is drawn, as a sentence} */
    public String answer() {
        int benches = plan.houses().stream().mapToInt(house -> house.benches().size()).sum();
        return plan.houses().isEmpty()
                ? frame.say("map.draw.answer.none")
                : frame.say("map.draw.answer", plan.houses().size(), benches);
    }

    /** {@return the house to adjust} */
    public Optional<PlacedHouse> house() {
        return plan.house(asked).or(() -> plan.houses().stream().findFirst());
    }

    /** {@return the name of a house} */
    public String name(PlacedHouse house) {
        String name = house.house().name();
        return name.isEmpty()
                ? house.house().code()
                : frame.say("map.house", house.house().code(), name);
    }

    /** {@return the address on which a house is adjusted} */
    public String address(PlacedHouse house) {
        return frame.to("map/draw")
                + "?house="
                + java.net.URLEncoder.encode(
                        house.house().code(), java.nio.charset.StandardCharsets.UTF_8);
    }

    /** {@return hot spots of a house} */
    public List<HotSpot> spots(PlacedHouse house) {
        return plan.hotSpots().stream()
                .filter(spot -> spot.house().equals(house.house().code()))
                .toList();
    }

    /** {@return what a hot spot is called} */
    public String name(HotSpot spot) {
        return MapFigure.name(frame.words(), spot);
    }

    /** {@return kinds of hot spots, as forms write them} */
    public List<String> kinds() {
        return Arrays.stream(HotSpot.Kind.values()).map(Fields::wordOf).toList();
    }

    /** {@return the drawing of a house, SVG of our own writer} */
    public String picture(PlacedHouse house) {
        Map<String, String> names = new HashMap<>();
        spots(house).forEach(spot -> names.put(spot.code(), name(spot)));
        return new DraftPicture(
                        house, spots(house), names, frame.say("map.draw.picture", name(house)))
                .draw();
    }

    /** {@return metres in the unit of the site, two decimals} */
    public String length(double metres) {
        BigDecimal rounded =
                BigDecimal.valueOf(unit.fromMetres(metres))
                        .setScale(2, RoundingMode.HALF_UP)
                        .stripTrailingZeros();
        return new Figures(frame.words()).plain(rounded.doubleValue()).replace("\u2212", "-");
    }

    /** {@return the unit in a label, such as "Length (m)"} */
    public String label(String key) {
        return frame.say("map.draw.in", frame.say(key), unit.symbol());
    }

    /** One field of the table of benches. */
    public record Cell(String name, String value, String fault) {}

    /** {@return a field of a bench: what was typed, else what is drawn} */
    public Cell cell(String name, int place, String drawn) {
        Form own = form.named("adjust");
        String field = name + "-" + place;
        return new Cell(field, own.typedOr(field, drawn), own.fault(field));
    }

    /** {@return faults of a bench as sentences, each once} */
    public List<String> faults(int place) {
        Form own = form.named("adjust");
        return own.faults().keySet().stream()
                .filter(field -> field.endsWith("-" + place))
                .map(own::fault)
                .distinct()
                .toList();
    }

    /** {@return the field of the house itself: what was typed, else what is drawn} */
    public String ofHouse(String name, double drawn) {
        return form.named("adjust").typedOr(name, length(drawn));
    }

    /** {@return metres of one press of an arrow key} */
    public String step() {
        return String.valueOf(unit.toMetres(unit.step()));
    }
}
