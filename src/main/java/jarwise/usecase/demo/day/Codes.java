package jarwise.usecase.demo.day;

import jarwise.sample.LabelCode;
import jarwise.sample.SampleCode;
import jarwise.stats.count.SimulatedCounts;
import jarwise.usecase.demo.Streams;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Codes for labels, each given out once, and what is drawn for the sample that carries one.
 *
 * <p>Draws go by a sign that is drawn before the code, so that the way in which codes are made
 * changes nothing that is found in a jar.
 */
final class Codes {

    private static final int SIGN_LENGTH = 7;

    private final Streams streams;
    private final Map<SampleCode, String> signs = new HashMap<>();
    private final Map<List<Object>, SampleCode> byName = new HashMap<>();

    Codes(Streams streams) {
        this.streams = streams;
    }

    /** {@return the code of a sample, told by its name in the demo: the same when asked again} */
    SampleCode of(Object... name) {
        return byName.computeIfAbsent(List.of(name), this::draw);
    }

    /** {@return the code of what is counted again} */
    SampleCode recountOf(SampleCode first) {
        return of("recount", signOf(first));
    }

    /** {@return draws for the sample with this code, by name} */
    SimulatedCounts draws(SampleCode code, Object... name) {
        List<Object> parts = new ArrayList<>(List.of(signOf(code)));
        parts.addAll(Arrays.asList(name));
        return streams.of(parts.toArray());
    }

    /** {@return draws for what is no single sample} */
    Streams streams() {
        return streams;
    }

    private String signOf(SampleCode code) {
        return signs.getOrDefault(code, code.text());
    }

    private SampleCode draw(List<Object> name) {
        SimulatedCounts draws = streams.of("code", name);
        while (true) {
            String sign = sign(draws);
            SampleCode code = LabelCode.next(draws::below).sampleCode();
            if (signs.putIfAbsent(code, sign) == null) {
                return code;
            }
        }
    }

    private static String sign(SimulatedCounts draws) {
        StringBuilder sign = new StringBuilder();
        for (int i = 0; i < SIGN_LENGTH; i++) {
            sign.append(i == 3 ? "-" : "");
            sign.append(LabelCode.ALPHABET.charAt(draws.below(LabelCode.ALPHABET.length())));
        }
        return sign.toString();
    }
}
