package jarwise.web.walk;

import jarwise.render.words.Words;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The sentences that the page's script says, with their places left open. */
final class WalkWords {

    private static final List<String> SECTIONS = List.of("walk.", "fluid.", "fill.", "state.");
    private static final Object[] PLACES = {"{0}", "{1}", "{2}", "{3}"};

    private WalkWords() {}

    static Map<String, String> of(Words words) {
        Map<String, String> texts = new TreeMap<>();
        for (String key : words.keys()) {
            if (SECTIONS.stream().anyMatch(key::startsWith)) {
                texts.put(key, words.say(key, PLACES));
            }
        }
        return texts;
    }
}
