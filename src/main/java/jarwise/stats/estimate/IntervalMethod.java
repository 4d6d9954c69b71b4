package jarwise.stats.estimate;

/** How the interval of a density is made. */
public enum IntervalMethod {
    /** Likelihood integrated over k, weighted and cut off: the default, see docs/methods.md. */
    INTEGRATED,
    /** Profile likelihood, for comparison with general statistics software. */
    PROFILE
}
