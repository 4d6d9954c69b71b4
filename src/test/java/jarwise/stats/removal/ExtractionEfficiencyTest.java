package jarwise.stats.removal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import jarwise.base.InvalidInput;
import jarwise.stats.ReferenceTable;
import jarwise.stats.ReferenceTable.Row;
import jarwise.stats.estimate.DetectionShare;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ExtractionEfficiencyTest {

    static List<Row> posteriors() {
        return ReferenceTable.read("extraction-efficiency/posterior.csv");
    }

    private static List<RemovalCatches> series(Row row) {
        return Arrays.stream(row.text("series").split("\\|"))
                .filter(text -> !text.isEmpty())
                .map(
                        text ->
                                RemovalCatches.of(
                                        Arrays.stream(text.split(" "))
                                                .mapToLong(Long::parseLong)
                                                .toArray()))
                .toList();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("posteriors")
    void spikesAndWashesAreMultiplied(Row row) {
        ExtractionEfficiency efficiency =
                ExtractionEfficiency.of(
                        (long) row.number("found"), (long) row.number("known"), series(row), 0.95);

        assertThat(efficiency.estimate()).isCloseTo(row.number("mean"), within(1e-6));
        assertThat(efficiency.standardError()).isCloseTo(row.number("sd"), within(1e-6));
        assertThat(efficiency.lower()).isCloseTo(row.number("lower95"), within(1e-6));
        assertThat(efficiency.upper()).isCloseTo(row.number("upper95"), within(1e-6));
    }

    static List<Row> imperfectReaders() {
        return ReferenceTable.read("extraction-efficiency/imperfect-reader.csv");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("imperfectReaders")
    void whatAReaderOverlooksIsNotTheWash(Row row) {
        List<SpikeFinds> spikes =
                Arrays.stream(row.text("spikes").split("\\|"))
                        .map(text -> text.split(" "))
                        .map(
                                n ->
                                        new SpikeFinds(
                                                Long.parseLong(n[0]),
                                                Long.parseLong(n[1]),
                                                DetectionShare.measured(
                                                        Long.parseLong(n[2]),
                                                        Long.parseLong(n[3]))))
                        .toList();
        ExtractionEfficiency efficiency = ExtractionEfficiency.of(spikes, series(row), 0.95);

        assertThat(efficiency.estimate()).isCloseTo(row.number("mean"), within(1e-5));
        assertThat(efficiency.standardError()).isCloseTo(row.number("sd"), within(1e-5));
        assertThat(efficiency.lower()).isCloseTo(row.number("lower95"), within(1e-5));
        assertThat(efficiency.upper()).isCloseTo(row.number("upper95"), within(1e-5));
    }

    @Test
    void aReaderWhoseShareIsKnownExactlyIsDividedOut() {
        DetectionShare sharp = DetectionShare.measured(8_000_000, 10_000_000);
        ExtractionEfficiency known =
                ExtractionEfficiency.of(
                        List.of(new SpikeFinds(12, 30, DetectionShare.known(0.8))),
                        List.of(),
                        0.95);
        ExtractionEfficiency measured =
                ExtractionEfficiency.of(List.of(new SpikeFinds(12, 30, sharp)), List.of(), 0.95);

        assertThat(measured.estimate()).isCloseTo(known.estimate(), within(1e-5));
        assertThat(known.estimate()).isBetween(0.45, 0.55);
    }

    @Test
    void aSpikeAloneGoesOnAsItWasMeasured() {
        assertThat(ExtractionEfficiency.of(18, 24, List.of(), 0.95).share())
                .isEqualTo(DetectionShare.measured(18, 24));
    }

    @Test
    void moreWashesMakeTheShareSurer() {
        RemovalCatches washes = RemovalCatches.of(38, 26, 12);
        ExtractionEfficiency one = ExtractionEfficiency.of(18, 24, List.of(washes), 0.95);
        ExtractionEfficiency two = ExtractionEfficiency.of(18, 24, List.of(washes, washes), 0.95);

        assertThat(two.standardError()).isLessThan(one.standardError());
        assertThat(two.share().varianceOfLog()).isLessThan(one.share().varianceOfLog());
        assertThat(one.share().mean()).isCloseTo(one.estimate(), within(0.01));
    }

    @Test
    void refusesWhatTellsNothing() {
        assertThatThrownBy(() -> ExtractionEfficiency.of(0, 0, List.of(), 0.95))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> ExtractionEfficiency.of(5, 4, List.of(), 0.95))
                .isInstanceOf(InvalidInput.class);
    }
}
