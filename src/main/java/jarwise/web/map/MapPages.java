package jarwise.web.map;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import jarwise.render.finding.FindingWords;
import jarwise.site.CropLot;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.map.CropMap;
import jarwise.usecase.map.ShowMap;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.findings.ScopeQuery;
import jarwise.web.piece.Form;
import jarwise.wire.floor.FloorGeoJson;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The crop map, the drawing of the nursery and its crop lots. */
public final class MapPages implements Pages {

    private final Server.Kit kit;
    private final ShowMap showMap;
    private final MapDeeds deeds;

    /** Answers with what {@code showMap} shows. */
    public MapPages(Server.Kit kit, ShowMap showMap, MapDeeds deeds) {
        this.kit = kit;
        this.showMap = showMap;
        this.deeds = deeds;
    }

    /** One form taken. */
    private interface Change {
        void make(String nursery, LocalDate today, Fields fields);
    }

    /** Shows one page again, with a form as it was refused. */
    private interface Again {
        void show(Context http, Frame frame, Form form);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/map", this::map);
        routes.get("/{nursery}/map.geojson", this::geoJson);
        routes.get("/{nursery}/map/draw", this::draw);
        routes.get("/{nursery}/map/lots", this::lots);
        draw(routes, "house", (n, day, f) -> deeds.house().run(n, deeds.floor().unit(n, day), f));
        draw(routes, "adjust", (n, day, f) -> deeds.adjust().run(n, deeds.floor().unit(n, day), f));
        draw(routes, "bench", (n, day, f) -> deeds.places().bench(n, f));
        draw(routes, "bench-off", (n, day, f) -> deeds.adjust().takeOff(n, f));
        draw(routes, "spot", (n, day, f) -> deeds.spots().add(n, deeds.floor().unit(n, day), f));
        draw(routes, "spot-off", (n, day, f) -> deeds.spots().remove(n, f));
        lots(routes, "move", (n, day, f) -> deeds.move().run(n, day, f));
        lots(routes, "lot", (n, day, f) -> deeds.lots().bring(n, day, f));
        lots(routes, "end", (n, day, f) -> deeds.lots().end(n, day, f));
    }

    private void draw(RoutesConfig routes, String name, Change change) {
        routes.post("/{nursery}/map/" + name, http -> make(http, name, "draw", change, this::draw));
    }

    private void lots(RoutesConfig routes, String name, Change change) {
        routes.post("/{nursery}/map/" + name, http -> make(http, name, "lots", change, this::lots));
    }

    private void make(Context http, String name, String page, Change change, Again again) {
        Frame frame = kit.frames().ofSite(http, "map");
        Map<String, String> typed = new TreeMap<>();
        http.formParamMap().forEach((field, values) -> typed.put(field, values.get(0)));
        Fields fields = Fields.of(typed);
        try {
            change.make(nursery(frame).slug(), frame.now().toLocalDate(), fields);
            String house = typed.getOrDefault(name.equals("house") ? "code" : "house", "");
            String query = house.isBlank() ? "" : "?house=" + encoded(house.strip());
            http.redirect(frame.to("map/" + page) + query + "#" + name, HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            again.show(http, frame, Form.refused(frame, name, typed, refused));
        }
    }

    private static String encoded(String text) {
        return java.net.URLEncoder.encode(text, java.nio.charset.StandardCharsets.UTF_8);
    }

    private void map(Context http) {
        Frame frame = kit.frames().ofSite(http, "map");
        Nursery nursery = nursery(frame);
        var counts = showMap.showFindings().counts();
        var rules = counts.rules(nursery.slug());
        LocalDate today = frame.now().toLocalDate();
        LocalDate last = counts.lastDay(nursery.slug()).orElse(today);
        CropMap map =
                showMap.run(
                        nursery,
                        ScopeQuery.of(http, rules, last)
                                .map(scope -> new ShowMap.Asked(rules, scope)),
                        ScopeQuery.day(http, "round"),
                        frame.now());
        FindingWords say = new FindingWords(frame.words(), rules.pests());
        MapView view =
                new MapMaker(
                                frame,
                                map,
                                say,
                                deeds.floor().unit(nursery.slug(), today),
                                MapAddress.of(frame, http))
                        .view();
        kit.templates().answer(http, "map.jte", Map.of("frame", frame, "view", view));
    }

    private void geoJson(Context http) {
        Frame frame = kit.frames().ofSite(http, "map");
        Nursery nursery = nursery(frame);
        var floor = deeds.floor().run(nursery.slug());
        Map<String, CropLot> known =
                floor.lots().stream().collect(Collectors.toMap(CropLot::code, Function.identity()));
        Map<String, List<CropLot>> lots =
                floor.stands().open().stream()
                        .filter(stand -> known.containsKey(stand.cropLot()))
                        .collect(
                                Collectors.groupingBy(
                                        Occupancy::bench,
                                        Collectors.mapping(
                                                stand ->
                                                        Objects.requireNonNull(
                                                                known.get(stand.cropLot())),
                                                Collectors.toList())));
        http.contentType("application/geo+json; charset=utf-8");
        http.header("Content-Disposition", "attachment; filename=\"plan.geojson\"");
        http.header("Cache-Control", "no-store");
        http.result(FloorGeoJson.write(nursery.name(), floor.plan(), lots));
    }

    private void draw(Context http) {
        Frame frame = kit.frames().ofSite(http, "map");
        draw(http, frame, Form.fresh(frame));
    }

    private void draw(Context http, Frame frame, Form form) {
        String slug = nursery(frame).slug();
        String house =
                form.typedOr("house", Optional.ofNullable(http.queryParam("house")).orElse(""));
        DrawView view =
                new DrawView(
                        frame,
                        deeds.floor().run(slug).plan(),
                        deeds.floor().unit(slug, frame.now().toLocalDate()),
                        form,
                        house);
        kit.templates().answer(http, "map_draw.jte", Map.of("frame", frame, "view", view));
    }

    private void lots(Context http) {
        Frame frame = kit.frames().ofSite(http, "map");
        lots(http, frame, Form.fresh(frame));
    }

    private void lots(Context http, Frame frame, Form form) {
        LotsView view = new LotsView(frame, deeds.floor().run(nursery(frame).slug()), form);
        kit.templates().answer(http, "map_lots.jte", Map.of("frame", frame, "view", view));
    }

    private static Nursery nursery(Frame frame) {
        return frame.nursery().orElseThrow();
    }
}
