package jarwise.stats.regression;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The open data sets of the reference folder, as rows of a model. */
public final class OpenData {

    private OpenData() {}

    /** {@return a data set; frequency is empty where each row is one sample} */
    public static List<ModelRow> rows(String file, String count, String frequency) {
        List<ModelRow> rows = new ArrayList<>();
        List<String> lines = lines(file);
        String[] header = lines.get(0).split(",", -1);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split(",", -1);
            Map<String, String> values = new HashMap<>();
            for (int i = 0; i < header.length; i++) {
                values.put(header[i], cells[i]);
            }
            double times = frequency.isEmpty() ? 1 : number(values, frequency);
            double units = number(values, "growing_points");
            rows.add(new ModelRow(values, units, (long) number(values, count), times));
        }
        return rows;
    }

    private static double number(Map<String, String> values, String column) {
        return Double.parseDouble(Objects.requireNonNull(values.getOrDefault(column, "1")));
    }

    private static List<String> lines(String file) {
        try {
            return Files.readAllLines(Path.of("src/test/resources/reference/data", file));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The model of some terms, without the columns that follow from others. */
    static ModelFrame frame(List<ModelRow> rows, List<String> terms) {
        ModelFrame frame = new ModelTerms(terms, java.util.Set.of()).frame(rows);
        while (true) {
            var aliased = new SymmetricSystem(frame.design().products(cell -> true)).vanished();
            if (aliased.isEmpty()) {
                return frame;
            }
            frame = frame.without(List.of(frame.coefficients().get(aliased.getAsInt())));
        }
    }
}
