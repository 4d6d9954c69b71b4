package jarwise.wire.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * One object of an answer, its fields in the order in which they are put. Numbers keep all their
 * digits; what does not exist is written as null.
 */
public final class JsonObject {

    private static final ObjectMapper WRITER =
            new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private final ObjectNode node = JsonNodeFactory.instance.objectNode();
    private final List<String> unsaid = new ArrayList<>();

    /** Puts a text. */
    public JsonObject put(String field, String text) {
        node.put(field, text);
        return this;
    }

    /** Puts a whole number. */
    public JsonObject put(String field, long number) {
        node.put(field, number);
        return this;
    }

    /** Puts yes or no. */
    public JsonObject put(String field, boolean truth) {
        node.put(field, truth);
        return this;
    }

    /** Puts a number; one that is infinite or NaN, which JSON cannot say, as null. */
    public JsonObject put(String field, double number) {
        if (Double.isFinite(number)) {
            node.put(field, number);
        } else {
            node.putNull(field);
            unsaid.add(field);
        }
        return this;
    }

    /** {@return the fields that became null because JSON cannot say them; a warning is due} */
    public List<String> unsaid() {
        return List.copyOf(unsaid);
    }

    /** Puts a number, or null if there is none. */
    public JsonObject put(String field, OptionalDouble number) {
        if (number.isPresent()) {
            return put(field, number.getAsDouble());
        }
        node.putNull(field);
        return this;
    }

    /** Puts a whole number, or null if there is none. */
    public JsonObject put(String field, OptionalLong number) {
        if (number.isPresent()) {
            return put(field, number.getAsLong());
        }
        node.putNull(field);
        return this;
    }

    /** Puts a text, or null if there is none. */
    public JsonObject putText(String field, Optional<String> text) {
        if (text.isPresent()) {
            return put(field, text.get());
        }
        node.putNull(field);
        return this;
    }

    /** Puts an object inside this one. */
    public JsonObject put(String field, JsonObject object) {
        node.set(field, object.node);
        return this;
    }

    /** Puts texts by name, in the order of the map. */
    public JsonObject put(String field, Map<String, String> texts) {
        ObjectNode inner = node.putObject(field);
        texts.forEach(inner::put);
        return this;
    }

    /** Puts a list of objects. */
    public JsonObject putObjects(String field, List<JsonObject> objects) {
        ArrayNode array = node.putArray(field);
        objects.forEach(object -> array.add(object.node));
        return this;
    }

    /** Puts a list of texts. */
    public JsonObject putTexts(String field, List<String> texts) {
        ArrayNode array = node.putArray(field);
        texts.forEach(array::add);
        return this;
    }

    /** Puts numbers, or lists of them inside each other, such as the corners of a shape. */
    public JsonObject putNumbers(String field, List<?> numbers) {
        add(node.putArray(field), numbers);
        return this;
    }

    private static void add(ArrayNode array, List<?> numbers) {
        for (Object one : numbers) {
            if (one instanceof List<?> inner) {
                add(array.addArray(), inner);
            } else if (one instanceof Number number) {
                array.add(number.doubleValue());
            } else {
                throw new IllegalArgumentException("Not a number: " + one);
            }
        }
    }

    /** {@return the object as text, with line feeds on every system} */
    public String text() {
        try {
            return WRITER.writeValueAsString(node).replace("\r\n", "\n");
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}
