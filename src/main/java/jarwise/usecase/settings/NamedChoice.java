package jarwise.usecase.settings;

import jarwise.base.Message;
import jarwise.site.floor.LengthUnit;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.form.Fields;
import jarwise.usecase.microscope.ReadingRules;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** Choices of a site that have a name and one value. */
public enum NamedChoice {
    LIMIT_BELOW(SiteRules.LIMIT_BELOW, 0, 0.5),
    LIMIT_ABOVE(SiteRules.LIMIT_ABOVE, 0.5, 0.9999),
    TARGET_EFFICACY(SiteRules.TARGET_EFFICACY, 0, 1),
    MINUTES_PER_JAR(SiteRules.MINUTES_PER_JAR, 0, 600),
    LENGTH_UNIT("length-unit", 0, 0),
    CUT_MINUTES(SiteRules.CUT_MINUTES, 0, 600),
    WASH_MINUTES(SiteRules.WASH_MINUTES, 0, 600),
    FREEZER_PLACES(SiteRules.FREEZER_PLACES, 0, 10_000),
    WORKING_DAYS(SiteRules.WORKING_DAYS, 0, 0),
    NOT_TO_CUT(SiteRules.NOT_TO_CUT, 0, 0),
    READING_PASSES(ReadingRules.PASSES, 1, ReadingRules.MOST_PASSES),
    FILTER_PRECISION(ReadingRules.PRECISION, 0, 1),
    FILTER_MINUTES(ReadingRules.MINUTES, 0, 600),
    AUTHORITY("plant-health-authority", 0, 0);

    private static final List<String> DAYS = List.of("MO", "TU", "WE", "TH", "FR", "SA", "SU");

    private static final List<String> UNITS =
            Arrays.stream(LengthUnit.values()).map(LengthUnit::symbol).toList();

    private final String code;
    private final double above;
    private final double most;

    NamedChoice(String code, double above, double most) {
        this.code = code;
        this.above = above;
        this.most = most;
    }

    /** {@return its name in the data} */
    public String code() {
        return code;
    }

    /** {@return whether something usual holds where the site has chosen nothing} */
    public boolean isUsual() {
        return this != TARGET_EFFICACY
                && this != AUTHORITY
                && this != FREEZER_PLACES
                && this != NOT_TO_CUT
                && !isWish();
    }

    /** A wish is taken back by 0. */
    private boolean isWish() {
        return this == FILTER_PRECISION || this == FILTER_MINUTES;
    }

    /** {@return the choice with this name} */
    public static Optional<NamedChoice> of(String code) {
        return Arrays.stream(values()).filter(choice -> choice.code.equals(code)).findAny();
    }

    /** Reads the value typed for this choice; a fault is noted beside the field. */
    String read(Fields fields) {
        String text = fields.needed("value");
        if (this == AUTHORITY || this == NOT_TO_CUT || text.isEmpty()) {
            return text;
        }
        if (this == WORKING_DAYS) {
            List<String> days = List.of(text.toUpperCase(java.util.Locale.ROOT).split("[\\s,]+"));
            if (!DAYS.containsAll(days)) {
                fields.fault("value", Message.of("settings.days.wrong", text));
            }
            return String.join(",", days);
        }
        if (this == LENGTH_UNIT) {
            if (!UNITS.contains(text)) {
                fields.fault("value", Message.of("settings.unit.wrong", text));
            }
            return text;
        }
        if (this == READING_PASSES) {
            OptionalLong passes = fields.whole("value", (long) above, (long) most);
            return passes.isPresent() ? String.valueOf(passes.getAsLong()) : "";
        }
        if (isWish() && text.equals("0")) {
            return text;
        }
        OptionalDouble number = fields.number("value", above, most);
        return number.isPresent() ? String.valueOf(number.getAsDouble()) : "";
    }
}
