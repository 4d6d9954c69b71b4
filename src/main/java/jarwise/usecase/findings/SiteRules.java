package jarwise.usecase.findings;

import jarwise.base.InvalidInput;
import jarwise.decision.ActionThreshold;
import jarwise.decision.Finding.Subject;
import jarwise.decision.VerdictLimits;
import jarwise.pest.LifeStage;
import jarwise.pest.Pests;
import jarwise.sample.DetectionValue;
import jarwise.sample.ProtocolVersion;
import jarwise.site.Setting;
import jarwise.stats.estimate.DetectionShare;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * Everything a site has chosen that its findings depend on; each list with what takes over later
 * first.
 *
 * @param pests what can be counted
 * @param thresholds lines
 * @param shares adopted extraction and sensitivity
 * @param protocols how samples are kept
 * @param settings the rest
 */
public record SiteRules(
        Pests pests,
        List<ActionThreshold> thresholds,
        List<DetectionValue> shares,
        List<ProtocolVersion> protocols,
        List<Setting> settings) {

    /** Setting: largest chance of being above the line that still counts as below it. */
    public static final String LIMIT_BELOW = "verdict-limit-below";

    /** Setting: smallest chance of being above the line that counts as above it. */
    public static final String LIMIT_ABOVE = "verdict-limit-above";

    /** Setting: minutes that one jar costs, cutting to reading, as this site has measured them. */
    public static final String MINUTES_PER_JAR = "minutes-per-jar";

    /** Setting: minutes to cut one jar. */
    public static final String CUT_MINUTES = "cut-minutes";

    /** Setting: minutes to wash one jar. */
    public static final String WASH_MINUTES = "wash-minutes";

    /** Setting: filters that the freezer holds. */
    public static final String FREEZER_PLACES = "freezer-places";

    /** Setting: days of the week on which somebody works, MO to SU with commas. */
    public static final String WORKING_DAYS = "working-days";

    /** Setting: efficacy that a treatment should have. */
    public static final String TARGET_EFFICACY = "target-efficacy";

    /** Setting: benches and crop lots whose plants are not to be cut, with commas. */
    public static final String NOT_TO_CUT = "not-to-cut";

    /** Where a site has not measured its own: common practice, no source. */
    private static final double USUAL_MINUTES_PER_JAR = 7;

    /** {@return the line for these animals on a day} */
    public Optional<ActionThreshold> lineOn(Subject subject, LocalDate day) {
        return thresholds.stream()
                .filter(line -> line.pest().equals(subject.pest()))
                .filter(line -> line.stageGroup().equals(subject.stageGroup()))
                .filter(line -> !line.setOn().isAfter(day))
                .findFirst();
    }

    /** {@return the animals for which there is a line on a day, in the order of the pest list} */
    public List<Subject> subjectsWithLine(LocalDate day) {
        LinkedHashSet<Subject> subjects = new LinkedHashSet<>();
        pests.all()
                .forEach(
                        pest ->
                                pest.stageGroups().stream()
                                        .map(group -> new Subject(pest.code(), group))
                                        .filter(subject -> lineOn(subject, day).isPresent())
                                        .forEach(subjects::add));
        return List.copyOf(subjects);
    }

    /** {@return codes of the stages that are added up} */
    public List<String> stagesOf(Subject subject) {
        List<String> stages =
                pests
                        .find(subject.pest())
                        .map(pest -> pest.stagesIn(subject.stageGroup()))
                        .orElse(List.of())
                        .stream()
                        .map(LifeStage::code)
                        .toList();
        if (stages.isEmpty()) {
            throw new InvalidInput(
                    ("Stages are '%s' of '%s'; there are none by that name."
                                    + " Maybe the pest list was changed.")
                            .formatted(subject.stageGroup(), subject.pest()));
        }
        return stages;
    }

    /** {@return what a fluid brings off, or a reader sees, as adopted on a day} */
    public Optional<DetectionShare> shareOn(
            DetectionValue.Kind kind, String whose, Subject subject, LocalDate day) {
        return shares.stream()
                .filter(share -> share.kind() == kind && share.subject().equals(whose))
                .filter(share -> share.pest().equals(subject.pest()))
                .filter(share -> share.stageGroup().equals(subject.stageGroup()))
                .filter(share -> share.holdsOn(day))
                .findFirst()
                .map(SiteRules::share);
    }

    private static DetectionShare share(DetectionValue adopted) {
        return adopted.value().isPresent()
                ? DetectionShare.known(adopted.value().getAsDouble())
                : DetectionShare.measured(
                        Math.round(adopted.found().orElseThrow()),
                        Math.round(adopted.known().orElseThrow()));
    }

    /** {@return the protocol that holds on a day} */
    public ProtocolVersion protocolOn(LocalDate day) {
        return protocols.stream()
                .filter(version -> !version.holdsFrom().isAfter(day))
                .findFirst()
                .orElseGet(() -> ProtocolVersion.standard(day));
    }

    /** {@return how sure a verdict must be on a day} */
    public VerdictLimits limitsOn(LocalDate day) {
        return new VerdictLimits(
                numberOn(LIMIT_BELOW, day).orElse(VerdictLimits.STANDARD.below()),
                numberOn(LIMIT_ABOVE, day).orElse(VerdictLimits.STANDARD.above()));
    }

    /** {@return minutes that one jar costs} */
    public double minutesPerJarOn(LocalDate day) {
        return numberOn(MINUTES_PER_JAR, day).orElse(USUAL_MINUTES_PER_JAR);
    }

    /** {@return a number that the site has chosen} */
    public Optional<Double> numberOn(String name, LocalDate day) {
        return textOn(name, day).map(value -> number(name, value));
    }

    /** {@return a choice of the site as it was typed} */
    public Optional<String> textOn(String name, LocalDate day) {
        return settings.stream()
                .filter(setting -> setting.name().equals(name))
                .filter(setting -> !setting.holdsFrom().isAfter(day))
                .findFirst()
                .map(Setting::value);
    }

    private static double number(String name, String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new InvalidInput("%s is '%s'; it must be a number.".formatted(name, text));
        }
    }
}
