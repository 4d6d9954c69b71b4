package jarwise.wire.climate;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import jarwise.phenology.window.PublishedConstants;
import jarwise.phenology.window.StageShare;
import jarwise.phenology.window.ThermalLibrary;
import jarwise.stats.thermal.ThermalConstants;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The published thermal constants that come with the program. Each row says its source, and whether
 * an abstract was read or it is from memory. Rows without degree-days, or of a pest without a code,
 * are there to be read by people.
 */
public final class ShippedThermals {

    private ShippedThermals() {}

    /** {@return all that can be used} */
    public static ThermalLibrary read() {
        List<PublishedConstants> constants = new ArrayList<>();
        for (NamedCsvRecord row : rows("thermal-constants.csv")) {
            if (!row.getField("degree_days").isEmpty() && !row.getField("pest").isEmpty()) {
                constants.add(constants(row));
            }
        }
        List<StageShare> shares =
                rows("stage-shares.csv").stream()
                        .map(
                                row ->
                                        new StageShare(
                                                row.getField("pest"),
                                                row.getField("stage"),
                                                Double.parseDouble(row.getField("share"))))
                        .toList();
        Map<String, String> surrogates =
                rows("thermal-surrogates.csv").stream()
                        .collect(
                                Collectors.toMap(
                                        row -> row.getField("pest"),
                                        row -> row.getField("surrogate")));
        return new ThermalLibrary(constants, shares, surrogates);
    }

    private static PublishedConstants constants(NamedCsvRecord row) {
        return new PublishedConstants(
                row.getField("pest"),
                row.getField("stage"),
                row.getField("host"),
                new ThermalConstants(
                        Double.parseDouble(row.getField("lower_developmental_temperature")),
                        Double.parseDouble(row.getField("degree_days"))),
                row.getField("source"));
    }

    private static List<NamedCsvRecord> rows(String name) {
        try (InputStream file = ShippedThermals.class.getResourceAsStream("/pests/" + name);
                CsvReader<NamedCsvRecord> records =
                        CsvReader.builder()
                                .ofNamedCsvRecord(
                                        new InputStreamReader(
                                                Objects.requireNonNull(file),
                                                StandardCharsets.UTF_8))) {
            return records.stream().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
