package jarwise.web;

import jarwise.pest.Pest;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What every page needs around its own content.
 *
 * @param words texts in the visitor's language
 * @param nursery the site the page is about
 * @param nurseries all sites, for the chooser
 * @param current key of the page in the menu
 * @param person role code of who is at this screen; empty while nobody said
 * @param formToken goes into every form
 * @param now the moment the page stands for, in the site's time zone
 * @param look addresses of what the page loads
 * @param plain whether it goes over plain http to another device
 */
public record Frame(
        Words words,
        Optional<Nursery> nursery,
        List<Nursery> nurseries,
        String current,
        String person,
        String formToken,
        ZonedDateTime now,
        Look look,
        boolean plain) {

    /** Menu entries in order; an empty text is a divider. */
    public static final List<String> MENU =
            List.of(
                    "today",
                    "map",
                    "rounds",
                    "microscope",
                    "samples",
                    "import",
                    "",
                    "findings",
                    "quality",
                    "report",
                    "",
                    "methods",
                    "settings");

    /**
     * Addresses of what a page loads.
     *
     * @param style the stylesheet
     * @param script the first module
     * @param icon the filter as the browser's icon
     * @param importMap names of modules to addresses, as JSON
     */
    public record Look(String style, String script, String icon, String importMap) {

        /** {@return tells one version of the program in the browser from another} */
        public String program() {
            CRC32 sum = new CRC32();
            sum.update((style + script + importMap).getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().toHexDigits((int) sum.getValue());
        }
    }

    /** {@return what sentences about a site need where there is no page around them} */
    public static Frame withoutPage(Words words, Nursery nursery, ZonedDateTime now) {
        Look none = new Look("", "", "", "");
        return new Frame(
                words, Optional.of(nursery), List.of(nursery), "", "", "", now, none, false);
    }

    /** {@return the text under a key} */
    public String say(String key, Object... arguments) {
        return words.say(key, arguments);
    }

    /** {@return a moment as this site's clocks showed it, such as 7 May 2026, 07:40} */
    public String moment(Instant at) {
        ZonedDateTime local = at.atZone(now.getZone());
        return day(local.toLocalDate()) + ", " + new Days(words).time(local.toLocalTime());
    }

    /** {@return a day as people write it} */
    public String day(LocalDate day) {
        return new Days(words).dated(day);
    }

    /** {@return what a pest is called; the site's own name where no language has one} */
    public String pestName(Pest pest) {
        String key = "pest." + pest.code().toLowerCase(Locale.ROOT);
        return words.has(key) ? words.say(key) : pest.commonName();
    }

    /** {@return what a life stage is called} */
    public String stageName(String code) {
        String key = "stage." + code;
        return words.has(key) ? words.say(key) : code;
    }

    /** {@return what some stages that are added up are called} */
    public String groupName(String group) {
        String key = "stage-group." + group;
        return words.has(key) ? words.say(key) : stageName(group);
    }

    /** {@return the address of a page of this site} */
    public String to(String page) {
        return nursery.map(site -> "/" + site.slug() + "/" + page).orElse("/");
    }
}
