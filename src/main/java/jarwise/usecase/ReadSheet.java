package jarwise.usecase;

import jarwise.base.Message;
import jarwise.wire.sheet.ColumnMapping;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.CountSheet;
import jarwise.wire.sheet.GroupedRows;
import jarwise.wire.sheet.RowGroup;
import jarwise.wire.sheet.RowSelector;
import jarwise.wire.sheet.SheetReader;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import jarwise.wire.table.Table;
import jarwise.wire.table.TableReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Reads a sheet for a computation: groups of counted rows, or every fault. */
public final class ReadSheet {

    /** As many samples as a sheet may have rows. */
    private static final long MOST_SAMPLES = 1_000_000;

    private ReadSheet() {}

    /**
     * Reads a sheet.
     *
     * @param request the sheet and how to read it
     * @return its groups, with everything a person should know about how it was read
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    public static GroupedRows run(SheetRequest request) {
        Table table = TableReader.read(request.file(), request.worksheet());
        ColumnMapping mapping = SheetReader.renamed(table, request.renames());
        if (!request.countColumns().isEmpty()) {
            mapping = mapping.withCountColumns(request.countColumns());
        }
        if (request.frequency().isPresent()) {
            mapping = mapping.withFrequency(request.frequency().get());
        }
        CountSheet sheet = SheetReader.counts(table, mapping, request.selection().neverBlank());
        GroupedRows groups = RowSelector.select(sheet, request.selection());
        checkSamples(groups.groups(), request.frequency().orElse(""));
        List<Message> notes = new ArrayList<>(sheet.notes());
        notes.addAll(groups.notes());
        return new GroupedRows(groups.groups(), notes);
    }

    private static void checkSamples(List<RowGroup> groups, String frequency) {
        long samples = 0;
        for (RowGroup group : groups) {
            for (CountRow row : group.rows()) {
                samples += row.frequency();
            }
        }
        if (samples > MOST_SAMPLES && !frequency.isEmpty()) {
            throw Faults.refusal(
                    Fault.in(
                            0,
                            frequency,
                            String.valueOf(samples),
                            FaultKind.SAMPLES_TOO_MANY,
                            String.format(Locale.ENGLISH, "%,d", MOST_SAMPLES)));
        }
    }
}
