package jarwise.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Map;
import java.util.TreeMap;

/** Names and texts as one JSON object, names in order. */
public final class AttributesJson {

    private static final ObjectMapper JSON = new ObjectMapper();

    private AttributesJson() {}

    /** {@return the object as text} */
    public static String write(Map<String, String> attributes) {
        try {
            return JSON.writeValueAsString(new TreeMap<>(attributes));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return names and texts of an object that {@link #write} made} */
    public static Map<String, String> read(String text) {
        try {
            return JSON.readValue(text, new TypeReference<Map<String, String>>() {});
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Not the names and texts written here: " + text, e);
        }
    }
}
