package jarwise.stats.sequential;

import java.util.Random;

/** Plans drawn at random, and a usual one. */
final class SomePlans {

    private SomePlans() {}

    static SequentialPlan plan(SampleModel model) {
        return new SequentialPlan(new WaldDesign(model, 1, 2, 0.1, 0.1, 1), 1, 60);
    }

    static SequentialPlan plan(Random random) {
        double alpha = 0.02 + 0.4 * random.nextDouble();
        double beta = 0.02 + 0.4 * random.nextDouble();
        int minSamples = 1 + random.nextInt(6);
        int maxSamples = minSamples + random.nextInt(50);
        if (random.nextInt(4) == 0) {
            double low = 0.02 + 0.4 * random.nextDouble();
            double high = low + 0.1 + 0.4 * random.nextDouble();
            return new SequentialPlan(
                    new WaldDesign(new PresenceAbsence(), low, high, alpha, beta, 1),
                    minSamples,
                    maxSamples);
        }
        SampleModel model =
                random.nextInt(4) == 0
                        ? CountedSamples.POISSON
                        : new CountedSamples(Math.exp(2 * random.nextGaussian()));
        double units = 1 + random.nextInt(5);
        double low = Math.exp(random.nextGaussian() - 1);
        double high = low * (1.7 + random.nextDouble());
        return new SequentialPlan(
                new WaldDesign(model, low, high, alpha, beta, units), minSamples, maxSamples);
    }

    static double density(Random random, SequentialPlan plan) {
        return plan.usualDensities().get(random.nextInt(41));
    }
}
