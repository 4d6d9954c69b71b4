package jarwise.cli;

import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.tally.ImportBatch;
import jarwise.usecase.intake.ImportPlan;
import jarwise.usecase.intake.SampleDifference;
import jarwise.wire.json.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What an import did or would do, as it is printed.
 *
 * @param plan what was compared
 * @param batch the import; empty for a preview or if all was on record
 * @param preview whether nothing was to be written
 * @param placesAdded whether unknown places were added
 */
record ImportAnswer(
        ImportPlan plan, Optional<ImportBatch> batch, boolean preview, boolean placesAdded) {

    private static final Words WORDS = Words.of(Language.ENGLISH);
    private static final int SHOWN = 20;

    String print(boolean json) {
        return json ? json() : text();
    }

    static String takenBack(ImportBatch batch, boolean json) {
        return json
                ? new JsonObject().put("takenBack", batch.id()).text() + "\n"
                : WORDS.say("import.cli.taken-back", batch.fileName(), batch.id()) + "\n";
    }

    private String json() {
        ImportBatch.Counted counted = plan.counted();
        JsonObject object =
                new JsonObject()
                        .put("import", batch.map(ImportBatch::id).orElse(""))
                        .put("preview", preview)
                        .put("countsNew", counted.added())
                        .put("countsSame", counted.same())
                        .put("countsChanged", counted.changed())
                        .put("countsGone", plan.gone().size())
                        .put("samplesNew", plan.newSamples())
                        .putTexts("changes", changes())
                        .putTexts("warnings", notes());
        return object.text() + "\n";
    }

    private String text() {
        List<String> lines = new ArrayList<>();
        ImportBatch.Counted counted = plan.counted();
        lines.add(
                WORDS.say(
                        "import.summary",
                        counted.added(),
                        counted.same(),
                        counted.changed(),
                        plan.gone().size()));
        lines.add(WORDS.say("import.summary.samples", plan.newSamples()));
        lines.addAll(changes());
        lines.addAll(notes());
        if (preview) {
            lines.add(WORDS.say("import.cli.preview"));
        } else {
            lines.add(
                    batch.map(done -> WORDS.say("import.cli.done", done.id()))
                            .orElseGet(() -> WORDS.say("import.nothing-new")));
        }
        return String.join("\n", lines) + "\n";
    }

    private List<String> changes() {
        List<String> lines = new ArrayList<>();
        for (SampleDifference sample : plan.corrected()) {
            for (SampleDifference.CountDifference count : sample.counts()) {
                count.before()
                        .ifPresent(
                                before ->
                                        lines.add(
                                                "%s %s %s: %d → %d"
                                                        .formatted(
                                                                sample.sample(),
                                                                count.key().pest(),
                                                                count.key().lifeStage(),
                                                                before,
                                                                count.after())));
            }
            sample.steps().stream()
                    .flatMap(step -> step.changed().stream())
                    .forEach(
                            fact ->
                                    lines.add(
                                            "%s %s: %s → %s"
                                                    .formatted(
                                                            sample.sample(),
                                                            fact.fact(),
                                                            fact.before(),
                                                            fact.after())));
        }
        return lines.size() <= SHOWN ? lines : lines.subList(0, SHOWN);
    }

    private List<String> notes() {
        List<String> notes = new ArrayList<>();
        plan.notes().forEach(note -> notes.add(WORDS.say(note)));
        if (!plan.grownFrom().isEmpty()) {
            notes.add(WORDS.say("import.grown-from", plan.grownFrom()));
        }
        if (plan.places().isAny() && !placesAdded) {
            notes.add(WORDS.say("import.cli.places", placeNames()));
        }
        return notes;
    }

    private String placeNames() {
        List<String> names = new ArrayList<>(plan.places().houses());
        plan.places().benches().forEach(bench -> names.add(bench.name()));
        plan.places().varieties().forEach(variety -> names.add(variety.name()));
        return String.join(", ", names);
    }
}
