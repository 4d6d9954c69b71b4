package jarwise.web.microscope;

import jarwise.render.words.Words;
import java.util.Map;
import java.util.TreeMap;

/** The sentences that the page's script says, with their places left open. */
final class MicroscopeWords {

    private static final String SECTION = "tally.";
    private static final Object[] PLACES = {"{0}", "{1}", "{2}", "{3}"};

    private MicroscopeWords() {}

    static Map<String, String> of(Words words) {
        Map<String, String> texts = new TreeMap<>();
        for (String key : words.keys()) {
            if (key.startsWith(SECTION)) {
                texts.put(key, words.say(key, PLACES));
            }
        }
        return texts;
    }
}
