package jarwise.wire;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jarwise.base.InvalidInput;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.EventId;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Deeds as JSON, as they stand in the event log and travel between devices. The same deed is always
 * written with the same characters, since the event chain is worked out over them.
 */
public final class DeedJson {

    private static final ObjectMapper JSON = new ObjectMapper();

    private DeedJson() {}

    /** {@return the deed as one JSON object} */
    public static String write(Deed deed) {
        ObjectNode node = JSON.createObjectNode();
        if (deed instanceof Deed.Counted counted) {
            node.put("deed", "counted");
            node.put("pest", counted.pest());
            node.put("life_stage", counted.lifeStage());
            node.put("individuals", counted.individuals());
            counted.filterCell().ifPresent(cell -> node.put("filter_cell", cell));
        } else if (deed instanceof Deed.StepTaken step) {
            writeStep(node, step);
        } else if (deed instanceof Deed.Voided voided) {
            node.put("deed", "voided");
            node.set("slip", id(voided.slip()));
            node.put("reason", voided.reason());
        } else if (deed instanceof Deed.FilterDone done) {
            node.put("deed", "filter_done");
            new TreeSet<>(done.pests()).forEach(node.putArray("pests")::add);
        } else if (deed instanceof Deed.Reopened reopened) {
            node.put("deed", "reopened");
            node.set("done", id(reopened.done()));
            node.put("reason", reopened.reason());
        } else if (deed instanceof Deed.CellDone cell) {
            node.put("deed", "cell_done");
            node.put("filter_cell", cell.filterCell());
            node.put("obscured", cell.obscured());
        } else if (deed instanceof Deed.VoucherKept voucher) {
            writeVoucher(node, voucher);
        } else if (deed instanceof Deed.PhotoTaken photo) {
            writePhoto(node, photo);
        }
        return node.toString();
    }

    /**
     * Reads a deed.
     *
     * @param text one JSON object as {@link #write} makes it
     * @throws InvalidInput if it is none
     */
    public static Deed read(String text) {
        try {
            return read(JSON.readTree(text));
        } catch (JsonProcessingException e) {
            throw new InvalidInput("An event is not JSON: " + e.getOriginalMessage());
        }
    }

    private static Deed read(JsonNode node) {
        String kind = text(node, "deed");
        return switch (kind) {
            case "counted" ->
                    new Deed.Counted(
                            text(node, "pest"),
                            text(node, "life_stage"),
                            node.path("individuals").asLong(-1),
                            optional(node, "filter_cell"));
            case "step" -> readStep(node);
            case "voided" -> new Deed.Voided(id(node.path("slip")), text(node, "reason"));
            case "filter_done" -> new Deed.FilterDone(texts(node.path("pests")));
            case "reopened" -> new Deed.Reopened(id(node.path("done")), text(node, "reason"));
            case "cell_done" ->
                    new Deed.CellDone(text(node, "filter_cell"), node.path("obscured").asBoolean());
            case "voucher_kept" -> readVoucher(node);
            case "photo_taken" ->
                    new Deed.PhotoTaken(
                            id(node.path("voucher")),
                            text(node, "sha256"),
                            node.path("bytes").asLong(-1));
            default -> throw new InvalidInput("'%s' is no kind of event.".formatted(kind));
        };
    }

    private static void writeStep(ObjectNode node, Deed.StepTaken step) {
        node.put("deed", "step");
        node.put("step", step.step().name().toLowerCase(Locale.ROOT));
        ObjectNode facts = node.putObject("facts");
        new TreeMap<>(step.facts()).forEach(facts::put);
        step.replaces().ifPresent(earlier -> node.set("replaces", id(earlier)));
        step.reason().ifPresent(reason -> node.put("reason", reason));
    }

    private static Deed readStep(JsonNode node) {
        Map<String, String> facts = new HashMap<>();
        node.path("facts").properties().forEach(f -> facts.put(f.getKey(), f.getValue().asText()));
        return new Deed.StepTaken(
                step(text(node, "step")),
                facts,
                node.has("replaces") ? Optional.of(id(node.path("replaces"))) : Optional.empty(),
                optional(node, "reason"));
    }

    private static void writeVoucher(ObjectNode node, Deed.VoucherKept voucher) {
        node.put("deed", "voucher_kept");
        node.put("filter_cell", voucher.filterCell());
        node.put("number", voucher.number());
        voucher.press().ifPresent(press -> node.set("press", id(press)));
    }

    private static Deed readVoucher(JsonNode node) {
        return new Deed.VoucherKept(
                text(node, "filter_cell"),
                node.path("number").asInt(-1),
                node.has("press") ? Optional.of(id(node.path("press"))) : Optional.empty());
    }

    private static void writePhoto(ObjectNode node, Deed.PhotoTaken photo) {
        node.put("deed", "photo_taken");
        node.set("voucher", id(photo.voucher()));
        node.put("sha256", photo.sha256());
        node.put("bytes", photo.bytes());
    }

    private static Step step(String word) {
        return Arrays.stream(Step.values())
                .filter(step -> step.name().toLowerCase(Locale.ROOT).equals(word))
                .findAny()
                .orElseThrow(() -> new InvalidInput("'%s' is no step.".formatted(word)));
    }

    private static ObjectNode id(EventId id) {
        return JSON.createObjectNode().put("device", id.device()).put("sequence", id.sequence());
    }

    private static EventId id(JsonNode node) {
        return new EventId(text(node, "device"), node.path("sequence").asLong());
    }

    private static String text(JsonNode node, String field) {
        if (!node.path(field).isTextual()) {
            throw new InvalidInput("An event has no '%s'.".formatted(field));
        }
        return node.path(field).asText();
    }

    private static Optional<String> optional(JsonNode node, String field) {
        return node.path(field).isTextual()
                ? Optional.of(node.path(field).asText())
                : Optional.empty();
    }

    private static Set<String> texts(JsonNode array) {
        Set<String> texts = new HashSet<>();
        array.forEach(item -> texts.add(item.asText()));
        return texts;
    }
}
