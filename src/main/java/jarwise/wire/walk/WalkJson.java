package jarwise.wire.walk;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jarwise.plan.PlannedJar;
import jarwise.sample.ProtocolVersion;
import jarwise.tally.SampleEvent;
import jarwise.wire.exchange.ExchangeJson;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;

/** A round as JSON, as the phone keeps it for a day without a server. */
public final class WalkJson {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private WalkJson() {}

    /** {@return the round with everything the page needs} */
    public static String write(WalkSheet sheet, WalkSheet.Visitor visitor) {
        ObjectNode root = NODES.objectNode();
        root.put("nursery", visitor.nursery());
        root.put("site", visitor.siteName());
        root.put("zone", visitor.zone());
        root.put("time", visitor.now().toString());
        root.put("language", visitor.language());
        root.put("person", visitor.person());
        root.put("token", visitor.token());
        root.putObject("round")
                .put("id", sheet.plan().id())
                .put("day", sheet.plan().day().toString());
        root.set("protocol", protocol(sheet.protocol()));
        ArrayNode jars = root.putArray("jars");
        for (PlannedJar jar : sheet.plan().jars()) {
            ObjectNode node = jar(jar);
            node.set("events", events(sheet.steps().getOrDefault(jar.code(), List.of())));
            jars.add(node);
        }
        ArrayNode benches = root.putArray("benches");
        sheet.benches()
                .forEach(
                        bench ->
                                benches.addObject()
                                        .put("code", bench.code())
                                        .put("house", bench.house())
                                        .put("bay", bench.bay()));
        ArrayNode noEntry = root.putArray("noEntry");
        sheet.noEntry().forEach(place -> noEntry.add(noEntry(place)));
        sheet.people().forEach(root.putArray("people")::add);
        ObjectNode words = root.putObject("words");
        new TreeMap<>(visitor.words()).forEach(words::put);
        return root.toString();
    }

    private static ObjectNode protocol(ProtocolVersion protocol) {
        return NODES.objectNode()
                .put("growingPointsPerJar", protocol.growingPointsPerJar())
                .put("shakeSecondsLeast", protocol.shakeSecondsLeast())
                .put("shakeSecondsMost", protocol.shakeSecondsMost())
                .put("freezeHours", protocol.freezeHours())
                .put("readWithinHours", protocol.readWithinHours());
    }

    private static ObjectNode jar(PlannedJar jar) {
        ObjectNode node = NODES.objectNode();
        node.put("code", jar.code().text());
        node.put("walk", jar.walk());
        node.put("house", jar.house());
        node.put("bench", jar.bench());
        node.put("variety", jar.variety().orElse(""));
        node.put("purpose", word(jar.purpose()));
        node.put("role", word(jar.role()));
        node.put("growingPoints", jar.growingPoints());
        jar.spot()
                .ifPresent(
                        spot ->
                                node.putObject("spot")
                                        .put("along", spot.along())
                                        .put("across", spot.across()));
        return node;
    }

    private static ArrayNode events(List<SampleEvent> steps) {
        ArrayNode events = NODES.arrayNode();
        for (SampleEvent step : steps) {
            ObjectNode node = ExchangeJson.write(step);
            node.put("device", step.id().device());
            events.add(node);
        }
        return events;
    }

    private static ObjectNode noEntry(WalkSheet.NoEntry place) {
        ObjectNode node = NODES.objectNode().put("house", place.house());
        place.benches().forEach(node.putArray("benches")::add);
        node.put("until", place.until().map(Object::toString).orElse(null));
        return node;
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
