package jarwise.usecase.demo.day;

import jarwise.sample.SampleCode;
import jarwise.stats.count.SimulatedCounts;
import jarwise.usecase.demo.Streams;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Codes for labels: seven symbols without I, L, O and U, which are easily misread. */
final class Codes {

    private static final String SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    private final Streams streams;
    private final Set<String> given = new HashSet<>();
    private final Map<List<Object>, SampleCode> byName = new HashMap<>();

    Codes(Streams streams) {
        this.streams = streams;
    }

    /** {@return the code of a sample, told by its name in the demo: the same when asked again} */
    SampleCode of(Object... name) {
        return byName.computeIfAbsent(List.of(name), this::draw);
    }

    private SampleCode draw(List<Object> name) {
        SimulatedCounts draws = streams.of("code", name);
        while (true) {
            StringBuilder code = new StringBuilder();
            for (int i = 0; i < 7; i++) {
                code.append(i == 3 ? "-" : "").append(SYMBOLS.charAt(draws.below(32)));
            }
            if (given.add(code.toString())) {
                return new SampleCode(code.toString());
            }
        }
    }
}
