package jarwise.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.microsoft.playwright.Page;
import jarwise.Seeds;
import jarwise.sample.SampleCode;
import jarwise.stats.filter.FilterLayout;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.tally.Tally;
import jarwise.usecase.exchange.History;
import jarwise.wire.exchange.ExchangeJson;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page and the server fold what many devices recorded to the same numbers. */
class FoldTwinsBrowserTest extends BrowserTest {

    private final Map<String, String> server = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final ArrayNode filters = JsonNodeFactory.instance.arrayNode();

    @BeforeEach
    void foldOnTheServer() {
        LongStream seeds = Seeds.some();
        seeds.forEach(
                seed -> {
                    History history = History.of(seed);
                    for (SampleCode filter : history.filters()) {
                        List<SampleEvent> events = delivered(history.eventsOf(filter), seed);
                        String name = "seed %d, filter %s".formatted(seed, filter);
                        names.add(name);
                        server.put(name, said(SampleFold.of(filter, events, History.STAGES)));
                        filters.add(request(events, history.cells()));
                    }
                });
    }

    @Test
    void theSameEventsGiveTheSameNumbersInTheBrowser() throws IOException {
        try (ModuleServer modules = new ModuleServer()) {
            Page page = page(DESK);
            page.navigate(modules.page("histories.js"));
            page.waitForFunction("globalThis.foldAll !== undefined");
            @SuppressWarnings("unchecked")
            List<String> folded =
                    (List<String>)
                            page.evaluate(
                                    "([stages, filters]) => foldAll(stages, JSON.parse(filters))",
                                    List.of(History.STAGES, filters.toString()));

            Map<String, String> browser = new HashMap<>();
            for (int i = 0; i < names.size(); i++) {
                browser.put(names.get(i), folded.get(i));
            }
            assertThat(browser).hasSizeGreaterThanOrEqualTo(1).isEqualTo(server);
        }
    }

    private static List<SampleEvent> delivered(List<SampleEvent> events, long seed) {
        Random random = new Random(seed);
        List<SampleEvent> delivered = new ArrayList<>(events);
        delivered.addAll(events.subList(0, random.nextInt(events.size() + 1)));
        Collections.shuffle(delivered, random);
        return delivered;
    }

    private static ObjectNode request(List<SampleEvent> events, int cells) {
        ObjectNode filter = JsonNodeFactory.instance.objectNode();
        ArrayNode rows = filter.putArray("rows");
        FilterLayout.ofCells(cells).rowLengths().forEach(rows::add);
        ArrayNode array = filter.putArray("events");
        for (SampleEvent event : events) {
            array.add(ExchangeJson.write(event).put("device", event.id().device()));
        }
        return filter;
    }

    private static String said(SampleFold fold) {
        Tally tally = fold.tally();
        return String.join(
                "\n",
                "in use: " + named(tally.individuals()),
                "aside: " + named(tally.aside()),
                "cells: %d read, %d obscured".formatted(tally.cellsRead(), tally.cellsObscured()),
                "read twice: " + tally.cellsReadTwice(),
                "done: " + tally.done(),
                "questions: "
                        + fold.openQuestions().stream()
                                .map(question -> question.step().name().toLowerCase(Locale.ROOT))
                                .sorted()
                                .collect(Collectors.joining(", ")));
    }

    private static String named(SortedMap<StageKey, Long> counts) {
        return counts.entrySet().stream()
                .map(e -> e.getKey().pest() + "/" + e.getKey().lifeStage() + " " + e.getValue())
                .sorted()
                .collect(Collectors.joining(", "));
    }
}
