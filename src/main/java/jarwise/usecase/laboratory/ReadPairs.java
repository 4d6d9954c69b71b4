package jarwise.usecase.laboratory;

import jarwise.base.Message;
import jarwise.stats.agreement.CountPair;
import jarwise.wire.sheet.NumberColumns;
import jarwise.wire.sheet.NumberSheet;
import jarwise.wire.table.TableReader;
import java.util.List;

/**
 * Two counts of the same things from a sheet.
 *
 * @param pairs one a row, in the order of the sheet
 * @param notes what a person should know about how the sheet was read
 */
public record ReadPairs(List<CountPair> pairs, List<Message> notes) {

    /**
     * Reads the pairs.
     *
     * @param request the sheet
     * @param first column of the first counts
     * @param second column of the second counts
     * @return the pairs
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    public static ReadPairs run(NumbersRequest request, String first, String second) {
        NumberColumns columns =
                new NumberColumns(List.of(first, second), request.by(), request.where());
        NumberSheet sheet =
                NumberSheet.read(TableReader.read(request.file(), request.worksheet()), columns);
        List<CountPair> pairs =
                sheet.rows().stream()
                        .map(NumberSheet.Row::numbers)
                        .map(numbers -> new CountPair(numbers.get(0), numbers.get(1)))
                        .toList();
        return new ReadPairs(pairs, sheet.notes());
    }
}
