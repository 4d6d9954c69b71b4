package jarwise.cli.plan;

import jarwise.base.InvalidInput;
import jarwise.cli.option.Numbers;
import jarwise.stats.design.VarianceLaw;
import java.util.Arrays;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** How the variance of a sample goes with its mean: one of three, mixed into a command. */
final class VarianceOptions {

    @Option(
            names = "--k",
            paramLabel = "K",
            converter = Numbers.Dispersion.class,
            description = "clumping of one sample, or Inf for none")
    @Nullable Double k;

    @Option(
            names = "--taylor",
            paramLabel = "A,B",
            description = "constants of Taylor's power law, variance = A mean^B")
    @Nullable String taylor;

    @Option(
            names = "--iwao",
            paramLabel = "ALPHA,BETA",
            description = "constants of Iwao's line, mean crowding = ALPHA + BETA mean")
    @Nullable String iwao;

    /** {@return the one that is given} */
    VarianceLaw law() {
        if (Stream.of(k, taylor, iwao).filter(Objects::nonNull).count() != 1) {
            throw new InvalidInput(
                    "How clumped it is must be given, once: --k K, --taylor A,B or --iwao"
                            + " ALPHA,BETA. Maybe --k 0.5");
        }
        if (k != null) {
            return new VarianceLaw.NegativeBinomial(k);
        }
        if (taylor != null) {
            double[] constants = two("--taylor", taylor);
            return new VarianceLaw.Taylor(constants[0], constants[1]);
        }
        double[] constants = two("--iwao", Objects.requireNonNull(iwao));
        return new VarianceLaw.Iwao(constants[0], constants[1]);
    }

    private static double[] two(String option, String text) {
        String[] parts = text.split(",", -1);
        try {
            if (parts.length == 2) {
                return Arrays.stream(parts).mapToDouble(Double::parseDouble).toArray();
            }
        } catch (NumberFormatException e) {
            // told below like a wrong number of numbers
        }
        throw new InvalidInput(
                ("%s is \"%s\"; two numbers with a comma between them are allowed. Maybe: %s"
                                + " 2.6,1.5")
                        .formatted(option, text, option));
    }
}
