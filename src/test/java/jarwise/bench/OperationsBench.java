package jarwise.bench;

import java.util.Map;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** The speed table: each operation beside what it is to take. */
public final class OperationsBench {

    /** Milliseconds; where they come from stands in docs/methods.md. */
    private static final Map<String, Double> TARGETS =
            Map.ofEntries(
                    Map.entry("regressionWithCovariate", 440.0),
                    Map.entry("regressionWithFactors", 88.0),
                    Map.entry("profileLimits", 10.5),
                    Map.entry("outcomesOfCounts", 10.0),
                    Map.entry("outcomesOfTenUnitSamples", 10.0),
                    Map.entry("outcomesOfPresence", 10.0),
                    Map.entry("intervalOf12Jars", 1.0),
                    Map.entry("intervalOf12UnequalJars", 1.0),
                    Map.entry("intervalWithMeasuredShares", 1.0),
                    Map.entry("boundOf12EmptyJars", 1.0));

    private OperationsBench() {}

    /**
     * Starts; takes about three minutes.
     *
     * @param arguments a part of the names to measure only these
     */
    public static void main(String[] arguments) throws RunnerException {
        String wanted = arguments.length == 0 ? "" : arguments[0];
        Options options =
                new OptionsBuilder()
                        .include(Operations.class.getName() + "\\..*" + wanted)
                        .verbosity(VerboseMode.SILENT)
                        .jvmArgsAppend("-XX:+UseParallelGC", "-Xmx2g")
                        .build();
        System.out.printf("%-34s %10s %10s %8s%n", "operation", "ms", "± 99.9 %", "aim ms");
        for (RunResult run : new Runner(options).run()) {
            Result<?> result = run.getPrimaryResult();
            String name = result.getLabel();
            double aim = TARGETS.getOrDefault(name, Double.NaN);
            System.out.printf(
                    "%-34s %10.3f %10.3f %8.1f  %s%n",
                    name,
                    result.getScore(),
                    result.getScoreError(),
                    aim,
                    result.getScore() <= aim ? "met" : "missed");
        }
    }
}
