package jarwise.web.rounds;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Addresses of a plan: what was typed is in them, so that a plan can be passed on as a link. */
final class Queries {

    private Queries() {}

    /** {@return a query with what was typed, some of it changed} */
    static String with(Map<String, String> typed, Map<String, String> changes) {
        Map<String, String> all = new TreeMap<>(typed);
        all.putAll(changes);
        all.remove("form_token");
        return all.entrySet().stream()
                .filter(entry -> !entry.getValue().isBlank())
                .map(entry -> encoded(entry.getKey()) + "=" + encoded(entry.getValue()))
                .collect(Collectors.joining("&", "?", ""));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
