package jarwise.stats.filter;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.List;

/**
 * What reading a part of a filter says about all of it.
 *
 * @param found individuals in the cells that were read, 0 or more
 * @param shareRead cells read over cells that can be read, (0, 1]
 * @param unread what the other cells may hold
 */
public record PartialReading(long found, double shareRead, UnreadIndividuals unread) {

    private static final double CENTRAL = 0.95;

    /**
     * How many are on the filter, when a part of it was read?
     *
     * <pre>
     *   estimate = found · total/read
     *   individuals in the cells not read ~ NB(found + 1, read/total)
     * </pre>
     *
     * <p>That is a flat expectation of the total, and every individual in a read cell with the same
     * chance. <b>Assumes</b> cells chosen by {@link CellWalk} or at random, from completed passes
     * only, and individuals that settled independently. Where they lie in clumps the limits are too
     * near; {@link #ofCells} then knows.
     *
     * <p><b>Source.</b> Binomial sampling with a flat prior on the total (textbook, from memory).
     * Reference values: {@code reference/partial/unread.csv}, quantiles of SciPy.
     *
     * @param found individuals in the cells read, 0 to 1,000,000,000
     * @param cellsRead readable cells that were read, above 0; obscured ones are in neither number
     * @param cellsTotal cells that can be read, at least {@code cellsRead}
     * @return the reading
     * @throws InvalidInput if a number is out of range
     */
    public static PartialReading of(long found, double cellsRead, double cellsTotal) {
        Require.atLeast("found", found, 0);
        checkCells(cellsRead, cellsTotal);
        double share = cellsRead / cellsTotal;
        return new PartialReading(found, share, UnreadByChance.of(found, share));
    }

    /**
     * The same from the count of each cell, so that clumps on the filter are seen.
     *
     * <p>Where the variance between read cells s² exceeds their mean, the wider of {@link #of} and
     * a log-normal distribution of the unread number, with the mean of the read cells and the
     * variance of drawing r of R cells without putting back: R² (1 − r/R) s²/r. The wider is the
     * one whose central 95 % reach further.
     *
     * <p><b>Source.</b> Cochran (1977), <i>Sampling Techniques</i>, 2.6 (from memory) for the
     * variance; that the wider wins is ours. Checked by hand-sized cases and by simulation.
     *
     * @param counts individuals in each cell read, in any order
     * @param cellsTotal cells that can be read, at least as many
     * @return the reading
     * @throws InvalidInput if there is no cell, a count below 0, or fewer cells in all than read
     */
    public static PartialReading ofCells(List<Long> counts, int cellsTotal) {
        long found = 0;
        for (long count : counts) {
            found += Require.atLeast("count of a cell", count, 0);
        }
        PartialReading byChance = of(found, counts.size(), cellsTotal);
        double read = counts.size();
        double mean = found / read;
        double variance = variance(counts, mean);
        if (!(variance > mean) || counts.size() == cellsTotal) {
            return byChance;
        }
        double unreadCells = cellsTotal - read;
        UnreadIndividuals byCells =
                UnreadByCells.of(mean * unreadCells, cellsTotal * unreadCells * variance / read);
        return width(byCells) > width(byChance.unread)
                ? new PartialReading(found, byChance.shareRead, byCells)
                : byChance;
    }

    private static void checkCells(double cellsRead, double cellsTotal) {
        Require.positive("cellsRead", cellsRead);
        Require.positive("cellsTotal", cellsTotal);
        if (cellsRead > cellsTotal) {
            throw new InvalidInput(
                    ("cellsRead is %s; it must be at most cellsTotal, %s. Maybe the two are"
                                    + " swapped.")
                            .formatted(cellsRead, cellsTotal));
        }
    }

    private static double variance(List<Long> counts, double mean) {
        double sum = 0;
        for (long count : counts) {
            sum += (count - mean) * (count - mean);
        }
        return counts.size() > 1 ? sum / (counts.size() - 1) : 0;
    }

    private static double width(UnreadIndividuals unread) {
        double tail = (1 - CENTRAL) / 2;
        return unread.quantileAbove(tail) - unread.quantile(tail);
    }

    /** {@return individuals on the whole filter, if the rest is like what was read} */
    public double estimate() {
        return found / shareRead;
    }

    /**
     * The number on the whole filter is at least this, with half of 1 − level against it.
     *
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return {@code found} or more
     */
    public double lower(double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        return found + unread.quantile((1 - confidenceLevel) / 2);
    }

    /**
     * The number on the whole filter is at most this, with half of 1 − level against it.
     *
     * @param confidenceLevel two-sided level, in (0, 1)
     * @return {@code found} or more
     */
    public double upper(double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        return found + unread.quantileAbove((1 - confidenceLevel) / 2);
    }

    /**
     * The number on the whole filter is at most this, with 1 − level against it: the bound to use
     * when none was found.
     *
     * @param confidenceLevel one-sided level, in (0, 1)
     * @return {@code found} or more
     */
    public double upperOneSided(double confidenceLevel) {
        Require.between("confidenceLevel", confidenceLevel, 0, 1);
        return found + unread.quantileAbove(1 - confidenceLevel);
    }

    /**
     * The chance that the whole filter holds so many or fewer.
     *
     * @param individuals any number
     * @return in [0, 1]; 0 below {@code found}
     */
    public double chanceOfAtMost(long individuals) {
        return individuals < found ? 0 : unread.cumulativeProbability(individuals - found);
    }

    /**
     * How far off the estimate is likely to be, against itself.
     *
     * @return standard deviation of the unread number over the estimate; infinite if none was found
     *     and cells are left, 0 if every cell was read
     */
    public double relativeStandardError() {
        return shareRead == 1 ? 0 : unread.standardDeviation() / estimate();
    }
}
