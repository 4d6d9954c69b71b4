package jarwise.wire.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which column of a sheet means what.
 *
 * @param columns name in the header by what it means
 * @param countColumns columns that hold a count each, named after a stage; empty in long sheets
 * @param frequency column that says for how many samples a row stands
 */
public record ColumnMapping(
        Map<KnownColumn, String> columns, List<String> countColumns, Optional<String> frequency) {

    private static final Set<String> STAGE_WORDS =
            Set.of(
                    "egg", "eggs", "huevo", "huevos", "oeuf", "oeufs", "larva", "larvae", "larvas",
                    "larve", "larves", "larva1", "larva2", "nymph", "nymphs", "ninfa", "ninfas",
                    "nymphe", "nymphes", "pupa", "pupae", "pupas", "prepupa", "adult", "adults",
                    "adulto", "adultos", "adulte", "adultes", "motile", "motiles");

    public ColumnMapping {
        columns = Collections.unmodifiableMap(copy(columns));
        countColumns = List.copyOf(countColumns);
    }

    /** {@return only the known names, in any case: what the command line goes by} */
    public static ColumnMapping exact(List<String> header) {
        EnumMap<KnownColumn, String> found = new EnumMap<>(KnownColumn.class);
        for (String name : header) {
            KnownColumn.of(name).ifPresent(known -> found.putIfAbsent(known, name));
        }
        return new ColumnMapping(found, List.of(), Optional.empty());
    }

    /** {@return known names and plain words for them, to be shown to a person and corrected} */
    public static ColumnMapping guess(List<String> header) {
        EnumMap<KnownColumn, String> found = copy(exact(header).columns);
        for (String name : header) {
            if (!found.containsValue(name)) {
                KnownColumn.meantBy(name).ifPresent(known -> found.putIfAbsent(known, name));
            }
        }
        List<String> stages = new ArrayList<>();
        if (!found.containsKey(KnownColumn.COUNT) && !found.containsKey(KnownColumn.STAGE)) {
            header.stream()
                    .filter(name -> STAGE_WORDS.contains(KnownColumn.plain(name)))
                    .forEach(stages::add);
        }
        return new ColumnMapping(found, stages, Optional.empty());
    }

    /** {@return a copy in which this column of the header has this meaning} */
    public ColumnMapping with(KnownColumn known, String name) {
        EnumMap<KnownColumn, String> changed = copy(columns);
        changed.values().removeIf(name::equals);
        changed.put(known, name);
        return new ColumnMapping(changed, countColumns, frequency);
    }

    /** {@return a copy in which no column has this meaning} */
    public ColumnMapping without(KnownColumn known) {
        EnumMap<KnownColumn, String> changed = copy(columns);
        changed.remove(known);
        return new ColumnMapping(changed, countColumns, frequency);
    }

    /** {@return a copy for a wide sheet with one column for each stage} */
    public ColumnMapping withCountColumns(List<String> names) {
        return new ColumnMapping(columns, names, frequency);
    }

    /** {@return a copy in which a row stands for as many samples as this column says} */
    public ColumnMapping withFrequency(String name) {
        return new ColumnMapping(columns, countColumns, Optional.of(name));
    }

    /** {@return the column of the header with this meaning} */
    public Optional<String> of(KnownColumn known) {
        return Optional.ofNullable(columns.get(known));
    }

    private static EnumMap<KnownColumn, String> copy(Map<KnownColumn, String> columns) {
        EnumMap<KnownColumn, String> copy = new EnumMap<>(KnownColumn.class);
        copy.putAll(columns);
        return copy;
    }
}
