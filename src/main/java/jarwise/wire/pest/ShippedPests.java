package jarwise.wire.pest;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The pests that a new set of data begins with. Each row of the file says where its EPPO code is
 * from, and whether it was looked up or is from memory; the site changes the list as it likes.
 */
public final class ShippedPests {

    private static final String FILE = "/pests/pests.csv";

    private ShippedPests() {}

    /** {@return all of them, in the order of lists} */
    public static List<Pest> read() {
        Map<String, List<NamedCsvRecord>> rows = new LinkedHashMap<>();
        try (InputStream file = ShippedPests.class.getResourceAsStream(FILE);
                CsvReader<NamedCsvRecord> records =
                        CsvReader.builder()
                                .ofNamedCsvRecord(
                                        new InputStreamReader(
                                                Objects.requireNonNull(file),
                                                StandardCharsets.UTF_8))) {
            for (NamedCsvRecord row : records) {
                rows.computeIfAbsent(row.getField("pest"), code -> new ArrayList<>()).add(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows.values().stream().map(ShippedPests::pest).toList();
    }

    private static Pest pest(List<NamedCsvRecord> rows) {
        NamedCsvRecord first = rows.get(0);
        List<LifeStage> stages = new ArrayList<>();
        for (NamedCsvRecord row : rows) {
            StageMark mark = StageMark.valueOf(row.getField("mark").toUpperCase(Locale.ROOT));
            stages.add(
                    new LifeStage(
                            row.getField("life_stage"),
                            row.getField("stage_group"),
                            mark,
                            stages.size()));
        }
        return new Pest(
                first.getField("pest"),
                Optional.of(first.getField("eppo_code")).filter(code -> !code.isEmpty()),
                first.getField("scientific_name"),
                first.getField("common_name"),
                first.getField("natural_enemy").equals("1"),
                stages);
    }
}
