package jarwise.tally;

import jarwise.base.Require;
import java.time.Instant;
import java.util.Optional;

/**
 * One import of a sheet. Its events carry its {@code id}; it stays on record when taken back.
 *
 * @param id its own name
 * @param importedAt when
 * @param person role code of who did it
 * @param fileName name of the sheet's file, without folders
 * @param fingerprint of the whole file
 * @param header fingerprint of the column names: sheets of one header may be the same sheet grown
 * @param choices how the sheet was understood, as text
 * @param counted how many counts it added, found unchanged, and corrected
 * @param takenBack by whom and why it was taken back, where it was
 */
public record ImportBatch(
        String id,
        Instant importedAt,
        String person,
        String fileName,
        String fingerprint,
        String header,
        String choices,
        Counted counted,
        Optional<TakenBack> takenBack) {

    public ImportBatch {
        Require.notBlank("import", id);
    }

    /**
     * Counts of an import.
     *
     * @param added not on record before
     * @param same on record already
     * @param changed on record with another number
     */
    public record Counted(int added, int same, int changed) {}

    /**
     * An import taken back.
     *
     * @param at when
     * @param person role code of who did it
     * @param reason why
     */
    public record TakenBack(Instant at, String person, String reason) {

        public TakenBack {
            Require.notBlank("reason", reason);
        }
    }
}
