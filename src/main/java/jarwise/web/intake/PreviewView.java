package jarwise.web.intake;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.usecase.intake.ImportPlan;
import jarwise.usecase.intake.SampleDifference;
import jarwise.usecase.intake.SheetFile;
import jarwise.usecase.intake.UploadShelf;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.SheetRefused;
import jarwise.wire.table.TableRow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What the preview of a sheet shows.
 *
 * @param kept the sheet on the shelf
 * @param file the sheet
 * @param form how it is understood
 * @param plan what an import would do; empty while the sheet has faults
 * @param refused the faults; empty if there is none
 * @param pests those that can be counted
 */
public record PreviewView(
        UploadShelf.Kept kept,
        SheetFile file,
        ChoicesForm form,
        Optional<ImportPlan> plan,
        Optional<SheetRefused> refused,
        List<Pest> pests) {

    private static final int ROWS_SHOWN = 6;
    private static final int LINES_SHOWN = 30;

    /** One count or fact that the sheet tells otherwise. */
    public record Change(String sample, String what, String before, String after) {}

    /** {@return the names of the columns} */
    public List<String> header() {
        return file.table().header();
    }

    /** {@return the meaning chosen for a column} */
    public String meaningOf(int column) {
        return form.meaningOf(column);
    }

    /** {@return all meanings} */
    public List<String> meanings() {
        return ChoicesForm.meanings();
    }

    /** {@return the first rows of the sheet} */
    public List<TableRow> firstRows() {
        List<TableRow> rows = file.table().rows();
        return rows.subList(0, Math.min(ROWS_SHOWN, rows.size()));
    }

    /** {@return how many rows the sheet has} */
    public int rows() {
        return file.table().rows().size();
    }

    /** {@return the fields of the form, to be sent once more} */
    public Map<String, String> fields() {
        return form.fields();
    }

    /** {@return the pest chosen for rows that name none} */
    public String pest() {
        return form.choices().unnamed().pest().orElse("");
    }

    /** {@return the stage chosen for rows that name none} */
    public String stage() {
        return form.choices().unnamed().stage().orElse("");
    }

    /** {@return the method chosen for rows that name none} */
    public String method() {
        return form.choices().unnamed().method().name();
    }

    /** {@return the day chosen for new samples without a date, as ISO text} */
    public String day() {
        return form.choices().unnamed().day().map(LocalDate::toString).orElse("");
    }

    /** {@return whether the person called it a sheet of its own} */
    public boolean asNew() {
        return form.choices().asNew();
    }

    /** {@return whether no column holds this meaning} */
    public boolean lacks(String meaning) {
        for (int i = 0; i < header().size(); i++) {
            String chosen = meaningOf(i);
            boolean wideStage = meaning.equals("stage") && chosen.equals(ChoicesForm.STAGE_COUNTS);
            if (chosen.equals(meaning) || wideStage) {
                return false;
            }
        }
        return true;
    }

    /** {@return words of the sheet that no pest is called} */
    public Set<String> unknownPests() {
        Set<String> words = new LinkedHashSet<>(form.choices().pestWords().keySet());
        words.addAll(values(FaultKind.PEST_UNKNOWN));
        return words;
    }

    /** {@return words of the sheet that no stage is called} */
    public Set<String> unknownStages() {
        Set<String> words = new LinkedHashSet<>(form.choices().stageWords().keySet());
        words.addAll(values(FaultKind.STAGE_UNKNOWN));
        words.remove("");
        return words;
    }

    /** {@return the pest chosen for a word of the sheet} */
    public String pestFor(String word) {
        return form.choices().pestWords().getOrDefault(word, "");
    }

    /** {@return the stage chosen for a word of the sheet} */
    public String stageFor(String word) {
        return form.choices().stageWords().getOrDefault(word, "");
    }

    /** {@return every stage of any pest, each once} */
    public Set<String> stages() {
        Set<String> stages = new LinkedHashSet<>();
        for (Pest pest : pests) {
            pest.lifeStages().stream().map(LifeStage::code).forEach(stages::add);
        }
        return stages;
    }

    private List<String> values(FaultKind kind) {
        return refused.map(SheetRefused::faults).orElse(List.of()).stream()
                .filter(fault -> fault.kind() == kind)
                .map(Fault::value)
                .toList();
    }

    /** {@return what the sheet tells otherwise than it is on record, the first of it} */
    public List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (SampleDifference sample : plan.map(ImportPlan::corrected).orElse(List.of())) {
            String code = sample.sample().text();
            for (SampleDifference.CountDifference count : sample.counts()) {
                count.before()
                        .ifPresent(
                                before ->
                                        changes.add(
                                                new Change(
                                                        code,
                                                        count.key().pest()
                                                                + " "
                                                                + count.key().lifeStage(),
                                                        String.valueOf(before),
                                                        String.valueOf(count.after()))));
            }
            sample.steps().stream()
                    .flatMap(step -> step.changed().stream())
                    .forEach(
                            fact ->
                                    changes.add(
                                            new Change(
                                                    code,
                                                    fact.fact().replaceFirst("^other:", ""),
                                                    fact.before(),
                                                    fact.after())));
        }
        return changes.subList(0, Math.min(LINES_SHOWN, changes.size()));
    }
}
