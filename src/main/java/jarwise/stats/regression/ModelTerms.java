package jarwise.stats.regression;

import jarwise.base.InvalidInput;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The terms of a model: main effects such as {@code bench} and interactions such as {@code
 * treated:after}, beside a constant.
 *
 * <p><b>Source.</b> Wilkinson and Rogers (1973), <i>Applied Statistics</i> 22:392-399, for the
 * notation (from memory).
 *
 * @param terms in this order; no term twice
 * @param factors columns that are factors even if all their values are numbers
 */
public record ModelTerms(List<String> terms, Set<String> factors) {

    /**
     * Checks the terms.
     *
     * @throws InvalidInput if there is none, one stands twice, or an interaction lacks one of its
     *     main effects
     */
    public ModelTerms {
        terms = List.copyOf(terms);
        factors = Set.copyOf(factors);
        if (terms.isEmpty()) {
            throw new InvalidInput(
                    "There is no term; at least one is needed. Maybe: --terms bench,date");
        }
        Set<String> seen = new HashSet<>();
        for (String term : terms) {
            if (term.isBlank() || !seen.add(term)) {
                throw new InvalidInput(
                        ("Term \"%s\" is %s; every term is given once. Maybe it was meant to be"
                                        + " another.")
                                .formatted(term, term.isBlank() ? "blank" : "there twice"));
            }
        }
        for (String term : terms) {
            for (String part : term.split(":", -1)) {
                if (!terms.contains(part)) {
                    throw new InvalidInput(
                            ("Interaction \"%s\" stands without its main effect \"%s\"; both main"
                                            + " effects are needed. Maybe: --terms %s")
                                    .formatted(
                                            term,
                                            part,
                                            String.join(",", withMainEffects(terms, term))));
                }
            }
        }
    }

    private static Set<String> withMainEffects(List<String> terms, String interaction) {
        return Stream.concat(
                        terms.stream().filter(term -> !term.equals(interaction)),
                        Stream.concat(
                                Arrays.stream(interaction.split(":", -1)), Stream.of(interaction)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** {@return the columns that the terms name, each once} */
    public List<String> columns() {
        return terms.stream()
                .flatMap(term -> Arrays.stream(term.split(":", -1)))
                .distinct()
                .toList();
    }

    private record Piece(Coefficient coefficient, List<ModelColumn.Piece> factors) {

        double value(Map<String, String> row) {
            double product = 1;
            for (ModelColumn.Piece factor : factors) {
                product *= factor.value().apply(row);
            }
            return product;
        }
    }

    /**
     * The design of counts under these terms.
     *
     * @param rows counts with a value for each column, at least one
     * @return the frame, the constant first
     * @throws InvalidInput if a column does not vary
     */
    public ModelFrame frame(List<ModelRow> rows) {
        Map<String, ModelColumn> columns = new HashMap<>();
        columns()
                .forEach(
                        name ->
                                columns.put(
                                        name, new ModelColumn(name, rows, factors.contains(name))));
        List<Piece> pieces = new ArrayList<>();
        pieces.add(new Piece(Coefficient.INTERCEPT, List.of()));
        terms.forEach(term -> pieces.addAll(pieces(term, columns)));
        ModelFrame.Builder frame =
                new ModelFrame.Builder(pieces.stream().map(Piece::coefficient).toList());
        for (ModelRow row : rows) {
            frame.add(
                    pieces.stream().mapToDouble(piece -> piece.value(row.values())).toArray(),
                    row.exposure(),
                    row.individuals(),
                    row.frequency());
        }
        return frame.build();
    }

    private static List<Piece> pieces(String term, Map<String, ModelColumn> columns) {
        List<List<ModelColumn.Piece>> products = List.of(List.of());
        for (String column : term.split(":", -1)) {
            List<ModelColumn.Piece> pieces =
                    Objects.requireNonNull(columns.get(column), column).pieces();
            products =
                    products.stream()
                            .flatMap(begun -> pieces.stream().map(piece -> and(begun, piece)))
                            .toList();
        }
        return products.stream()
                .map(factors -> new Piece(new Coefficient(term, level(factors)), factors))
                .toList();
    }

    private static List<ModelColumn.Piece> and(
            List<ModelColumn.Piece> begun, ModelColumn.Piece piece) {
        return Stream.concat(begun.stream(), Stream.of(piece)).toList();
    }

    private static Optional<String> level(List<ModelColumn.Piece> factors) {
        List<String> levels = factors.stream().flatMap(piece -> piece.level().stream()).toList();
        return levels.isEmpty() ? Optional.empty() : Optional.of(String.join(":", levels));
    }
}
