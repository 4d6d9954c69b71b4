package jarwise.stats.sequential;

/** What to do after a sample of a sequential plan. */
public enum SequentialStep {

    /** Stop: the density is of the lower class. */
    BELOW,

    /** Stop: the density is of the upper class. */
    ABOVE,

    /** Take another sample. */
    CONTINUE,

    /** The largest number of samples is reached between the lines: undecided. */
    SAMPLED_OUT
}
