package jarwise.stats.regression;

import jarwise.base.CodePointOrder;
import jarwise.base.InvalidInput;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * A column of the sheet in a model: a covariate if all its values are numbers, else a factor whose
 * first level, by Unicode code point, is the reference.
 */
final class ModelColumn {

    /** A column of the design: its name, and its value for a row. */
    record Piece(Optional<String> level, Function<Map<String, String>, Double> value) {}

    private final String name;
    private final List<Piece> pieces = new ArrayList<>();

    ModelColumn(String name, Collection<ModelRow> rows, boolean factor) {
        this.name = name;
        TreeSet<String> values = new TreeSet<>(CodePointOrder.OF_TEXT);
        rows.forEach(row -> values.add(textOf(row.values())));
        if (values.size() < 2) {
            throw new InvalidInput(
                    ("Column \"%s\" has the value \"%s\" in every row; at least 2 values are needed"
                                    + " to see an effect. Maybe leave it out.")
                            .formatted(name, values.first()));
        }
        if (!factor && values.stream().allMatch(ModelColumn::isNumber)) {
            pieces.add(new Piece(Optional.empty(), row -> Double.parseDouble(textOf(row).strip())));
        } else {
            values.stream()
                    .skip(1)
                    .forEach(
                            level ->
                                    pieces.add(
                                            new Piece(
                                                    Optional.of(level),
                                                    row -> textOf(row).equals(level) ? 1.0 : 0.0)));
        }
    }

    private String textOf(Map<String, String> row) {
        return Objects.requireNonNull(row.get(name), name);
    }

    private static boolean isNumber(String text) {
        return text.strip().matches("[+-]?([0-9]+([.][0-9]*)?|[.][0-9]+)([eE][+-]?[0-9]{1,3})?")
                && Double.isFinite(Double.parseDouble(text.strip()));
    }

    List<Piece> pieces() {
        return List.copyOf(pieces);
    }
}
