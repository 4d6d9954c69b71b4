package jarwise.cli.model;

/** Heights at which profile likelihoods are cut. */
final class Cuts {

    /** Chi-squared with one degree of freedom, 0.95. */
    static final double OF_95_PERCENT = 3.841458820694124;

    private Cuts() {}
}
