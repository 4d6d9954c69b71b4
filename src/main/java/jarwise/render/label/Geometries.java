package jarwise.render.label;

import jarwise.render.report.Paper;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Reads the shipped sheets of labels. */
final class Geometries {

    private static final String FILE = "/labels/geometries.csv";

    private Geometries() {}

    static List<LabelGeometry> read() {
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                Objects.requireNonNull(
                                        Geometries.class.getResourceAsStream(FILE), FILE),
                                StandardCharsets.UTF_8))) {
            return in.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> geometry(line.split(",", -1)))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static LabelGeometry geometry(String[] cells) {
        return new LabelGeometry(
                cells[0],
                Paper.valueOf(cells[1]),
                Integer.parseInt(cells[2]),
                Integer.parseInt(cells[3]),
                new Box(mm(cells[6]), mm(cells[7]), mm(cells[4]), mm(cells[5])),
                mm(cells[8]),
                mm(cells[9]));
    }

    private static double mm(String cell) {
        return Double.parseDouble(cell);
    }
}
