package jarwise.stats.comparison;

import jarwise.base.CodePointOrder;
import jarwise.stats.regression.Coefficient;
import jarwise.stats.regression.ModelFrame;
import jarwise.stats.regression.ModelRow;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The design of a comparison: a mean for each level, an effect for each block but the first. */
final class LevelFrame {

    private final List<ModelRow> rows;
    private final String column;
    private final List<String> levels;
    private final List<Block> blocks = new ArrayList<>();

    /** One level of a block that has an effect of its own. */
    private record Block(String column, String value, int levelsOfColumn) {

        double in(ModelRow row) {
            return Objects.equals(row.values().get(column), value) ? 1 : 0;
        }

        Coefficient coefficient() {
            return new Coefficient(column, Optional.of(value));
        }
    }

    LevelFrame(List<ModelRow> rows, String column, List<String> blockColumns) {
        this.rows = rows;
        this.column = column;
        this.levels = valuesOf(column);
        for (String block : blockColumns) {
            List<String> values = valuesOf(block);
            values.stream()
                    .skip(1)
                    .forEach(value -> blocks.add(new Block(block, value, values.size())));
        }
    }

    private List<String> valuesOf(String name) {
        TreeSet<String> values = new TreeSet<>(CodePointOrder.OF_TEXT);
        rows.forEach(row -> values.add(Objects.requireNonNull(row.values().get(name))));
        return List.copyOf(values);
    }

    List<String> levels() {
        return levels;
    }

    ModelFrame full() {
        List<Coefficient> means =
                levels.stream().map(level -> new Coefficient(column, Optional.of(level))).toList();
        return frame(means, true);
    }

    ModelFrame withoutLevels() {
        return frame(List.of(Coefficient.INTERCEPT), false);
    }

    private ModelFrame frame(List<Coefficient> means, boolean byLevel) {
        ModelFrame.Builder frame =
                new ModelFrame.Builder(
                        Stream.concat(means.stream(), blocks.stream().map(Block::coefficient))
                                .toList());
        for (ModelRow row : rows) {
            double[] design = new double[means.size() + blocks.size()];
            design[byLevel ? levels.indexOf(row.values().get(column)) : 0] = 1;
            for (int block = 0; block < blocks.size(); block++) {
                design[means.size() + block] = blocks.get(block).in(row);
            }
            frame.add(design, row.exposure(), row.individuals(), row.frequency());
        }
        return frame.build();
    }

    /** The logarithm of the mean of a level, every block with the same weight. */
    double[] mean(String level) {
        double[] contrast = new double[levels.size() + blocks.size()];
        contrast[levels.indexOf(level)] = 1;
        for (int block = 0; block < blocks.size(); block++) {
            contrast[levels.size() + block] = 1.0 / blocks.get(block).levelsOfColumn();
        }
        return contrast;
    }

    /** The logarithm of the ratio of two levels. */
    double[] ratio(String a, String b) {
        double[] contrast = new double[levels.size() + blocks.size()];
        contrast[levels.indexOf(a)] = 1;
        contrast[levels.indexOf(b)] = -1;
        return contrast;
    }
}
