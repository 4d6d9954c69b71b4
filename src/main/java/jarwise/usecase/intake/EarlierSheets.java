package jarwise.usecase.intake;

import jarwise.sample.SampleCode;
import jarwise.store.EventStore;
import jarwise.store.ImportStore;
import jarwise.store.ImportStore.EarlierRow;
import jarwise.tally.ImportRow;
import jarwise.wire.table.TableRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Knows a sheet again. Where rows have no code, a sheet of the same columns of which at least half
 * of the earlier rows recur at their places is the same sheet grown.
 */
final class EarlierSheets {

    private static final String CODED = "code:";
    private static final String PLACED = "place:";

    private final ImportStore imports;
    private final EventStore events;
    private final String nursery;
    private final List<EarlierRow> earlier;

    EarlierSheets(ImportStore imports, EventStore events, String nursery, String header) {
        this.imports = imports;
        this.events = events;
        this.nursery = nursery;
        this.earlier = imports.rowsOf(nursery, header);
    }

    /** {@return the key of a row: by its sample's code, or by the sheet and its place} */
    static String key(boolean coded, String sheet, int place, SampleCode sample) {
        return coded ? CODED + sample.text() : PLACED + sheet + "#" + place;
    }

    /** {@return a row as one text} */
    static String text(List<String> cells) {
        return String.join("\u001f", cells);
    }

    /** {@return the name of the earlier sheet that this one continues} */
    Optional<String> continued(List<TableRow> rows) {
        String best = "";
        double bestShare = 0;
        for (Map.Entry<String, Map<Integer, String>> sheet : textsBySheet().entrySet()) {
            Map<Integer, String> texts = sheet.getValue();
            long recurring =
                    texts.entrySet().stream()
                            .filter(entry -> entry.getKey() <= rows.size())
                            .filter(
                                    entry ->
                                            text(rows.get(entry.getKey() - 1).cells())
                                                    .equals(entry.getValue()))
                            .count();
            double share = (double) recurring / texts.size();
            if (share >= 0.5 && share >= bestShare) {
                best = sheet.getKey();
                bestShare = share;
            }
        }
        return Optional.of(best).filter(name -> !name.isEmpty());
    }

    /** {@return a name no sheet has yet, beginning with this one} */
    String freeName(String wanted) {
        String name = wanted;
        for (int number = 2; isTaken(name); number++) {
            name = wanted + "." + number;
        }
        return name;
    }

    private boolean isTaken(String name) {
        String first = key(false, name, 1, new SampleCode("-"));
        return imports.knowsKey(nursery, first)
                || !events.ofSample(nursery, new SampleCode(name + "-1")).isEmpty()
                || !events.ofSample(nursery, new SampleCode(name + "-1.1")).isEmpty();
    }

    /** Newest text of each place, sheet by sheet in the order of their first import. */
    private Map<String, Map<Integer, String>> textsBySheet() {
        Map<String, Map<Integer, String>> sheets = new LinkedHashMap<>();
        for (EarlierRow row : earlier) {
            sheetOf(row.row())
                    .ifPresent(
                            sheet ->
                                    sheets.computeIfAbsent(sheet, name -> new HashMap<>())
                                            .put(row.row().place(), row.row().text()));
        }
        return sheets;
    }

    private static Optional<String> sheetOf(ImportRow row) {
        return row.key().startsWith(PLACED)
                ? Optional.of(row.key().substring(PLACED.length(), row.key().lastIndexOf('#')))
                : Optional.empty();
    }

    /** {@return counts of earlier copies of this sheet that it has no more} */
    List<ImportPlan.Gone> gone(List<ImportRow> now) {
        Set<SampleCode> samples = now.stream().map(ImportRow::sample).collect(Collectors.toSet());
        Set<String> copies =
                earlier.stream()
                        .filter(row -> samples.contains(row.row().sample()))
                        .map(EarlierRow::batch)
                        .collect(Collectors.toSet());
        Set<ImportPlan.Gone> there = new HashSet<>();
        now.forEach(row -> there.add(new ImportPlan.Gone(row.sample(), row.stage())));
        List<ImportPlan.Gone> gone = new ArrayList<>();
        for (EarlierRow row : earlier) {
            ImportPlan.Gone count = new ImportPlan.Gone(row.row().sample(), row.row().stage());
            if (copies.contains(row.batch()) && there.add(count)) {
                gone.add(count);
            }
        }
        return gone;
    }
}
