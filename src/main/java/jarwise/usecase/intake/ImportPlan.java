package jarwise.usecase.intake;

import jarwise.base.Message;
import jarwise.sample.SampleCode;
import jarwise.tally.ImportBatch;
import jarwise.tally.ImportRow;
import jarwise.tally.StageKey;
import java.util.List;

/**
 * What taking in a sheet would do.
 *
 * @param header fingerprint of its column names
 * @param samples what is new or different, sample by sample, in the order of the sheet
 * @param gone what an earlier copy of the sheet had and this one has not: left alone
 * @param places names the sheet uses that the site does not know yet
 * @param rows what each row says, to know it again
 * @param grownFrom name of the earlier sheet this is a longer copy of; empty if it is a new one
 * @param notes what a person should know about how the sheet was read
 */
public record ImportPlan(
        String header,
        List<SampleDifference> samples,
        List<Gone> gone,
        NewPlaces places,
        List<ImportRow> rows,
        String grownFrom,
        List<Message> notes) {

    public ImportPlan {
        samples = List.copyOf(samples);
        gone = List.copyOf(gone);
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /**
     * A count that an earlier copy of the sheet had.
     *
     * @param sample its sample
     * @param stage what was counted
     */
    public record Gone(SampleCode sample, StageKey stage) {}

    /**
     * Names of places that the site does not know yet.
     *
     * @param houses houses
     * @param benches benches, with the house they would be put in
     * @param varieties varieties no crop lot has, with their crop
     */
    public record NewPlaces(List<String> houses, List<NamedIn> benches, List<NamedIn> varieties) {

        public NewPlaces {
            houses = List.copyOf(houses);
            benches = List.copyOf(benches);
            varieties = List.copyOf(varieties);
        }

        /** {@return whether there is any} */
        public boolean isAny() {
            return !(houses.isEmpty() && benches.isEmpty() && varieties.isEmpty());
        }
    }

    /**
     * A name and what it belongs to.
     *
     * @param name bench or variety
     * @param within house or crop; may be empty
     */
    public record NamedIn(String name, String within) {}

    /** {@return how many counts are new, the same, and changed} */
    public ImportBatch.Counted counted() {
        long added = samples.stream().mapToLong(SampleDifference::added).sum();
        long changed = samples.stream().mapToLong(sample -> sample.counts().size()).sum() - added;
        long same = samples.stream().mapToLong(sample -> sample.same().size()).sum();
        return new ImportBatch.Counted((int) added, (int) same, (int) changed);
    }

    /** {@return samples that are not on record at all} */
    public long newSamples() {
        return samples.stream().filter(SampleDifference::isNew).count();
    }

    /** {@return samples of which something on record is corrected} */
    public List<SampleDifference> corrected() {
        return samples.stream().filter(SampleDifference::corrects).toList();
    }

    /** {@return whether taking it in would write anything} */
    public boolean changesAnything() {
        return samples.stream().anyMatch(SampleDifference::isAny);
    }
}
