package jarwise.usecase.quality;

import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.sample.LabelCode;
import jarwise.sample.SampleCode;
import jarwise.sample.SeededFilter;
import jarwise.sample.SeededFilter.Placed;
import jarwise.stats.filter.FilterCell;
import jarwise.stats.filter.FilterLayout;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SettingsStore;
import jarwise.store.work.SeededFilterStore;
import jarwise.usecase.form.Fields;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;

/**
 * Puts on record a filter on which insects were placed by hand, so that what readers find of them
 * can be measured; and retires it when it is worn.
 *
 * @param filters filters of which is known what lies on them
 * @param events codes that are given out already
 * @param settings how many cells a filter has
 * @param pests what can be placed
 * @param below draws a whole number from 0 up to its argument less one
 */
public record MakeSeededFilter(
        SeededFilterStore filters,
        EventStore events,
        SettingsStore settings,
        PestStore pests,
        IntUnaryOperator below) {

    /** Begins the name of a field that says in which cells a stage lies. */
    public static final String PLACED = "placed:";

    /** More than anybody places by hand. */
    private static final int MOST_INSECTS = 500;

    private static final int LONGEST_NAME = 60;

    /**
     * Puts a filter on record and gives it a code.
     *
     * @param person who made it
     * @param fields {@code name}, {@code made_on}, and for each stage {@code placed:PEST:stage} the
     *     cells in which one lies, a cell named twice for two
     * @return the code to write on its lid and base
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public SampleCode run(
            String nursery, String person, Fields fields, LocalDate today, Instant now) {
        String name = fields.needed("name");
        if (name.length() > LONGEST_NAME) {
            fields.fault("name", Message.of("form.too-long", String.valueOf(LONGEST_NAME)));
        }
        fields.needed("made_on");
        Optional<LocalDate> madeOn = fields.pastDay("made_on", today);
        List<Placed> placed = placed(nursery, fields, today);
        if (placed.isEmpty()) {
            fields.fault("placed", Message.of("seeded.none-placed"));
        }
        if (placed.size() > MOST_INSECTS) {
            fields.fault("placed", Message.of("seeded.too-many", String.valueOf(MOST_INSECTS)));
        }
        fields.refuseIfAny();
        SampleCode code = freshCode(nursery);
        filters.put(
                nursery,
                new SeededFilter(
                        code, name, placed, madeOn.orElseThrow(), person, Optional.empty()),
                now);
        return code;
    }

    /**
     * Retires a filter: from today on it is not read any more. What was read stays.
     *
     * @param fields {@code code}
     * @throws Refused if there is none in use with this code
     */
    public void retire(String nursery, Fields fields, LocalDate today) {
        String code = fields.text("code");
        if (code.isEmpty() || !filters.retire(nursery, new SampleCode(code), today)) {
            throw new Refused(Message.of("seeded.gone", code));
        }
    }

    /** {@return every filter ever made, those in use first, the newest first} */
    public List<SeededFilter> all(String nursery) {
        List<SeededFilter> all = new ArrayList<>(filters.all(nursery));
        all.sort((one, other) -> Boolean.compare(isRetired(one), isRetired(other)));
        return all;
    }

    /** {@return pests whose stages can be placed: what was unsure cannot} */
    public List<Pest> placeable() {
        return pests.pests().all().stream()
                .filter(pest -> !pest.code().equals(KnownSamples.UNSURE))
                .toList();
    }

    private static boolean isRetired(SeededFilter filter) {
        return filter.retiredOn().isPresent();
    }

    private List<Placed> placed(String nursery, Fields fields, LocalDate today) {
        List<String> cells =
                FilterLayout.ofCells(settings.protocolOn(nursery, today).filterCells())
                        .snake()
                        .stream()
                        .map(FilterCell::name)
                        .toList();
        List<Placed> placed = new ArrayList<>();
        for (Pest pest : placeable()) {
            for (LifeStage stage : pest.lifeStages()) {
                for (String cell : cells(fields, pest, stage, cells)) {
                    placed.add(new Placed(cell, pest.code(), stage.code()));
                }
            }
        }
        return placed;
    }

    private static List<String> cells(
            Fields fields, Pest pest, LifeStage stage, List<String> known) {
        String field = PLACED + pest.code() + ":" + stage.code();
        List<String> typed =
                List.of(fields.text(field).toUpperCase(Locale.ROOT).split("[\\s,;]+", -1)).stream()
                        .filter(cell -> !cell.isEmpty())
                        .toList();
        List<String> strange = typed.stream().filter(cell -> !known.contains(cell)).toList();
        if (!strange.isEmpty()) {
            fields.fault(
                    field,
                    Message.of(
                            "seeded.no-cell",
                            strange.stream().distinct().collect(Collectors.joining(", ")),
                            known.get(0),
                            known.get(known.size() - 1)));
        }
        return typed;
    }

    private SampleCode freshCode(String nursery) {
        while (true) {
            SampleCode code = LabelCode.next(below).sampleCode();
            if (events.fold(nursery, code).isEmpty() && filters.find(nursery, code).isEmpty()) {
                return code;
            }
        }
    }
}
