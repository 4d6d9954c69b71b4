package jarwise.web.settings;

import jarwise.decision.ActionThreshold;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.render.words.Figures;
import jarwise.sample.DetectionValue;
import jarwise.sample.Fluid;
import jarwise.sample.ProtocolVersion;
import jarwise.site.Occupancy;
import jarwise.site.Setting;
import jarwise.usecase.form.Fields;
import jarwise.usecase.settings.NamedChoice;
import jarwise.usecase.settings.ShowSettings;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What the settings page shows.
 *
 * @param frame the reader's language and clocks
 * @param chosen everything the site has chosen
 * @param form the form that was refused, if one was
 * @param stages stages a new pest may have
 */
public record SettingsView(
        Frame frame, ShowSettings.Chosen chosen, Form form, List<LifeStage> stages) {

    /** Zones named after a place; the others are short hands and offsets. */
    private static final Pattern CITIES =
            Pattern.compile("(Africa|America|Asia|Atlantic|Australia|Europe|Indian|Pacific)/.*");

    /** A pest and stages of it, to choose from. */
    public record Subject(String value, String name) {}

    /** {@return how the site decides, as a sentence} */
    public String answer() {
        long lines =
                chosen.lines().stream()
                        .filter(line -> !line.setOn().isAfter(today()))
                        .map(line -> line.pest() + "/" + line.stageGroup())
                        .distinct()
                        .count();
        return frame.say("settings.answer", lines);
    }

    /** {@return the day of the page} */
    public LocalDate today() {
        return frame.now().toLocalDate();
    }

    /** {@return the site's time zone} */
    public String zone() {
        return frame.nursery().map(site -> site.zone().getId()).orElse("");
    }

    /** {@return the site's language} */
    public String language() {
        return frame.nursery().map(site -> site.language()).orElse("en");
    }

    /** {@return the site's name} */
    public String name() {
        return frame.nursery().map(site -> site.name()).orElse("");
    }

    /** {@return time zones to offer} */
    public List<String> zones() {
        return ZoneId.getAvailableZoneIds().stream()
                .filter(zone -> CITIES.matcher(zone).matches())
                .sorted()
                .toList();
    }

    /** {@return every pest with its groups of stages} */
    public List<Subject> subjects() {
        List<Subject> subjects = new ArrayList<>();
        for (Pest pest : chosen.pests().all()) {
            for (String group : pest.stageGroups()) {
                subjects.add(
                        new Subject(
                                pest.code() + "/" + group,
                                frame.pestName(pest) + ", " + frame.groupName(group)));
            }
        }
        return subjects;
    }

    /** {@return a pest and stages in words} */
    public String subject(String pest, String group) {
        String name = chosen.pests().find(pest).map(frame::pestName).orElse(pest);
        return name + ", " + frame.groupName(group);
    }

    /** {@return whether a later line holds in its place today} */
    public boolean isReplaced(ActionThreshold line) {
        Optional<ActionThreshold> now =
                chosen.lines().stream()
                        .filter(other -> other.pest().equals(line.pest()))
                        .filter(other -> other.stageGroup().equals(line.stageGroup()))
                        .filter(other -> !other.setOn().isAfter(today()))
                        .findFirst();
        return !line.setOn().isAfter(today()) && now.filter(line::equals).isEmpty();
    }

    /** {@return a density in words of numbers} */
    public String density(double value) {
        return new Figures(frame.words()).exactly(value);
    }

    /** {@return every named choice} */
    public List<NamedChoice> choices() {
        return Arrays.asList(NamedChoice.values());
    }

    /** {@return the value of a named choice that holds today} */
    public Optional<Setting> now(NamedChoice choice) {
        return all(choice).stream()
                .filter(setting -> !setting.holdsFrom().isAfter(today()))
                .findFirst();
    }

    /** {@return every value a named choice ever had} */
    public List<Setting> all(NamedChoice choice) {
        return chosen.settings().stream()
                .filter(setting -> setting.name().equals(choice.code()))
                .toList();
    }

    /** {@return the protocols, the usual one where the site has none} */
    public List<ProtocolVersion> protocols() {
        return chosen.protocols().isEmpty() ? List.of(chosen.protocolNow()) : chosen.protocols();
    }

    /** {@return hours as a number people write} */
    public String hours(double hours) {
        return new Figures(frame.words()).plain(hours);
    }

    /** {@return whose share it is, in words} */
    public String whose(DetectionValue share) {
        return share.kind() == DetectionValue.Kind.EXTRACTION
                ? frame.say("fluid." + share.subject())
                : share.subject();
    }

    /** {@return a share in words} */
    public String share(DetectionValue share) {
        Figures figures = new Figures(frame.words());
        return share.value().isPresent()
                ? figures.percent(share.value().getAsDouble())
                : frame.say(
                        "settings.share.found",
                        figures.whole(Math.round(share.found().orElse(0))),
                        figures.whole(Math.round(share.known().orElse(0))));
    }

    /** {@return fluids and readers a share can be of} */
    public List<String> sharers() {
        List<String> sharers = new ArrayList<>();
        Arrays.stream(Fluid.values()).map(Fields::wordOf).forEach(sharers::add);
        chosen.readers().forEach(reader -> sharers.add(reader.code()));
        return sharers;
    }

    /** {@return stages of a pest in words} */
    public String stagesOf(Pest pest) {
        return String.join(
                ", ",
                pest.lifeStages().stream().map(stage -> frame.stageName(stage.code())).toList());
    }

    /** {@return what stands somewhere now first, then what stood} */
    public List<Occupancy> stands() {
        List<Occupancy> stands = new ArrayList<>(chosen.places().occupancies());
        stands.sort(
                java.util.Comparator.comparing((Occupancy stand) -> stand.to().isPresent())
                        .thenComparing(Occupancy::bench));
        return stands;
    }

    /** {@return a number that may be missing} */
    public String number(java.util.OptionalDouble value) {
        return value.isPresent() ? new Figures(frame.words()).plain(value.getAsDouble()) : "";
    }
}
