package jarwise.stats.filter;

import jarwise.numeric.NegativeBinomial;

/**
 * Every individual fell into a read cell with the same chance: the unread number is negative
 * binomial, NB(found + 1, share read), after a flat expectation of the total.
 *
 * @param distribution of the unread individuals
 */
record UnreadByChance(NegativeBinomial distribution) implements UnreadIndividuals {

    static UnreadByChance of(long found, double shareRead) {
        double failuresPerSuccess = (1 - shareRead) / shareRead;
        return new UnreadByChance(
                new NegativeBinomial((found + 1) * failuresPerSuccess, found + 1.0));
    }

    @Override
    public double standardDeviation() {
        return Math.sqrt(distribution.variance());
    }

    @Override
    public double cumulativeProbability(long individuals) {
        return distribution.cumulativeProbability(individuals);
    }

    @Override
    public double quantile(double probability) {
        return distribution.quantile(probability);
    }

    @Override
    public double quantileAbove(double probability) {
        return distribution.quantileAbove(probability);
    }
}
