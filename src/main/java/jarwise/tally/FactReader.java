package jarwise.tally;

import jarwise.base.InvalidInput;
import jarwise.sample.CollectedSample;
import jarwise.sample.CollectedSample.Place;
import jarwise.sample.CollectedSample.Reading;
import jarwise.sample.CollectedSample.Times;
import jarwise.sample.CollectedSample.Wash;
import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.Purpose;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleRole;
import jarwise.sample.SampleState;
import jarwise.sample.SamplingMethod;
import jarwise.stats.filter.CellWalk;
import jarwise.stats.filter.FilterLayout;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * Reads the facts that steps noted, which are text, into a sample.
 *
 * @param code the sample
 * @param facts by the names in {@link Facts}
 * @param attributes columns of a sheet that Jarwise has no word for
 */
record FactReader(SampleCode code, Map<String, String> facts, Map<String, String> attributes) {

    CollectedSample sample(Times times, Tally tally, SampleState state) {
        return new CollectedSample(
                code,
                word(SamplingMethod.class, Facts.METHOD).orElse(SamplingMethod.WASH),
                word(Purpose.class, Facts.PURPOSE).orElse(Purpose.RANDOM),
                word(SampleRole.class, Facts.ROLE).orElse(SampleRole.CROP),
                text(Facts.COLLECTED_ON)
                        .map(day -> parsed(Facts.COLLECTED_ON, day, LocalDate::parse)),
                new Place(
                        text(Facts.HOUSE),
                        text(Facts.BENCH),
                        text(Facts.CROP_LOT),
                        text(Facts.CROP),
                        text(Facts.VARIETY)),
                number(Facts.SAMPLING_UNITS).orElse(1),
                new Wash(
                        word(Fluid.class, Facts.FLUID),
                        word(Fill.class, Facts.FILL),
                        whole(Facts.SHAKE_SECONDS),
                        whole(Facts.RINSES),
                        text(Facts.CONDITION)),
                times,
                reading(tally),
                whole(Facts.KNOWN),
                text(Facts.RECOUNT_OF).map(SampleCode::new),
                state,
                attributes);
    }

    /** {@return the passes in which the filter was read; empty where nobody noted them} */
    Optional<CellWalk> walk() {
        OptionalInt passes = whole(Facts.PASSES);
        OptionalInt cells = whole(Facts.CELLS_READABLE);
        if (passes.isEmpty() || cells.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                CellWalk.from(
                        FilterLayout.ofCells(cells.getAsInt()),
                        passes.getAsInt(),
                        whole(Facts.PASS_START).orElse(0)));
    }

    /** {@return whether readable cells were left unread} */
    static boolean partlyRead(Map<String, String> facts, Tally tally) {
        Reading reading = new FactReader(new SampleCode("-"), facts, Map.of()).reading(tally);
        return reading.cellsRead() < reading.cellsReadable();
    }

    private Reading reading(Tally tally) {
        boolean byCells = tally.cellsRead() + tally.cellsObscured() > 0 || walk().isPresent();
        int obscured = byCells ? tally.cellsObscured() : whole(Facts.CELLS_OBSCURED).orElse(0);
        double readable = number(Facts.CELLS_READABLE).orElse(1);
        if (byCells) {
            // Facts name all cells of the layout; obscured ones leave the denominator.
            readable =
                    Math.max(number(Facts.CELLS_READABLE).orElse(0) - obscured, tally.cellsRead());
        }
        double whole = tally.hasCounts() ? readable : 0;
        double read = byCells ? tally.cellsRead() : number(Facts.CELLS_READ).orElse(whole);
        return new Reading(text(Facts.READER), read, readable, obscured, number(Facts.MINUTES));
    }

    private Optional<String> text(String name) {
        return Optional.ofNullable(facts.get(name)).filter(value -> !value.isBlank());
    }

    private OptionalDouble number(String name) {
        Optional<Double> number = text(name).map(value -> parsed(name, value, Double::parseDouble));
        return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
    }

    private OptionalInt whole(String name) {
        Optional<Integer> number = text(name).map(value -> parsed(name, value, Integer::parseInt));
        return number.isPresent() ? OptionalInt.of(number.get()) : OptionalInt.empty();
    }

    private <E extends Enum<E>> Optional<E> word(Class<E> type, String name) {
        return text(name)
                .map(
                        value ->
                                parsed(
                                        name,
                                        value,
                                        word -> Enum.valueOf(type, word.toUpperCase(Locale.ROOT))));
    }

    private <T> T parsed(String name, String value, Function<String, T> parse) {
        try {
            return parse.apply(value);
        } catch (IllegalArgumentException | DateTimeParseException e) {
            InvalidInput fault =
                    new InvalidInput(
                            "The %s of %s is '%s', which is no value for it."
                                    .formatted(name, code, value));
            fault.initCause(e);
            throw fault;
        }
    }
}
