package jarwise.cli.laboratory;

import jarwise.base.Message;
import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.cli.print.TextTable;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.stats.agreement.AgreementScale;
import jarwise.stats.agreement.Concordance;
import jarwise.stats.agreement.CountingBand;
import jarwise.stats.agreement.LimitsOfAgreement;
import jarwise.usecase.laboratory.ReadPairs;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Agreement of two counts as it is printed.
 *
 * @param read the pairs and what to know of the sheet
 * @param scale on which they were compared
 * @param confidenceLevel of the intervals
 * @param limits bias and limits
 * @param concordance in one number; empty where one of the counts never varies
 * @param band what chance alone would do, where that can be said
 */
record AgreementAnswer(
        ReadPairs read,
        AgreementScale scale,
        double confidenceLevel,
        LimitsOfAgreement limits,
        Optional<Concordance> concordance,
        Optional<CountingBand> band) {

    static AgreementAnswer of(
            ReadPairs read, AgreementScale scale, double level, Optional<CountingBand> band) {
        return new AgreementAnswer(
                read,
                scale,
                level,
                LimitsOfAgreement.of(read.pairs(), scale, level),
                Concordance.of(read.pairs(), scale, level),
                band);
    }

    Answer answer() {
        JsonObject json =
                new JsonObject()
                        .put("confidenceLevel", confidenceLevel)
                        .put("scale", scale.name().toLowerCase(Locale.ROOT))
                        .put("sampleSize", limits.sampleSize())
                        .put("bias", limits.bias())
                        .put("standardDeviation", limits.standardDeviation())
                        .put("lowerLimit", limits.lowerLimit())
                        .put("upperLimit", limits.upperLimit())
                        .put("biasInterval", interval(limits.bias(), limits.biasReach()))
                        .put(
                                "lowerLimitInterval",
                                interval(limits.lowerLimit(), limits.limitReach()))
                        .put(
                                "upperLimitInterval",
                                interval(limits.upperLimit(), limits.limitReach()));
        putConcordance(json);
        band.ifPresent(b -> json.put("countingBand", object(b)));
        return new Answer(json, List.of(), text(), warnings());
    }

    private static JsonObject interval(double centre, double reach) {
        return new JsonObject().put("lower", centre - reach).put("upper", centre + reach);
    }

    private void putConcordance(JsonObject json) {
        json.put("concordance", value(concordance.map(Concordance::estimate)))
                .put("concordanceDivisor", Concordance.DIVISOR)
                .put(
                        "concordanceInterval",
                        new JsonObject()
                                .put("lower", limit(concordance.map(Concordance::lower)))
                                .put("upper", limit(concordance.map(Concordance::upper))))
                .put("correlation", value(concordance.map(Concordance::correlation)))
                .put("biasCorrection", value(concordance.map(Concordance::biasCorrection)))
                .put("locationShift", value(concordance.map(Concordance::locationShift)))
                .put("scaleShift", value(concordance.map(Concordance::scaleShift)));
    }

    private static OptionalDouble value(Optional<Double> number) {
        return number.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static OptionalDouble limit(Optional<OptionalDouble> number) {
        return number.orElse(OptionalDouble.empty());
    }

    private JsonObject object(CountingBand chance) {
        double there = onFilter(chance);
        return new JsonObject()
                .put("sameFilter", chance.sameFilter())
                .put("firstSensitivity", chance.firstSensitivity())
                .put("secondSensitivity", chance.secondSensitivity())
                .put("onFilter", there)
                .put("standardDeviation", chance.standardDeviation(there, scale))
                .put("lower", chance.lower(there, scale))
                .put("upper", chance.upper(there, scale))
                .put("pairsOutside", chance.outside(read.pairs(), scale));
    }

    /** The mean over the pairs, at which the band is shown. */
    private double onFilter(CountingBand chance) {
        return read.pairs().stream().mapToDouble(chance::onFilter).average().orElse(0);
    }

    private String text() {
        TextTable table =
                new TextTable(0, List.of("pairs", "bias", "SD", "lower", "upper", "concordance"));
        table.add(
                List.of(
                        String.valueOf(limits.sampleSize()),
                        Figures.of(limits.bias()),
                        Figures.of(limits.standardDeviation()),
                        Figures.of(limits.lowerLimit()),
                        Figures.of(limits.upperLimit()),
                        Figures.of(value(concordance.map(Concordance::estimate)))));
        return table.text() + "\n" + sentence() + band.map(this::sentence).orElse("") + "\n";
    }

    private String sentence() {
        return ("First minus second is %s on average%s, and 95 of 100 differences lie between"
                        + " %s and %s.")
                .formatted(
                        Figures.of(limits.bias()),
                        scale == AgreementScale.SQRT ? " (square roots)" : "",
                        Figures.of(limits.lowerLimit()),
                        Figures.of(limits.upperLimit()));
    }

    private String sentence(CountingBand chance) {
        double there = onFilter(chance);
        return ("\nChance alone would keep 95 of 100 between %s and %s; outside their own band are"
                        + " %d of %d pairs.")
                .formatted(
                        Figures.of(chance.lower(there, scale)),
                        Figures.of(chance.upper(there, scale)),
                        chance.outside(read.pairs(), scale),
                        limits.sampleSize());
    }

    private List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        for (Message note : read.notes()) {
            warnings.add(Words.of(Language.ENGLISH).say(note));
        }
        if (concordance.isEmpty()) {
            warnings.add("One of the two counts never varies, so there is no concordance.");
        } else if (concordance.get().lower().isEmpty()) {
            warnings.add("The concordance has no limits: too few pairs, or all of them agree.");
        }
        if (band.isEmpty()) {
            warnings.add(
                    "How far chance alone brings two readers of one filter apart depends on what"
                            + " they miss. Maybe --sensitivity 0.9,0.8, or --two-filters.");
        }
        boolean few =
                read.pairs().stream().allMatch(pair -> Math.max(pair.first(), pair.second()) < 5);
        if (scale == AgreementScale.SQRT && few) {
            warnings.add("All counts are below 5, where square roots are rough.");
        }
        return warnings;
    }
}
