package jarwise.usecase.demo;

import jarwise.decision.ActionThreshold;
import jarwise.sample.DetectionValue;
import jarwise.sample.DetectionValue.Kind;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.Reader;
import jarwise.site.Setting;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the demo nursery has chosen for itself, dated, with reason and source; all invented. */
public final class DemoChoices {

    private static final LocalDate FROM = LocalDate.of(2026, 3, 2);
    private static final int FILTER_CELLS = 40;
    private static final String MEASURED =
            "Site's own spikes and seeded filters, February 2026; adopted by ES-1 because eight"
                    + " sittings agreed (invented)";

    private DemoChoices() {}

    /** {@return everyone who works here, by role code} */
    public static List<Reader> people() {
        return Cast.people();
    }

    /** {@return the lines at which the site means to act} */
    public static List<ActionThreshold> thresholds() {
        return List.of(
                line(Stage.LARVA1, .1, "Larvae on cuttings scar the first flowers."),
                line(Stage.BROAD_MITE, .5, "Tips curl before mites are seen."),
                line(Stage.SPIDER_MITE, .5, "Releases hold them below this."),
                line(Stage.APHID_NYMPH, 1, "Honeydew shows above this."));
    }

    private static ActionThreshold line(Stage stage, double density, String reason) {
        return new ActionThreshold(
                stage.pest(), stage.group(), density, FROM, Cast.HEAD_GROWER, reason, "site's own");
    }

    /** {@return how samples are taken, kept and read here} */
    public static ProtocolVersion protocol() {
        ProtocolVersion usual = ProtocolVersion.standard(FROM);
        return new ProtocolVersion(
                FROM,
                usual.freezeHours(),
                usual.readWithinHours(),
                Stand.GROWING_POINTS,
                usual.shakeSecondsLeast(),
                usual.shakeSecondsMost(),
                FILTER_CELLS,
                "0.1 % soap in P1 and H2, 70 % alcohol in H3; two rinses of jar and lid.");
    }

    /** {@return other settings} */
    public static List<Setting> settings() {
        return List.of(
                setting("target-efficacy", "0.6", "Beneficials do the rest."),
                setting("working-days", "MO,TU,WE,TH,FR", "Nobody reads at the weekend."),
                setting(
                        "plant-health-authority",
                        "Regional plant-health office (invented)",
                        "Whom to call when a regulated pest is suspected."));
    }

    private static Setting setting(String name, String value, String reason) {
        return new Setting(name, value, FROM, Cast.HEAD_GROWER, reason);
    }

    /** {@return what a fluid brings off and what a reader sees, as found of known individuals} */
    public static List<DetectionValue> detection() {
        List<DetectionValue> values = new ArrayList<>();
        washed(values, "soap", Stage.LARVA1, 18, 31);
        washed(values, "soap", Stage.PUPAL, 14, 31);
        washed(values, "soap", Stage.ADULT, 22, 31);
        washed(values, "soap", Stage.BROAD_MITE, 17, 31);
        washed(values, "soap", Stage.BROAD_MITE_EGG, 5, 33);
        washed(values, "soap", Stage.CUCUMERIS, 10, 20);
        washed(values, "alcohol", Stage.LARVA1, 17, 30);
        washed(values, "alcohol", Stage.PUPAL, 13, 29);
        washed(values, "alcohol", Stage.ADULT, 21, 30);
        washed(values, "alcohol", Stage.ONION_THRIPS, 21, 30);
        washed(values, "alcohol", Stage.SPIDER_MITE, 22, 40);
        washed(values, "alcohol", Stage.SPIDER_MITE_EGG, 6, 40);
        washed(values, "alcohol", Stage.APHID_NYMPH, 24, 30);
        washed(values, "alcohol", Stage.PERSIMILIS, 10, 20);
        seen(values, Stage.LARVA1, 61, 67, 48, 67);
        seen(values, Stage.PUPAL, 17, 20, 14, 20);
        seen(values, Stage.ADULT, 65, 67, 63, 67);
        seen(values, Stage.ONION_THRIPS, 29, 30, 28, 30);
        seen(values, Stage.BROAD_MITE, 36, 40, 30, 40);
        seen(values, Stage.SPIDER_MITE, 36, 40, 30, 40);
        seen(values, Stage.APHID_NYMPH, 58, 60, 48, 50);
        seen(values, Stage.CUCUMERIS, 23, 25, 17, 20);
        return values;
    }

    private static void washed(
            List<DetectionValue> values, String fluid, Stage stage, int found, int known) {
        values.add(value(Kind.EXTRACTION, fluid, stage, found, known));
    }

    private static void seen(
            List<DetectionValue> values,
            Stage stage,
            int foundA,
            int knownA,
            int foundB,
            int knownB) {
        values.add(value(Kind.READER, Cast.READER_A, stage, foundA, knownA));
        values.add(value(Kind.READER, Cast.READER_B, stage, foundB, knownB));
    }

    private static DetectionValue value(
            Kind kind, String subject, Stage stage, int found, int known) {
        return new DetectionValue(
                kind,
                subject,
                stage.pest(),
                stage.group(),
                OptionalDouble.of(found),
                OptionalDouble.of(known),
                OptionalDouble.empty(),
                FROM,
                Optional.empty(),
                MEASURED);
    }
}
