package jarwise.wire.exchange;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.sample.SampleCode;
import jarwise.tally.EventId;
import jarwise.tally.SampleEvent;
import jarwise.wire.DeedJson;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The exchange of events as JSON. */
public final class ExchangeJson {

    private static final ObjectMapper JSON =
            new ObjectMapper()
                    .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);

    private ExchangeJson() {}

    /**
     * Reads what a device sent.
     *
     * @param text {@code {"device":…,"events":[{"sequence","sample","at","person","deed"}…]}}
     * @throws Refused if any of it cannot be read, with the event's number
     */
    public static EventBatch read(String text) {
        JsonNode root = tree(text);
        if (!root.path("device").isTextual() || !root.path("events").isArray()) {
            throw new Refused(Message.of("exchange.unreadable"));
        }
        String device = root.path("device").asText();
        List<SampleEvent> events = new ArrayList<>();
        for (JsonNode node : root.path("events")) {
            events.add(event(device, node));
        }
        return new EventBatch(device, events);
    }

    /** {@return the answer that everything up to this number has arrived} */
    public static String upTo(long sequence) {
        return JsonNodeFactory.instance.objectNode().put("upTo", sequence).toString();
    }

    /** {@return the answer that the picture with this hash is on record} */
    public static String kept(String sha256) {
        return JsonNodeFactory.instance.objectNode().put("kept", sha256).toString();
    }

    /** {@return the answer that nothing was taken, and why} */
    public static String refused(String sentence) {
        return JsonNodeFactory.instance.objectNode().put("refused", sentence).toString();
    }

    /** {@return an event without its device, as it stands in a list of events} */
    public static ObjectNode write(SampleEvent event) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("sequence", event.id().sequence())
                .put("sample", event.sample().text())
                .put("at", event.at().toString())
                .put("person", event.person());
        node.set("deed", tree(DeedJson.write(event.deed())));
        return node;
    }

    private static JsonNode tree(String text) {
        try {
            return JSON.readTree(text);
        } catch (JsonProcessingException e) {
            Refused refused = new Refused(Message.of("exchange.unreadable"));
            refused.initCause(e);
            throw refused;
        }
    }

    private static SampleEvent event(String device, JsonNode node) {
        JsonNode sequence = node.path("sequence");
        if (!sequence.isIntegralNumber() || !sequence.canConvertToLong()) {
            throw new Refused(Message.of("exchange.event", "?", "sequence"));
        }
        try {
            return new SampleEvent(
                    new EventId(device, sequence.asLong()),
                    new SampleCode(text(node, "sample")),
                    Instant.parse(text(node, "at")),
                    text(node, "person"),
                    Optional.empty(),
                    DeedJson.read(node.path("deed").toString()));
        } catch (InvalidInput | DateTimeException e) {
            throw badEvent(sequence.asText(), e);
        }
    }

    /** {@return the refusal of a batch for one of its events} */
    public static Refused badEvent(String sequence, Exception cause) {
        Refused refused =
                new Refused(
                        Message.of("exchange.event", sequence, String.valueOf(cause.getMessage())));
        refused.initCause(cause);
        return refused;
    }

    private static String text(JsonNode node, String field) {
        if (!node.path(field).isTextual()) {
            throw new InvalidInput("'%s' is missing".formatted(field));
        }
        return node.path(field).asText();
    }
}
