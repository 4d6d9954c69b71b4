package jarwise.wire.microscope;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.sample.CollectedSample;
import jarwise.sample.SeededFilter;
import jarwise.tally.SampleEvent;
import jarwise.wire.PlacedJson;
import jarwise.wire.exchange.ExchangeJson;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
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
        root.put("time", visitor.now().toString());
        root.put("language", visitor.language());
        root.put("person", visitor.person());
        root.put("token", visitor.token());
        root.put("program", visitor.program());
        sheet.layout().rowLengths().forEach(root.putObject("layout").putArray("rows")::add);
        ArrayNode filters = root.putArray("filters");
        sheet.filters().forEach(filter -> filters.add(filter(filter)));
        ArrayNode read = root.putArray("read");
        sheet.read().forEach(jar -> read.add(jar(jar)));
        ArrayNode seeded = root.putArray("seeded");
        sheet.seeded().forEach(filter -> seeded.add(seeded(filter)));
        writePests(root, sheet, visitor);
        sheet.usual().forEach(root.putArray("pests")::add);
        sheet.people().forEach(root.putArray("people")::add);
        ObjectNode seconds = root.putObject("secondsPerCell");
        new TreeMap<>(sheet.secondsPerCell()).forEach(seconds::put);
        root.set("stop", rules(sheet.rules()));
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

    private static ObjectNode rules(MicroscopeSheet.Rules rules) {
        ObjectNode node = NODES.objectNode().put("passes", rules.passes());
        rules.wantedRelativeError().ifPresent(error -> node.put("wantedRelativeError", error));
        rules.minutesAllowed().ifPresent(minutes -> node.put("minutesAllowed", minutes));
        return node;
    }

    private static ObjectNode seeded(SeededFilter filter) {
        ObjectNode node = NODES.objectNode();
        node.put("code", filter.code().text());
        node.put("name", filter.name());
        node.set("placed", PlacedJson.node(filter.placed()));
        return node;
    }

    /** What a further wash of a jar is to know. */
    private static ObjectNode jar(CollectedSample sample) {
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
        return node;
    }

    private static ObjectNode filter(MicroscopeSheet.FilterToRead filter) {
        ObjectNode node = jar(filter.sample());
        filter.sample().recountOf().ifPresent(first -> node.put("label", first.text()));
        filter.notBy().ifPresent(reader -> node.put("notBy", reader));
        filter.jar().ifPresent(jar -> node.put("jar", jar.walk()).put("jars", filter.jars()));
        filter.window()
                .ifPresent(
                        window ->
                                node.put("earliestRead", window.earliest().toString())
                                        .put("readBy", window.readBy().toString()));
        filter.pests().forEach(node.putArray("pests")::add);
        node.put("walkStart", filter.walkStart());
        node.set("stop", stop(filter.stop()));
        node.set("events", events(filter.events()));
        return node;
    }

    private static ObjectNode stop(MicroscopeSheet.Stop stop) {
        ObjectNode node = NODES.objectNode();
        node.put("detection", stop.detection());
        node.put("othersToRead", stop.othersToRead());
        ArrayNode groups = node.putArray("groups");
        for (MicroscopeSheet.Group group : stop.groups()) {
            ObjectNode one = groups.addObject();
            one.put("pest", group.pest());
            one.put("group", group.group());
            group.stages().forEach(one.putArray("stages")::add);
            one.put("belowFrom", group.belowFrom());
            one.set("below", number(group.below()));
            one.set("above", number(group.above()));
        }
        return node;
    }

    private static JsonNode number(OptionalInt number) {
        return number.isPresent() ? NODES.numberNode(number.getAsInt()) : NODES.nullNode();
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
