package jarwise.wire.findings;

import de.siegmar.fastcsv.writer.CsvWriter;
import jarwise.decision.Evidence;
import jarwise.decision.Finding;
import jarwise.decision.Judgement;
import jarwise.stats.estimate.DensityEstimate;
import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Findings as a sheet: one row a stand and round, full digits, decimal points. What is not known is
 * a blank, never a zero.
 */
public final class FindingsCsv {

    private static final List<String> HEAD =
            List.of(
                    "bench",
                    "variety",
                    "date",
                    "pest",
                    "stage",
                    "sample_size",
                    "sampling_units",
                    "individuals",
                    "apparent_density",
                    "estimate",
                    "lower",
                    "upper",
                    "confidence_level",
                    "action_threshold",
                    "probability_above_threshold",
                    "verdict",
                    "not_read",
                    "left_out_targeted",
                    "left_out_plain_water",
                    "left_out_lost");

    private FindingsCsv() {}

    /** {@return the sheet, UTF-8 with a header} */
    public static String write(List<Finding> findings) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            csv.writeRecord(HEAD);
            findings.forEach(finding -> csv.writeRecord(row(finding)));
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return text.toString();
    }

    private static List<String> row(Finding finding) {
        Evidence evidence = finding.evidence();
        Optional<DensityEstimate> known = finding.estimated().map(Finding.Estimated::density);
        return List.of(
                harmless(finding.stand().bench().orElse("")),
                harmless(finding.stand().variety().orElse("")),
                finding.day().toString(),
                harmless(finding.subject().pest()),
                harmless(finding.subject().stageGroup()),
                String.valueOf(evidence.samples()),
                known.map(k -> number(evidence.samplingUnits())).orElse(""),
                known.map(k -> String.valueOf(evidence.individuals())).orElse(""),
                known.map(k -> number(evidence.countedDensity())).orElse(""),
                known.map(k -> number(k.estimate())).orElse(""),
                known.map(k -> number(k.lower())).orElse(""),
                known.map(k -> number(k.upper())).orElse(""),
                known.map(k -> number(k.confidenceLevel())).orElse(""),
                judged(finding, judgement -> number(judgement.line().density())),
                judged(finding, judgement -> number(judgement.probabilityAbove())),
                judged(finding, judgement -> judgement.verdict().text()),
                String.valueOf(evidence.notRead()),
                leftOut(evidence, Evidence.LeftOut.TARGETED),
                leftOut(evidence, Evidence.LeftOut.PLAIN_WATER),
                leftOut(evidence, Evidence.LeftOut.LOST));
    }

    private static String judged(Finding finding, Function<Judgement, String> value) {
        return finding.judgement().map(value).orElse("");
    }

    private static String leftOut(Evidence evidence, Evidence.LeftOut reason) {
        return String.valueOf(evidence.leftOut().getOrDefault(reason, 0));
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(value);
    }

    /** A spreadsheet must not take what somebody typed for a formula. */
    static String harmless(String text) {
        return !text.isEmpty() && "=+-@\t\r".indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
