package jarwise.sample;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What is known about one sample: the fold of its steps, later corrections included.
 *
 * @param code on the label
 * @param method how insects were brought to the eye
 * @param purpose random or targeted
 * @param role crop sample or check of the work
 * @param collectedOn day the sample was cut, in the nursery's time zone
 * @param place where it was cut
 * @param samplingUnits growing points really cut (wash), plants tapped, card-days; above 0
 * @param wash how it was washed
 * @param times when each step was taken
 * @param reading who read it and how much of the filter
 * @param known individuals put in (spike, seeded), where that is the sample's role
 * @param recountOf code of the sample whose filter this is read again
 * @param state where it stands now
 * @param attributes other columns of the sheet it came from, as they stood there
 */
public record CollectedSample(
        SampleCode code,
        SamplingMethod method,
        Purpose purpose,
        SampleRole role,
        Optional<LocalDate> collectedOn,
        Place place,
        double samplingUnits,
        Wash wash,
        Times times,
        Reading reading,
        OptionalInt known,
        Optional<SampleCode> recountOf,
        SampleState state,
        Map<String, String> attributes) {

    public CollectedSample {
        jarwise.base.Require.positive("sampling units of " + code, samplingUnits);
        attributes = Map.copyOf(attributes);
    }

    /**
     * Where a sample was cut; each part only where it is known.
     *
     * @param house greenhouse code
     * @param bench bench code
     * @param cropLot lot number
     * @param crop kind of plant
     * @param variety cultivar
     */
    public record Place(
            Optional<String> house,
            Optional<String> bench,
            Optional<String> cropLot,
            Optional<String> crop,
            Optional<String> variety) {

        public static final Place UNKNOWN =
                new Place(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
    }

    /**
     * How a sample was washed; each part only where it was noted.
     *
     * @param fluid wash fluid
     * @param fill how full the jar was
     * @param shakeSeconds seconds it was shaken
     * @param rinses rinses of jar and lid
     * @param condition remarks on the filter: wet, dry, foam, debris
     */
    public record Wash(
            Optional<Fluid> fluid,
            Optional<Fill> fill,
            OptionalInt shakeSeconds,
            OptionalInt rinses,
            Optional<String> condition) {

        public static final Wash NOT_NOTED =
                new Wash(
                        Optional.empty(),
                        Optional.empty(),
                        OptionalInt.empty(),
                        OptionalInt.empty(),
                        Optional.empty());
    }

    /** When the steps were taken, as the device's clock said. */
    public record Times(
            Optional<Instant> cut,
            Optional<Instant> washed,
            Optional<Instant> freezerIn,
            Optional<Instant> freezerOut,
            Optional<Instant> read) {}

    /**
     * How a filter was read. Obscured cells leave the denominator: they are not zeros.
     *
     * @param reader code of the person at the microscope
     * @param cellsRead readable cells that were read
     * @param cellsReadable readable cells in all: obscured ones are not among them
     * @param cellsObscured cells that could not be read
     * @param minutes time taken
     */
    public record Reading(
            Optional<String> reader,
            double cellsRead,
            double cellsReadable,
            int cellsObscured,
            OptionalDouble minutes) {

        /** {@return share of the readable cells that was read, 0 to 1} */
        public double filterShare() {
            return cellsReadable > 0 ? cellsRead / cellsReadable : 0;
        }
    }
}
