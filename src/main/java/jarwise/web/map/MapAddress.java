package jarwise.web.map;

import io.javalin.http.Context;
import jarwise.web.Frame;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Addresses of the map with other rounds and the same animals.
 *
 * @param page address without a question
 * @param asked what else is asked for
 */
record MapAddress(String page, Map<String, String> asked) {

    MapAddress {
        asked = java.util.Collections.unmodifiableMap(new TreeMap<>(asked));
    }

    static MapAddress of(Frame frame, Context http) {
        Map<String, String> asked = new TreeMap<>();
        for (String name : new String[] {"pest", "stage", "to"}) {
            String value = http.queryParam(name);
            if (value != null && !value.isBlank()) {
                asked.put(name, value);
            }
        }
        return new MapAddress(frame.to("map"), asked);
    }

    String ofRound(LocalDate day) {
        Map<String, String> all = new TreeMap<>(asked);
        all.put("round", day.toString());
        return page
                + all.entrySet().stream()
                        .map(one -> one.getKey() + "=" + encoded(one.getValue()))
                        .collect(Collectors.joining("&", "?", ""));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
