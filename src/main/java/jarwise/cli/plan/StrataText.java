package jarwise.cli.plan;

import jarwise.base.InvalidInput;
import jarwise.stats.design.AllocatedStratum;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Strata as they are typed: {@code NAME=SIZE[:SD[:COST]]}, separated by commas. */
final class StrataText {

    private StrataText() {}

    static List<AllocatedStratum> read(List<String> parts) {
        List<AllocatedStratum> strata = new ArrayList<>();
        for (String part : parts) {
            strata.add(stratum(part.strip()));
        }
        return strata;
    }

    private static AllocatedStratum stratum(String text) {
        int equals = text.lastIndexOf('=');
        String[] numbers = text.substring(equals + 1).split(":", -1);
        if (equals < 1 || numbers.length > 3) {
            throw refusal(text);
        }
        return new AllocatedStratum(
                text.substring(0, equals).strip(),
                number(text, numbers[0]),
                numbers.length > 1
                        ? OptionalDouble.of(number(text, numbers[1]))
                        : OptionalDouble.empty(),
                numbers.length > 2 ? number(text, numbers[2]) : 1);
    }

    private static double number(String text, String number) {
        try {
            return Double.parseDouble(number);
        } catch (NumberFormatException e) {
            throw refusal(text);
        }
    }

    private static InvalidInput refusal(String text) {
        return new InvalidInput(
                ("--strata has \"%s\"; NAME=SIZE, NAME=SIZE:SD or NAME=SIZE:SD:COST is allowed,"
                                + " with commas between strata. Maybe: --strata"
                                + " bench1=1200:0.8,bench2=400:2.1")
                        .formatted(text));
    }
}
