package jarwise.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import jarwise.cli.CommandRun;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Plans for any clumping there is a number for: an answer that is right, or none and why. */
@Tag("slow")
class ExtremeClumpingTest {

    /** From hardly ever found to not clumped at all. */
    private static final List<String> RISING_K =
            List.of(
                    "5e-324", "1e-320", "1e-308", "1e-300", "1e-100", "1e-15", "1e-3", "0.5", "10",
                    "1e6", "1e15", "1e19", "1e20", "1e100", "1e300", "1e308", "Inf");

    static Stream<String> detecting() {
        return Stream.of(
                "--density 0.1",
                "--density 0.1 --units 12 --confidence 0.9999999999999999",
                "--density 1e300",
                "--density 0.1 --efficiency 18/24",
                "--density 0.1 --confidence 1e-300");
    }

    static Stream<String> hopeless() {
        return Stream.of(
                "--density 1e-15", "--density 1e-300", "--density 0.1 --efficiency 1e-300");
    }

    @ParameterizedTest(name = "plan detect {0}")
    @MethodSource("hopeless")
    void whatNoNumberOfSamplesFindsHasNoneAndItIsSaid(String options) {
        for (String k : RISING_K) {
            JsonNode answer = run("plan detect " + options, k).json();

            assertThat(answer.get("sampleSize").isNull()).as("%s, k %s", options, k).isTrue();
            assertThat(answer.get("warnings").isEmpty()).as("%s, k %s", options, k).isFalse();
        }
    }

    static Stream<String> others() {
        return Stream.of(
                "plan estimate --density 0.5 --precision 0.25",
                "plan estimate --density 1e-300 --precision 1e-300",
                "plan estimate --density 1e300 --precision 1e300",
                "plan decide --low 0.1 --high 0.4 --alpha 0.1 --beta 0.1",
                "plan decide --low 1e-9 --high 1e-6 --alpha 0.1 --beta 0.1 --max-samples 10",
                "plan decide --low 100 --high 200 --alpha 0.1 --beta 0.1 --max-samples 10");
    }

    private static CommandRun run(String command, String k) {
        List<String> args = new ArrayList<>(List.of(command.split(" ", -1)));
        args.addAll(List.of("--k", k, "--json"));
        return CommandRun.of(args.toArray(String[]::new));
    }

    @ParameterizedTest(name = "plan detect {0}")
    @MethodSource("detecting")
    void theLessClumpedTheFewerSamplesFindThem(String options) {
        double before = Double.POSITIVE_INFINITY;
        for (String k : RISING_K) {
            CommandRun run = run("plan detect " + options, k);
            assertThat(run.code()).as("%s, k %s: %s", options, k, run.err()).isZero();
            JsonNode answer = run.json();
            double samples = answer.get("sampleSize").asDouble(Double.POSITIVE_INFINITY);
            double exact = answer.get("samplesExact").asDouble(Double.POSITIVE_INFINITY);

            assertThat(samples).as("%s, k %s", options, k).isLessThanOrEqualTo(before);
            assertThat(answer.get("warnings").isEmpty()).isEqualTo(samples < 1e16);
            if (samples < 1e15 && answer.get("confidenceLevel").asDouble() > 1e-9) {
                assertThat(samples)
                        .as("%s, k %s", options, k)
                        .isBetween(exact * (1 - 1e-5), exact * (1 + 1e-5) + 1);
            }
            before = samples;
        }
        assertThat(before).isLessThan(1e16).isPositive();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("others")
    void everyFigureIsANumberOrThereIsNoneAndItIsSaid(String command) {
        isSaid(command, RISING_K);
    }

    /** A thousand drawn trials take seconds, so only where k is least. */
    @Test
    void aTrialOfTheStrongestClumpingIsJudgedOrItIsSaidWhyNot() {
        isSaid("plan compare --before 2 --efficacy 0.9 --per-arm 3", List.of("5e-324", "1e-300"));
    }

    private static void isSaid(String command, List<String> dispersions) {
        for (String k : dispersions) {
            CommandRun run = run(command, k);
            String what = command + " --k " + k;

            if (run.code() == 0) {
                assertThat(run.out()).as(what).doesNotContain("NaN").doesNotContain("Infinity");
                assertThat(run.json().isObject()).as(what).isTrue();
            } else {
                assertThat(run.code()).as(what).isEqualTo(2);
                assertThat(run.out()).as(what).isEmpty();
                assertThat(run.err()).as(what).contains("k is").doesNotContain("\tat ");
            }
        }
    }
}
