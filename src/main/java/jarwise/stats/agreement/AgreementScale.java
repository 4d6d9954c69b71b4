package jarwise.stats.agreement;

/** The scale on which two counts are held against each other. */
public enum AgreementScale {
    /** Square roots: chance moves large and small counts about equally far. */
    SQRT {
        @Override
        double of(double individuals) {
            return Math.sqrt(individuals);
        }
    },
    /** The counts as they are. */
    IDENTITY {
        @Override
        double of(double individuals) {
            return individuals;
        }
    };

    abstract double of(double individuals);
}
