package jarwise;

import java.util.stream.LongStream;

/** Seeds of property tests; one shows in the test's name, and {@code -Dseed=17} runs it alone. */
public final class Seeds {

    private Seeds() {}

    /** {@return 200 seeds, or the one asked for} */
    public static LongStream some() {
        Long one = Long.getLong("seed");
        return one == null ? LongStream.rangeClosed(1, 200) : LongStream.of(one);
    }
}
