package jarwise.cli.pattern;

import jarwise.cli.print.Answer;
import jarwise.cli.print.Figures;
import jarwise.stats.calibration.MethodRatio;
import jarwise.usecase.pattern.CalibratedGroup;
import jarwise.usecase.pattern.CalibrationOptions;
import jarwise.usecase.pattern.CompareMethods;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * Two methods against each other as they are printed.
 *
 * @param compared what was found
 * @param options which methods
 */
record CalibrateAnswer(CompareMethods compared, CalibrationOptions options) {

    Answer answer() {
        JsonObject json =
                new JsonObject()
                        .put("confidenceLevel", options.confidenceLevel())
                        .putTexts("methods", List.of(options.first(), options.second()))
                        .putObjects(
                                "groups", compared.groups().stream().map(this::object).toList());
        StringBuilder text = new StringBuilder();
        compared.groups().forEach(group -> text.append(sentence(group)));
        return new Answer(json, List.of(), text.toString(), warnings());
    }

    private JsonObject object(CalibratedGroup group) {
        JsonObject object =
                new JsonObject()
                        .put("group", group.group())
                        .put("ratio", of(group, MethodRatio::ratio))
                        .put("lower", of(group, MethodRatio::lower))
                        .put("upper", of(group, MethodRatio::upper))
                        .put("pairs", group.ratio().map(MethodRatio::pairs).orElse(0))
                        .put("k", of(group, MethodRatio::k));
        if (options.threshold().isPresent()) {
            object.put("thresholdCount", group.thresholdCount());
        }
        return object.put("equivalentSamples", group.equivalentSamples());
    }

    private static OptionalDouble of(
            CalibratedGroup group, Function<MethodRatio, OptionalDouble> figure) {
        Optional<OptionalDouble> value = group.ratio().map(figure);
        return value.orElse(OptionalDouble.empty());
    }

    private static String name(CalibratedGroup group) {
        List<String> parts = new ArrayList<>();
        group.group().forEach((column, value) -> parts.add(column + " " + value));
        return String.join(", ", parts);
    }

    private String sentence(CalibratedGroup group) {
        String name = name(group).isEmpty() ? "" : name(group) + ": ";
        if (group.ratio().isEmpty()) {
            return name + "no bench and day has both methods with a find.\n";
        }
        String ratio =
                "%s%s finds %s of what %s finds, between %s and %s (%d pairs)."
                        .formatted(
                                name,
                                options.first(),
                                Figures.of(of(group, MethodRatio::ratio)),
                                options.second(),
                                Figures.of(of(group, MethodRatio::lower)),
                                Figures.of(of(group, MethodRatio::upper)),
                                group.ratio().get().pairs());
        String effort =
                group.equivalentSamples().isPresent()
                        ? " %s of %s tell as much as %s of %s."
                                .formatted(
                                        Figures.of(
                                                Math.ceil(group.equivalentSamples().getAsDouble())),
                                        options.first(),
                                        Figures.of(options.samples()),
                                        options.second())
                        : " No number of %s gets there.".formatted(options.first());
        return ratio + effort + "\n";
    }

    private List<String> warnings() {
        Sentences sentences = new Sentences(compared.groups().size()).addNotes(compared.notes());
        for (CalibratedGroup group : compared.groups()) {
            String name = name(group);
            if (group.ratio().isEmpty()) {
                sentences.add(name, "No ratio: no bench and day has both methods with a find.");
                continue;
            }
            if (group.ratio().get().ratio().isEmpty()) {
                sentences.add(name, "No ratio: %s found nothing.".formatted(options.second()));
            }
            if (group.ratio().get().k().isEmpty()) {
                sentences.add(name, "No k: the counts vary no more than by chance.");
            }
            if (group.samplesPerMethod() < 3) {
                sentences.add(
                        name,
                        "Fewer than 3 samples of a method on a bench and day: k comes out too"
                                + " large, and the limits too short.");
            }
        }
        return sentences.all();
    }
}
