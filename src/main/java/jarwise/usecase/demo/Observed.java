package jarwise.usecase.demo;

import jarwise.sample.Fluid;

/**
 * What of the individuals present comes to the eye, by kind of stage: the share that a wash in 70 %
 * alcohol, in 0.1 % soap and in plain water brings off, what is left of it in an overpacked jar,
 * the share that a tap shakes off, and the shares of what lies on the filter that readers A and B
 * see. All values are invented for the demo; what its site has adopted is consistent with them.
 */
public enum Observed {
    LARVA1(.50, .52, .02, .55, .10, .88, .62),
    LARVA2(.62, .65, .03, .55, .19, .94, .78),
    PUPAL(.45, .45, .02, .6, .03, .85, .70),
    ADULT(.70, .72, .03, .7, .30, .97, .94),
    MOTILE(.55, .55, .03, .5, .05, .90, .75),
    MITE_EGG(.15, .15, .01, .5, 0, .80, .55),
    APHID(.80, .82, .10, .8, .35, .97, .96),
    PREDATOR(.50, .50, .02, .6, .10, .92, .85),
    /** For what is a name of the reader's own: nothing truly is "unsure". */
    AS_NOTED(.70, .72, .03, .7, .30, 1, 1);

    private final double alcohol;
    private final double soap;
    private final double water;
    private final double packed;
    private final double tap;
    private final double readerA;
    private final double readerB;

    Observed(double... shares) {
        alcohol = shares[0];
        soap = shares[1];
        water = shares[2];
        packed = shares[3];
        tap = shares[4];
        readerA = shares[5];
        readerB = shares[6];
    }

    /** {@return the share that a wash brings off} */
    public double washed(Fluid fluid, boolean overpacked) {
        double share =
                switch (fluid) {
                    case ALCOHOL -> alcohol;
                    case SOAP -> soap;
                    case WATER -> water;
                };
        return overpacked ? share * packed : share;
    }

    /** {@return the share that a tap shakes off} */
    public double tapped() {
        return tap;
    }

    /** {@return the share that a reader sees} */
    public double seenBy(String reader) {
        return reader.equals(Cast.READER_B) ? readerB : readerA;
    }
}
