package jarwise.stats.filter;

/** How many individuals the cells that were not read hold, as far as the read ones tell. */
public sealed interface UnreadIndividuals permits UnreadByChance, UnreadByCells {

    /** {@return the standard deviation, individuals; 0 if every cell was read} */
    double standardDeviation();

    /**
     * The chance that the unread cells hold so many or fewer.
     *
     * @param individuals 0 or more
     * @return in [0, 1]
     */
    double cumulativeProbability(long individuals);

    /**
     * The number that the unread cells hold at most, with this chance.
     *
     * @param probability in [0, 1)
     * @return individuals, 0 or more
     */
    double quantile(double probability);

    /**
     * The number that the unread cells hold more than, with this chance at most.
     *
     * @param probability in (0, 1]
     * @return individuals, 0 or more
     */
    double quantileAbove(double probability);
}
