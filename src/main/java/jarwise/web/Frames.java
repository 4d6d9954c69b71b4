package jarwise.web;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Device;
import jarwise.site.Nursery;
import jarwise.web.lan.Admission;
import jarwise.web.lan.Door;
import java.time.InstantSource;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
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
        List<Nursery> all = open(http);
        Nursery nursery =
                all.stream()
                        .filter(site -> site.slug().equals(slug))
                        .findAny()
                        .orElseThrow(NotFoundResponse::new);
        return frame(http, current, Optional.of(nursery), all);
    }

    /** {@return the frame of a page that is about no site, or about the only one} */
    public Frame ofProgram(Context http, String current) {
        List<Nursery> all = open(http);
        return frame(http, current, all.stream().findFirst(), all);
    }

    private List<Nursery> open(Context http) {
        return nurseries.get().stream()
                .filter(site -> Admission.maySee(http, site.slug()))
                .toList();
    }

    private Frame frame(
            Context http, String current, Optional<Nursery> nursery, List<Nursery> all) {
        ZoneId zone = nursery.map(Nursery::zone).orElse(ZoneOffset.UTC);
        return new Frame(
                Words.of(languageOf(http, nursery)),
                nursery,
                all,
                current,
                personOf(http),
                Guard.tokenOf(http),
                clock.instant().atZone(zone),
                look,
                Door.of(http) == Door.PLAIN);
    }

    /** Who said so at this screen, or for whom the device was let in. */
    private static String personOf(Context http) {
        return Optional.ofNullable(http.cookie(PERSON_COOKIE))
                .or(() -> Admission.deviceOf(http).map(Device::person))
                .orElse("");
    }

    private static Language languageOf(Context http, Optional<Nursery> nursery) {
        return Optional.ofNullable(http.cookie(LANGUAGE_COOKIE))
                .flatMap(Language::of)
                .or(() -> nursery.flatMap(site -> Language.of(site.language())))
                .or(() -> acceptedBy(http))
                .orElse(Language.ENGLISH);
    }

    /** A stranger's page knows no site: the browser says which language it would like. */
    private static Optional<Language> acceptedBy(Context http) {
        String accepted = Optional.ofNullable(http.header("Accept-Language")).orElse("");
        return Arrays.stream(accepted.split(","))
                .map(part -> part.strip().replaceFirst("[-;].*", ""))
                .flatMap(code -> Language.of(code).stream())
                .findFirst();
    }
}
