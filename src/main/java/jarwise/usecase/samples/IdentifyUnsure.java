package jarwise.usecase.samples;

import jarwise.base.Message;
import jarwise.pest.Pests;
import jarwise.sample.SampleCode;
import jarwise.store.PestStore;
import jarwise.tally.Deed;
import jarwise.tally.Press;
import jarwise.tally.SampleFold;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * Says what "unsure" individuals are, without a recount: each is taken back and counted under its
 * name in the cell where it lies. The history keeps both.
 *
 * @param log where events go
 * @param pests what they can be
 */
public record IdentifyUnsure(SampleLog log, PestStore pests) {

    /** The reason that stands on what is taken back. */
    public static final String REASON = "identified";

    /** Code of what the reader could not name. */
    public static final String UNSURE = "unsure";

    private static final long MOST = 100_000;

    /** {@return unsure individuals in use, by identity: those set aside are in no number} */
    public static List<Press> waiting(SampleFold fold) {
        return Press.of(fold).stream()
                .filter(press -> press.counted().pest().equals(UNSURE))
                .filter(press -> press.counted().individuals() > 0)
                .filter(press -> press.aside().isEmpty())
                .toList();
    }

    /**
     * Identifies.
     *
     * @param fields {@code individuals}, {@code stage} as PEST:stage, {@code cell}: blank for any
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, String person, SampleCode code, Fields fields) {
        fields.needed("individuals");
        OptionalLong number = fields.whole("individuals", 1, MOST);
        StageKey key = stage(fields);
        String cell = fields.text("cell");
        log.alone(
                () -> {
                    List<Press> there =
                            waiting(log.find(nursery, code)).stream()
                                    .filter(press -> cell.isEmpty() || isIn(press, cell))
                                    .toList();
                    long most = there.stream().mapToLong(one -> one.counted().individuals()).sum();
                    if (number.isPresent() && number.getAsLong() > most) {
                        fields.fault(
                                "individuals", Message.of("identify.more", String.valueOf(most)));
                    }
                    fields.refuseIfAny();
                    log.append(nursery, person, code, deeds(there, number.orElseThrow(), key));
                    return code;
                });
    }

    private StageKey stage(Fields fields) {
        String[] parts = fields.needed("stage").split(":", -1);
        StageKey key = parts.length == 2 ? new StageKey(parts[0], parts[1]) : new StageKey("", "");
        Pests known = pests.pests();
        boolean there =
                known.find(key.pest()).stream()
                        .flatMap(pest -> pest.lifeStages().stream())
                        .anyMatch(stage -> stage.code().equals(key.lifeStage()));
        if (!there || key.pest().equals(UNSURE)) {
            fields.fault("stage", Message.of("identify.stage"));
        }
        return key;
    }

    private static boolean isIn(Press press, String cell) {
        return press.counted().filterCell().filter(cell::equals).isPresent();
    }

    /** What is left of a number larger than one stays unsure, in the same cell. */
    private static List<Deed> deeds(List<Press> there, long number, StageKey key) {
        List<Deed> deeds = new ArrayList<>();
        long left = number;
        for (Press press : there) {
            long all = press.counted().individuals();
            long taken = Math.min(left, all);
            if (taken > 0) {
                deeds.add(new Deed.Voided(press.id(), REASON));
                deeds.add(
                        new Deed.Counted(
                                key.pest(), key.lifeStage(), taken, press.counted().filterCell()));
            }
            if (taken > 0 && taken < all) {
                deeds.add(
                        new Deed.Counted(
                                UNSURE,
                                press.counted().lifeStage(),
                                all - taken,
                                press.counted().filterCell()));
            }
            left -= taken;
        }
        return deeds;
    }
}
