package jarwise.stats;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Reference values under {@code src/test/resources/reference}: a table that names its source. */
public final class ReferenceTable {

    private ReferenceTable() {}

    /** One row; its text is the name of the test. */
    public record Row(Map<String, String> cells) {

        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), column);
        }

        public boolean has(String column) {
            return !text(column).isEmpty();
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** Half a unit of the last digit that is printed, with as much again for rounding twice. */
        public double printedDigits(String column) {
            String digits = text(column);
            int point = digits.indexOf('.');
            return point < 0 ? 1 : Math.pow(10, -(digits.length() - point - 1));
        }

        @Override
        public String toString() {
            return String.join(" ", cells.values().stream().limit(4).toList());
        }
    }

    public static List<Row> read(String file) {
        List<String> lines = lines(file);
        if (lines.stream().noneMatch(line -> line.startsWith("# source:"))) {
            throw new IllegalStateException(file + " does not name its source");
        }
        List<String> table = lines.stream().filter(line -> !line.startsWith("#")).toList();
        String separator = table.get(0).contains(";") ? ";" : ",";
        String[] header = table.get(0).split(separator, -1);
        List<Row> rows = new ArrayList<>();
        for (String line : table.subList(1, table.size())) {
            String[] cells = line.split(separator, -1);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < header.length; i++) {
                row.put(header[i], cells[i]);
            }
            rows.add(new Row(row));
        }
        return rows;
    }

    private static List<String> lines(String file) {
        String path = "/reference/" + file;
        try (InputStream in = ReferenceTable.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("There is no " + path);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.isBlank())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
