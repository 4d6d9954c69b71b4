package jarwise.usecase.demo;

import java.util.Arrays;
import java.util.Map;

/**
 * True means per growing point, one number a round: what the samples of the demo are drawn from.
 * They already hold what treatments, releases and the heat of April did. Benches differ by what
 * stands here: there is no further draw for a bench.
 */
final class TrueDensities {

    static final Map<Stage, double[]> RUBIA_TARN_TREATED =
            Map.of(
                    Stage.LARVA1, means(0, .06, .16, .55, .60, 1.10, .22, .08, .03, .01),
                    Stage.LARVA2, means(0, .02, .10, .40, .42, .90, .18, .06, .02, .01),
                    Stage.PUPAL, means(0, 0, .02, .06, .10, .12, .06, .02, .01, 0),
                    Stage.ADULT, means(.02, .02, .05, .25, .06, .45, .15, .06, .02, .01));

    private static final double[] CHECK_LARVAE =
            means(0, .07, .22, .85, 1.05, 1.10, 1.40, .50, .15, .05);

    static final Map<Stage, double[]> RUBIA_TARN_CHECK =
            Map.of(
                    Stage.LARVA1, times(.55, CHECK_LARVAE),
                    Stage.LARVA2, times(.45, CHECK_LARVAE),
                    Stage.ADULT, means(.02, .02, .04, .22, .28, .30, .38, .15, .06, .02));

    private static final double[] CLOUDMARSH_LARVAE =
            means(.00, .02, .03, .08, .10, .13, .18, .20, .22, .26);

    static final Map<Stage, double[]> CLOUDMARSH =
            Map.of(
                    Stage.LARVA1, times(.55, CLOUDMARSH_LARVAE),
                    Stage.LARVA2, times(.45, CLOUDMARSH_LARVAE),
                    Stage.ADULT, means(.01, .01, .02, .03, .04, .06, .08, .08, .09, .10));

    /** Mites from the sachets build up slowly: an invented rise. */
    private static final double[] CUCUMERIS = means(0, .03, .05, .06, .08, .08, .10, .10, .10, .10);

    static final Map<Stage, double[]> PELLAM_PINK =
            Map.of(
                    Stage.LARVA1, means(0, 0, 0, 0, 0, 0, 0, 0, .05, .12),
                    Stage.LARVA2, means(0, 0, 0, 0, 0, 0, 0, 0, 0, .05),
                    Stage.ADULT, means(0, 0, 0, 0, 0, 0, 0, .03, .05, .06),
                    Stage.CUCUMERIS, CUCUMERIS);

    private static final double[] BROAD_MITES = means(0, 0, .1, .3, .5, .9, 1.4, .6, .3, .2);

    static final Map<Stage, double[]> VELLICHOR =
            Map.of(
                    Stage.BROAD_MITE, BROAD_MITES,
                    Stage.BROAD_MITE_EGG, times(1.5, BROAD_MITES),
                    Stage.CUCUMERIS, CUCUMERIS);

    private static final double[] ONION_THRIPS =
            means(.02, .02, .03, .03, .04, .04, .05, .05, .04, .04);

    private static final double[] APHIDS = means(.2, .4, .7, 1.1, 1.5, 1.3, 1.0, .7, .45, .3);

    /** Three nymphs to an adult: invented. */
    static final Map<Stage, double[]> COPPER_WREN =
            Map.of(
                    Stage.APHID_NYMPH, times(.75, APHIDS),
                    Stage.APHID_ADULT, times(.25, APHIDS),
                    Stage.MUMMY, means(0, 0, .02, .05, .10, .16, .22, .28, .34, .40),
                    Stage.ONION_THRIPS, ONION_THRIPS);

    private static final double[] SPIDER_MITES =
            means(.5, .8, 1.2, 1.7, 2.3, 3.0, 2.6, 1.9, 1.2, .8);

    static final Map<Stage, double[]> SAFFRON_BELL =
            Map.of(
                    Stage.SPIDER_MITE,
                    SPIDER_MITES,
                    Stage.SPIDER_MITE_EGG,
                    times(1.5, SPIDER_MITES),
                    Stage.PERSIMILIS,
                    means(0, 0, 0, 0, 0, 0, .05, .10, .13, .15),
                    Stage.ONION_THRIPS,
                    ONION_THRIPS);

    static final Map<Stage, double[]> AT_THE_DOOR =
            Map.of(Stage.ADULT, means(.1, .1, .1, .1, .2, .2, .2, .3, .3, .3));

    private TrueDensities() {}

    private static double[] means(double... byRound) {
        return byRound;
    }

    private static double[] times(double factor, double[] byRound) {
        return Arrays.stream(byRound).map(mean -> factor * mean).toArray();
    }
}
