package jarwise.render.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.OptionalDouble;

/**
 * Numbers as a grower reads them, in one language. Bounds are rounded outward: an upper limit is
 * never shown lower than it is, a lower one never higher, a certainty never greater, and never as
 * 100 % or 0 %.
 *
 * @param words the texts around the numbers
 */
public record Figures(Words words) {

    private static final String NO_BREAK = "\u00A0";

    /** {@return the figures of one language} */
    public static Figures of(Language language) {
        return new Figures(Words.of(language));
    }

    /** {@return the number as it is, up to six decimals, with the language's decimal sign} */
    public String plain(double value) {
        return written(
                BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros());
    }

    /** {@return an estimated density with the digits that mean something} */
    public String density(double value) {
        return padded(Rounding.nearest(value));
    }

    /** {@return a lower limit, rounded down} */
    public String lower(double value) {
        return padded(Rounding.down(value));
    }

    /** {@return an upper limit, rounded up} */
    public String upper(double value) {
        return padded(Rounding.up(value));
    }

    /** {@return an interval in figures: "0.31 (0.13 to 0.86)", "below 0.08", "not sampled"} */
    public String interval(Interval interval) {
        if (interval instanceof Interval.Found found) {
            return found(found);
        }
        if (interval instanceof Interval.NoneFound none) {
            return none.upper().isPresent()
                    ? below(none.upper().getAsDouble())
                    : words.say("figure.no-bound");
        }
        if (interval instanceof Interval.AtLeast atLeast) {
            return words.say("figure.at-least", trimmed(Rounding.down(atLeast.lower())));
        }
        return words.say(
                interval instanceof Interval.NotRead ? "figure.not-read" : "figure.not-sampled");
    }

    private String found(Interval.Found found) {
        String estimate = density(found.estimate());
        String lower = lower(found.lower());
        OptionalDouble upper = found.upper();
        return upper.isPresent()
                ? words.say("figure.interval", estimate, lower, upper(upper.getAsDouble()))
                : words.say("figure.interval.open", estimate, lower);
    }

    /** {@return only the limits: "0.13 to 0.86"} */
    public String range(double lower, double upper) {
        return words.say("figure.range", lower(lower), upper(upper));
    }

    /** {@return an upper bound after none was found: "below 0.08"} */
    public String below(double upper) {
        return words.say("figure.below", trimmed(Rounding.up(upper)));
    }

    /** {@return a density in words: "about 1 in 3", "about 1 on each"} */
    public String about(double density) {
        return words.say("figure.about", inWords(density));
    }

    /**
     * {@return a value without "about": "1 in 10", "2 on each"; figures where words would round}
     */
    public String exactly(double density) {
        double oneIn = 1 / density;
        if (density < 1 && Math.abs(oneIn - Math.rint(oneIn)) < 1e-9 * oneIn) {
            return oneIn(Math.round(oneIn));
        }
        return density < 1 ? plain(density) : words.say("figure.on-each", plain(density));
    }

    private String inWords(double density) {
        long n = Rounding.oneInNearest(density);
        return n >= 2
                ? oneIn(n)
                : words.say("figure.on-each", whole(Math.max(1, Math.round(density))));
    }

    /** {@return an upper bound in words: "fewer than 1 in 12", "fewer than 2 on each"} */
    public String fewerThan(double upper) {
        return words.say("figure.fewer", upTo(upper));
    }

    /** {@return the most that can be there, in words without a verb: "1 in 5"} */
    public String upTo(double upper) {
        long n = upper > 1 ? 1 : Rounding.oneInAtLeast(upper);
        return n >= 2
                ? oneIn(n)
                : words.say("figure.on-each", whole((long) Math.ceil(Math.max(1, upper))));
    }

    /** {@return a lower bound in words: "more than 1 in 12", "more than 2 on each"} */
    public String moreThan(double lower) {
        String least =
                lower >= 1
                        ? words.say("figure.on-each", whole((long) Math.floor(lower)))
                        : oneIn(Rounding.oneInAtMost(lower));
        return words.say("figure.more-than", least);
    }

    private String oneIn(long n) {
        return words.say("figure.one-in", whole(n));
    }

    /** {@return how sure a verdict is: rounded down, "95 % sure", at most "more than 99 % sure"} */
    public String sure(double probability) {
        if (probability > 0.99) {
            return words.say("figure.sure.more", "99");
        }
        return words.say("figure.sure", whole(floorPercent(probability)));
    }

    /** {@return a chance to be above the line: "81 % likely above", between 1 and 99 %} */
    public String likelyAbove(double probability) {
        long percent = Math.min(99, Math.max(1, Math.round(probability * 100)));
        return words.say("figure.likely-above", whole(percent));
    }

    private static long floorPercent(double share) {
        return (long) Math.floor(share * 100 + 1e-9);
    }

    /**
     * {@return a share in whole per cent: "85 %"; what is not quite all or none keeps its digits}
     */
    public String percent(double share) {
        return percentText(BigDecimal.valueOf(share).movePointRight(2), RoundingMode.HALF_UP)
                + NO_BREAK
                + "%";
    }

    /** {@return the limits of a share, rounded outward: "61 to 94 %"} */
    public String percentRange(double lower, double upper) {
        return words.say(
                "figure.percent.range",
                percentText(BigDecimal.valueOf(lower).movePointRight(2), RoundingMode.FLOOR),
                percentText(BigDecimal.valueOf(upper).movePointRight(2), RoundingMode.CEILING));
    }

    private String percentText(BigDecimal percent, RoundingMode mode) {
        BigDecimal hundred = new BigDecimal(100);
        for (int decimals = 0; decimals <= 6; decimals++) {
            BigDecimal rounded = percent.setScale(decimals, mode);
            boolean falseAll = rounded.compareTo(hundred) == 0 && percent.compareTo(hundred) != 0;
            boolean falseNone = rounded.signum() == 0 && percent.signum() != 0;
            if (!falseAll && !falseNone) {
                return written(rounded);
            }
        }
        return written(percent.setScale(0, mode));
    }

    /** {@return a stretch of time: "35 min", "2 h 20 min", "3 h"} */
    public String minutes(long minutes) {
        if (minutes < 1) {
            return words.say("figure.time.moment");
        }
        long hours = minutes / 60;
        long rest = minutes % 60;
        if (hours == 0) {
            return words.say("figure.time.minutes", whole(rest));
        }
        return rest == 0
                ? words.say("figure.time.hours", whole(hours))
                : words.say("figure.time.both", whole(hours), whole(rest));
    }

    /** {@return "no jars", "1 jar", "8 jars"} */
    public String jars(long count) {
        return counted("figure.jars", count);
    }

    /** {@return "none in 8 jars"} */
    public String noneIn(long jars) {
        return words.say("figure.none-in", jars(jars));
    }

    /**
     * A number with its noun, from a text that chooses by {0} and writes {1}.
     *
     * @param key text such as {@code {0,choice,0#no jars|1#1 jar|1<{1} jars}}
     * @param count how many
     * @return the text
     */
    public String counted(String key, long count) {
        return words.say(key, count, whole(count));
    }

    /** {@return a whole number with the language's grouping} */
    public String whole(long value) {
        return written(BigDecimal.valueOf(value));
    }

    /** Keeps the second decimal below 1, so that 0.40 stands under 0.31. */
    private String padded(BigDecimal value) {
        BigDecimal size = value.abs();
        int least = size.compareTo(BigDecimal.ONE) < 0 && size.signum() > 0 ? 2 : 0;
        return written(value.setScale(Math.max(least, Math.max(0, value.scale()))));
    }

    private String trimmed(BigDecimal value) {
        return written(value.stripTrailingZeros());
    }

    private String written(BigDecimal value) {
        DecimalFormatSymbols symbols = new DecimalFormatSymbols(words.language().locale());
        symbols.setMinusSign('\u2212');
        // Narrow no-break space is missing in many fonts.
        if (symbols.getGroupingSeparator() != ',' && symbols.getGroupingSeparator() != '.') {
            symbols.setGroupingSeparator(NO_BREAK.charAt(0));
        }
        DecimalFormat format = new DecimalFormat("#,##0", symbols);
        format.setMinimumFractionDigits(Math.max(0, value.scale()));
        format.setMaximumFractionDigits(Math.max(0, value.scale()));
        format.setGroupingUsed(value.abs().compareTo(new BigDecimal(10000)) >= 0);
        return format.format(value);
    }
}
