package jarwise.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Makes the frame of a page from a request: which site, which language, who, when. */
public final class Frames {

    /** Cookie that holds who is at this screen. */
    public static final String PERSON_COOKIE = "jarwise-person";

    /** Cookie that holds the language of this screen. */
    public static final String LANGUAGE_COOKIE = "jarwise-language";

    private final Supplier<List<Nursery>> nurseries;
    private final InstantSource clock;
    private final Frame.Look look;

    Frames(Supplier<List<Nursery>> nurseries, InstantSource clock, Assets assets) {
        this.nurseries = nurseries;
        this.clock = clock;
        this.look =
                new Frame.Look(
                        assets.address("all.css"),
                        assets.address("js/main.js"),
                        assets.address("icons/filter.svg"),
                        assets.importMap());
    }

    /** {@return the frame of a page that belongs to the site named in the address} */
    public Frame ofSite(Context http, String current) {
        String slug = http.pathParam("nursery");
        List<Nursery> all = nurseries.get();
        Nursery nursery =
                all.stream()
                        .filter(site -> site.slug().equals(slug))
                        .findAny()
                        .orElseThrow(NotFoundResponse::new);
        return frame(http, current, Optional.of(nursery), all);
    }

    /** {@return the frame of a page that is about no site, or about the only one} */
    public Frame ofProgram(Context http, String current) {
        List<Nursery> all = nurseries.get();
        return frame(http, current, all.stream().findFirst(), all);
    }

    private Frame frame(
            Context http, String current, Optional<Nursery> nursery, List<Nursery> all) {
        ZoneId zone = nursery.map(Nursery::zone).orElse(ZoneOffset.UTC);
        return new Frame(
                Words.of(languageOf(http, nursery)),
                nursery,
                all,
                current,
                Optional.ofNullable(http.cookie(PERSON_COOKIE)).orElse(""),
                Guard.tokenOf(http),
                clock.instant().atZone(zone),
                look);
    }

    private static Language languageOf(Context http, Optional<Nursery> nursery) {
        return Optional.ofNullable(http.cookie(LANGUAGE_COOKIE))
                .flatMap(Language::of)
                .or(() -> nursery.flatMap(site -> Language.of(site.language())))
                .orElse(Language.ENGLISH);
    }
}
