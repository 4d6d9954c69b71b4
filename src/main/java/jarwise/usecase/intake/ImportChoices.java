package jarwise.usecase.intake;

import jarwise.sample.SamplingMethod;
import jarwise.wire.sheet.ColumnMapping;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * How a person wants a sheet understood.
 *
 * @param worksheet worksheet of a workbook; the first one if empty
 * @param mapping which column means what
 * @param unnamed what rows without a pest, a stage or a method are about
 * @param pestWords words of the sheet that stand for a pest: word to pest code
 * @param stageWords words of the sheet that stand for a life stage: word to stage code
 * @param asNew whether this is a sheet of its own, even if it looks like an earlier one grown
 * @param addPlaces whether houses, benches and varieties not known yet are added
 */
public record ImportChoices(
        Optional<String> worksheet,
        ColumnMapping mapping,
        Unnamed unnamed,
        Map<String, String> pestWords,
        Map<String, String> stageWords,
        boolean asNew,
        boolean addPlaces) {

    public ImportChoices {
        pestWords = Map.copyOf(pestWords);
        stageWords = Map.copyOf(stageWords);
    }

    /**
     * What a row means that does not say it itself.
     *
     * @param pest pest code
     * @param stage stage code
     * @param method how the insects were brought to the eye
     * @param day on which samples were cut that are new and have no date; empty for not known, and
     *     then no round has them
     */
    public record Unnamed(
            Optional<String> pest,
            Optional<String> stage,
            SamplingMethod method,
            Optional<LocalDate> day) {

        /** A wash of a pest nobody named. */
        public static final Unnamed WASH =
                new Unnamed(
                        Optional.empty(), Optional.empty(), SamplingMethod.WASH, Optional.empty());
    }

    /** {@return a reading of a sheet by this mapping with nothing else chosen} */
    public static ImportChoices of(ColumnMapping mapping) {
        return new ImportChoices(
                Optional.empty(), mapping, Unnamed.WASH, Map.of(), Map.of(), false, false);
    }

    /** {@return the same choices for a pest and stage that the sheet does not name} */
    public ImportChoices about(String pest, String stage) {
        Unnamed named =
                new Unnamed(
                        Optional.of(pest).filter(text -> !text.isBlank()),
                        Optional.of(stage).filter(text -> !text.isBlank()),
                        unnamed.method(),
                        unnamed.day());
        return new ImportChoices(
                worksheet, mapping, named, pestWords, stageWords, asNew, addPlaces);
    }

    /** {@return the same choices for samples cut on a day that the sheet does not name} */
    public ImportChoices on(LocalDate day) {
        Unnamed dated =
                new Unnamed(unnamed.pest(), unnamed.stage(), unnamed.method(), Optional.of(day));
        return new ImportChoices(
                worksheet, mapping, dated, pestWords, stageWords, asNew, addPlaces);
    }

    /** {@return the same choices for a sheet of its own} */
    public ImportChoices asNewSheet() {
        return new ImportChoices(
                worksheet, mapping, unnamed, pestWords, stageWords, true, addPlaces);
    }
}
