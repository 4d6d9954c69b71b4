package jarwise.bench;

import jarwise.stats.regression.RegressionFit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The same drawn rows in our regression and in R's MASS::glm.nb, with the answers of both, so that
 * a time never stands without proof that the same thing was worked out.
 */
public final class BesideRBench {

    private static final String SCRIPT = "src/test/bench-scripts/beside.R";
    private static final double CUT = 3.841458820694124;
    private static final int ROUNDS = 5;

    private BesideRBench() {}

    /** Starts; takes about a minute, most of it R's. */
    public static void main(String[] arguments) throws IOException, InterruptedException {
        MillionRows many = new MillionRows(1_000_000, true);
        MillionRows few = new MillionRows(1000, true);
        System.out.println("Jarwise");
        RegressionFit fit = few.fit();
        say("profile limits of 8 coefficients, 1,000 rows", median(() -> limits(fit)), fit);
        say("1,000,000 rows, 8 coefficients", median(many::fit), many.fit());
        Path folder = Files.createTempDirectory("beside-r");
        Path manySheet = folder.resolve("many.csv");
        Path fewSheet = folder.resolve("few.csv");
        many.write(manySheet);
        few.write(fewSheet);
        runR(manySheet, fewSheet);
        Files.delete(manySheet);
        Files.delete(fewSheet);
        Files.delete(folder);
    }

    private static void runR(Path many, Path few) throws InterruptedException {
        System.out.println("R");
        try {
            int code =
                    new ProcessBuilder("Rscript", SCRIPT, many.toString(), few.toString())
                            .inheritIO()
                            .start()
                            .waitFor();
            if (code != 0) {
                System.out.println("R is here, but its script failed: is the package MASS there?");
            }
        } catch (IOException e) {
            System.out.println("left out: Rscript is not here.");
        }
    }

    private static double limits(RegressionFit fit) {
        return IntStream.range(0, MillionRows.COEFFICIENTS)
                .parallel()
                .mapToObj(j -> fit.limits(fit.only(j), CUT))
                .mapToDouble(limits -> limits.lower().orElse(0))
                .sum();
    }

    /** The first rounds warm the machine up; milliseconds of the middle one of the others. */
    private static double median(Supplier<?> work) {
        double[] millis = new double[ROUNDS];
        for (int round = -3; round < ROUNDS; round++) {
            long start = System.nanoTime();
            Object answer = work.get();
            if (round >= 0 && answer != null) {
                millis[round] = (System.nanoTime() - start) / 1e6;
            }
        }
        Arrays.sort(millis);
        return millis[ROUNDS / 2];
    }

    private static void say(String what, double millis, RegressionFit fit) {
        System.out.printf(
                "%-44s %10.1f ms  k %.6f  logLik %.4f%n  coefficients %s%n",
                what,
                millis,
                fit.k().orElse(Double.POSITIVE_INFINITY),
                fit.logLikelihood(),
                IntStream.range(0, MillionRows.COEFFICIENTS)
                        .mapToObj(j -> "%.6f".formatted(fit.estimate(fit.only(j)).orElse(0)))
                        .collect(Collectors.joining(" ")));
    }
}
