package jarwise.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import jarwise.sample.SeededFilter.Placed;
import java.util.ArrayList;
import java.util.List;

/** What lies on a known filter, as one JSON list. */
public final class PlacedJson {

    private static final ObjectMapper JSON = new ObjectMapper();

    private PlacedJson() {}

    /** {@return the list: cell, pest and stage of each insect} */
    public static ArrayNode node(List<Placed> placed) {
        ArrayNode all = JsonNodeFactory.instance.arrayNode();
        for (Placed one : placed) {
            all.addObject()
                    .put("cell", one.filterCell())
                    .put("pest", one.pest())
                    .put("stage", one.lifeStage());
        }
        return all;
    }

    /** {@return the list as text} */
    public static String write(List<Placed> placed) {
        return node(placed).toString();
    }

    /** {@return what a text holds that {@link #write} made} */
    public static List<Placed> read(String text) {
        try {
            List<Placed> placed = new ArrayList<>();
            for (JsonNode one : JSON.readTree(text)) {
                placed.add(
                        new Placed(
                                one.path("cell").asText(),
                                one.path("pest").asText(),
                                one.path("stage").asText()));
            }
            return placed;
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("Not a list of insects written here: " + text, e);
        }
    }
}
