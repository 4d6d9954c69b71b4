package jarwise.web.devices;

import jarwise.web.lan.Reach;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A fingerprint in lines that two people can compare. */
final class FingerprintLines {

    private static final int PAIRS = 8;

    private FingerprintLines() {}

    /** {@return lines of eight pairs; none where no authority of ours is needed} */
    static List<String> of(Optional<Reach> reach) {
        String whole = reach.map(Reach::fingerprint).orElse("");
        if (whole.isEmpty()) {
            return List.of();
        }
        List<String> pairs = Arrays.asList(whole.split(" "));
        return IntStream.iterate(0, at -> at < pairs.size(), at -> at + PAIRS)
                .mapToObj(at -> String.join(" ", pairs.subList(at, at + PAIRS)))
                .toList();
    }
}
