package jarwise.usecase.map;

import jarwise.base.Message;
import jarwise.site.floor.LengthUnit;
import jarwise.site.floor.Rectangle;
import jarwise.usecase.form.Fields;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads lengths that are typed in the unit of the site.
 *
 * @param fields what was typed
 * @param unit the unit of the site
 */
record LengthFields(Fields fields, LengthUnit unit) {

    /** {@return a length above 0, in metres; a fault where none was typed} */
    OptionalDouble length(String name) {
        fields.needed(name);
        return metres(fields.number(name, 0, most()));
    }

    /** {@return a distance of 0 or more, in metres; a fault where none was typed} */
    OptionalDouble distance(String name) {
        String text = fields.needed(name);
        return text.matches("0+([.,]0*)?") ? OptionalDouble.of(0) : length(name);
    }

    /**
     * {@return where something lies: {@code x}, {@code y}, {@code length} and {@code width} with
     * this ending; empty where any of them has a fault}
     */
    Optional<Rectangle> rectangle(String ending) {
        OptionalDouble x = distance("x" + ending);
        OptionalDouble y = distance("y" + ending);
        OptionalDouble length = length("length" + ending);
        OptionalDouble width = length("width" + ending);
        return x.isPresent() && y.isPresent() && length.isPresent() && width.isPresent()
                ? Optional.of(
                        new Rectangle(
                                x.getAsDouble(),
                                y.getAsDouble(),
                                length.getAsDouble(),
                                width.getAsDouble()))
                : Optional.empty();
    }

    /** Notes that something typed reaches beyond its house. */
    void outside(String name, String what) {
        fields.fault(name, Message.of("map.draw.outside", what));
    }

    private OptionalDouble metres(OptionalDouble typed) {
        return typed.isPresent() ? OptionalDouble.of(unit.toMetres(typed.getAsDouble())) : typed;
    }

    private double most() {
        return Math.floor(unit.fromMetres(Rectangle.MOST_METRES / 10));
    }
}
