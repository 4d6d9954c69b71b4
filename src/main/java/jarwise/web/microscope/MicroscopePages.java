package jarwise.web.microscope;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.Pests;
import jarwise.usecase.microscope.ShowMicroscope;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.wire.microscope.MicroscopeJson;
import jarwise.wire.microscope.MicroscopeSheet;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The microscope page: counts with the eyes on the eyepieces, a whole day without a server. */
public final class MicroscopePages implements Pages {

    private final Server.Kit kit;
    private final ShowMicroscope show;

    public MicroscopePages(Server.Kit kit, ShowMicroscope show) {
        this.kit = kit;
        this.show = show;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/microscope", this::page);
        routes.get("/{nursery}/microscope/shell", this::page);
        routes.get("/{nursery}/microscope/data", this::data);
    }

    /** The same page with and without a connection: what it shows comes from the device's log. */
    private void page(Context http) {
        Frame frame = kit.frames().ofSite(http, "microscope");
        kit.templates().answer(http, "microscope.jte", Map.of("frame", frame));
    }

    private void data(Context http) {
        Frame frame = kit.frames().ofSite(http, "microscope");
        String slug = frame.nursery().orElseThrow(NotFoundResponse::new).slug();
        MicroscopeSheet sheet = show.run(slug, reader(frame), frame.now());
        http.header("Cache-Control", "no-store");
        http.contentType("application/json");
        http.result(MicroscopeJson.write(sheet, visitor(frame, slug, sheet.pests())));
    }

    private static Optional<String> reader(Frame frame) {
        return Optional.of(frame.person()).filter(person -> !person.isEmpty());
    }

    private static MicroscopeSheet.Visitor visitor(Frame frame, String slug, Pests pests) {
        return new MicroscopeSheet.Visitor(
                slug,
                frame.now().getZone().getId(),
                frame.now().toInstant(),
                frame.words().language().code(),
                frame.person(),
                frame.formToken(),
                frame.look().program(),
                MicroscopeWords.of(frame.words()),
                pestNames(frame, pests),
                stageNames(frame, pests));
    }

    private static Map<String, String> pestNames(Frame frame, Pests pests) {
        Map<String, String> names = new TreeMap<>();
        pests.all().forEach(pest -> names.put(pest.code(), frame.pestName(pest)));
        return names;
    }

    private static Map<String, String> stageNames(Frame frame, Pests pests) {
        Map<String, String> names = new TreeMap<>();
        pests.all().stream()
                .map(Pest::lifeStages)
                .flatMap(stages -> stages.stream().map(LifeStage::code))
                .forEach(stage -> names.put(stage, shortName(frame, stage)));
        return names;
    }

    /** Keys have little room. */
    private static String shortName(Frame frame, String stage) {
        String key = "tally.stage." + stage;
        return frame.words().has(key) ? frame.say(key) : frame.stageName(stage);
    }
}
