package jarwise.stats.thermal;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.util.Arrays;
import java.util.List;

/**
 * Individuals on their way through the stages, in a row of boxes: as many a stage as its shape. How
 * many are in each stage is what is asked; nobody dies and nobody is born.
 */
public final class StageCohort {

    /** Largest share of a box that moves on at once; it keeps the spread true to about 2.5 %. */
    private static final double LARGEST_MOVE = 0.05;

    private final List<StageDelay> stages;
    private final double[][] boxes;
    private final double grown;

    private StageCohort(List<StageDelay> stages, double[][] boxes, double grown) {
        this.stages = stages;
        this.boxes = boxes;
        this.grown = grown;
    }

    /**
     * Begins with nobody.
     *
     * @param stages the stages in their order, one or more
     * @return an empty cohort
     * @throws InvalidInput if there is no stage
     */
    public static StageCohort of(List<StageDelay> stages) {
        if (stages.isEmpty()) {
            throw new InvalidInput("There is no stage; one or more are needed.");
        }
        double[][] boxes = stages.stream().map(s -> new double[s.shape()]).toArray(double[][]::new);
        return new StageCohort(List.copyOf(stages), boxes, 0);
    }

    /**
     * Adds individuals that have just entered a stage.
     *
     * @param stage place of the stage, from 0
     * @param individuals how many, 0 or more
     * @return the larger cohort
     */
    public StageCohort entering(int stage, double individuals) {
        Require.notNegative("the individuals of a stage", individuals);
        double[][] more = copy();
        more[stage][0] += individuals;
        return new StageCohort(stages, more, grown);
    }

    /**
     * Adds individuals of every age that the stage has, as many of each: what a count of a stage
     * tells when nobody knows how old they are.
     *
     * @param stage place of the stage, from 0
     * @param individuals how many, 0 or more
     * @return the larger cohort
     */
    public StageCohort ofAllAges(int stage, double individuals) {
        Require.notNegative("the individuals of a stage", individuals);
        double[][] more = copy();
        for (int i = 0; i < more[stage].length; i++) {
            more[stage][i] += individuals / more[stage].length;
        }
        return new StageCohort(stages, more, grown);
    }

    /**
     * Where is everybody after some more warmth?
     *
     * <p>A linear chain: of each box a share shape·ΔDD/K moves on, in steps so small that it is at
     * most 5 %. The mean time in a stage is then exactly K/(T − T0) in constant temperature, to the
     * length of a step; the spread is up to 2.5 % too narrow.
     *
     * <p>Assumes that warmth acts alike on all, that individuals do not crowd each other, and no
     * deaths.
     *
     * <p>Source: linear chain of Erlang delays, Manetsch (1976), IEEE Trans. Syst. Man Cybern.
     * 6:547–553 (from memory); checked by the identity with K/(T − T0) and by conservation.
     *
     * @param degreeDays warmth of the time that went by, one number a stage in its own scale, in
     *     °C·d, 0 or more
     * @return the cohort at its end
     * @throws InvalidInput if there are not as many numbers as stages or one is negative
     */
    public StageCohort after(double... degreeDays) {
        if (degreeDays.length != stages.size()) {
            throw new InvalidInput(
                    "There are %d sums of degree-days for %d stages; one each is needed."
                            .formatted(degreeDays.length, stages.size()));
        }
        double[] shares = new double[stages.size()];
        for (int s = 0; s < shares.length; s++) {
            double needed = stages.get(s).constants().degreeDays();
            double warmth = Require.notNegative("the degree-days of a stage", degreeDays[s]);
            shares[s] = stages.get(s).shape() * warmth / needed;
        }
        double fastest = Arrays.stream(shares).max().orElse(0);
        int steps = (int) Math.max(1, Math.ceil(fastest / LARGEST_MOVE - 1e-9));
        double[][] moved = copy();
        double out = grown;
        for (int step = 0; step < steps; step++) {
            out += move(moved, shares, steps);
        }
        return new StageCohort(stages, moved, out);
    }

    /** One small step; {@return what left the last box} */
    private static double move(double[][] boxes, double[] shares, int steps) {
        double coming = 0;
        for (int s = 0; s < boxes.length; s++) {
            double share = shares[s] / steps;
            for (int i = 0; i < boxes[s].length; i++) {
                double going = share * boxes[s][i];
                boxes[s][i] += coming - going;
                coming = going;
            }
        }
        return coming;
    }

    /** {@return how many are in a stage, by its place from 0} */
    public double inStage(int stage) {
        return Arrays.stream(boxes[stage]).sum();
    }

    /** {@return how many have left the last stage} */
    public double grown() {
        return grown;
    }

    private double[][] copy() {
        return Arrays.stream(boxes).map(double[]::clone).toArray(double[][]::new);
    }
}
