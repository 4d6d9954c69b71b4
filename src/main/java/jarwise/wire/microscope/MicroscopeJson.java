package jarwise.wire.microscope;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.sample.CollectedSample;
import jarwise.tally.SampleEvent;
import jarwise.wire.exchange.ExchangeJson;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The filters to read as JSON, as the microscope page keeps them. */
public final class MicroscopeJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private MicroscopeJson() {}

    /** {@return the filters with everything the page needs} */
    public static String write(MicroscopeSheet sheet, MicroscopeSheet.Visitor visitor) {
        ObjectNode root = NODES.objectNode();
        root.put("nursery", visitor.nursery());
        root.put("zone", visitor.zone());
        root.put("language", visitor.language());
        root.put("person", visitor.person());
        root.put("token", visitor.token());
        sheet.layout().rowLengths().forEach(root.putObject("layout").putArray("rows")::add);
        ArrayNode filters = root.putArray("filters");
        sheet.filters().forEach(filter -> filters.add(filter(filter)));
        ArrayNode read = root.putArray("read");
        sheet.read().forEach(code -> read.add(code.text()));
        root.putArray("seeded");
        writePests(root, sheet, visitor);
        sheet.usual().forEach(root.putArray("pests")::add);
        sheet.people().forEach(root.putArray("people")::add);
        root.putObject("secondsPerCell").put("", 6);
        root.putObject("stop").put("passes", 4);
        writeTexts(root.putObject("words"), visitor.words());
        return root.toString();
    }

    private static void writePests(
            ObjectNode root, MicroscopeSheet sheet, MicroscopeSheet.Visitor visitor) {
        ObjectNode stages = root.putObject("stages");
        for (Pest pest : sheet.pests().all()) {
            ObjectNode ofPest = stages.putObject(pest.code());
            for (LifeStage stage : pest.lifeStages()) {
                ofPest.putObject(stage.code())
                        .put("mark", word(stage.mark()))
                        .put("name", visitor.stageNames().getOrDefault(stage.code(), stage.code()));
            }
        }
        writeTexts(root.putObject("pestNames"), visitor.pestNames());
    }

    private static ObjectNode filter(MicroscopeSheet.FilterToRead filter) {
        CollectedSample sample = filter.sample();
        CollectedSample.Place place = sample.place();
        ObjectNode node = NODES.objectNode();
        node.put("code", sample.code().text());
        node.put("role", word(sample.role()));
        node.put("purpose", word(sample.purpose()));
        node.put("state", word(sample.state()));
        node.put("house", place.house().orElse(""));
        node.put("bench", place.bench().orElse(""));
        node.put("cropLot", place.cropLot().orElse(""));
        node.put("variety", place.variety().orElse(""));
        node.put("growingPoints", sample.samplingUnits());
        node.put("fluid", sample.wash().fluid().map(MicroscopeJson::word).orElse(""));
        filter.jar().ifPresent(jar -> node.put("jar", jar.walk()).put("jars", filter.jars()));
        filter.window()
                .ifPresent(
                        window ->
                                node.put("earliestRead", window.earliest().toString())
                                        .put("readBy", window.readBy().toString()));
        filter.pests().forEach(node.putArray("pests")::add);
        node.put("walkStart", filter.walkStart());
        node.set("events", events(filter.events()));
        return node;
    }

    private static ArrayNode events(List<SampleEvent> events) {
        ArrayNode all = NODES.arrayNode();
        for (SampleEvent event : events) {
            ObjectNode node = ExchangeJson.write(event);
            node.put("device", event.id().device());
            all.add(node);
        }
        return all;
    }

    private static void writeTexts(ObjectNode node, Map<String, String> texts) {
        new TreeMap<>(texts).forEach(node::put);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
