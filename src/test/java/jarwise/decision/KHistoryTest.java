package jarwise.decision;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import jarwise.stats.count.Observation;
import jarwise.stats.estimate.KPrior;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class KHistoryTest {

    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    /**
     * Corn borers, four treatments of 120 plants each: Bliss and Fisher (1953), Biometrics 9:176,
     * Table 3; common k 1.47145 by R 4.2.2, MASS 7.3-58.2, glm.nb(count ~ treatment).
     */
    private static final List<String> CORN_BORERS =
            List.of(
                    "0x19 1x12 2x18 3x18 4x11 5x12 6x7 7x8 8x4 9x4 10x1 12x1 13x1 15x1 17x1 19x1"
                            + " 26x1",
                    "0x24 1x16 2x16 3x18 4x15 5x9 6x6 7x5 8x3 9x4 10x3 12x1",
                    "0x43 1x35 2x17 3x11 4x5 5x4 6x1 7x2 8x2",
                    "0x47 1x23 2x27 3x9 4x7 5x3 6x1 7x1 10x1 11x1");

    @Test
    void findsTheCommonKOfThePublishedCornBorers() {
        List<KHistory.Group> groups =
                CORN_BORERS.stream().map(text -> new KHistory.Group(MONDAY, counts(text))).toList();

        KPrior prior = KHistory.of(groups).priorBefore(MONDAY.plusDays(7)).orElseThrow();

        assertThat(prior.medianK()).isCloseTo(1.47145, within(0.05));
        // 480 samples leave little open but what differs from group to group
        assertThat(prior.logSpread()).isBetween(KHistory.BETWEEN, KHistory.BETWEEN + 0.05);
    }

    @Test
    void knowsNothingOfTheSameDayOrLater() {
        KHistory history =
                KHistory.of(List.of(new KHistory.Group(MONDAY, counts(CORN_BORERS.get(0)))));

        assertThat(history.priorBefore(MONDAY)).isEmpty();
        assertThat(history.priorBefore(MONDAY.plusDays(1))).isPresent();
        assertThat(history.samplesBefore(MONDAY.plusDays(1))).isEqualTo(120);
    }

    @Test
    void needsThirtySamples() {
        List<Observation> few = counts("0x20 1x5 4x4");
        List<Observation> enough = counts("0x21 1x5 4x4");

        assertThat(KHistory.of(List.of(new KHistory.Group(MONDAY, few))).priorBefore(tomorrow()))
                .isEmpty();
        assertThat(KHistory.of(List.of(new KHistory.Group(MONDAY, enough))).priorBefore(tomorrow()))
                .isPresent();
    }

    @Test
    void learnsNothingFromGroupsWithoutAFind() {
        List<KHistory.Group> groups =
                List.of(
                        new KHistory.Group(MONDAY, counts("0x500")),
                        new KHistory.Group(MONDAY, counts("0x6 2x2")));

        assertThat(KHistory.of(groups).samplesBefore(tomorrow())).isEqualTo(8);
    }

    private static LocalDate tomorrow() {
        return MONDAY.plusDays(1);
    }

    private static List<Observation> counts(String frequencies) {
        List<Observation> samples = new ArrayList<>();
        for (String entry : frequencies.split(" ", -1)) {
            String[] parts = entry.split("x", -1);
            samples.addAll(
                    Collections.nCopies(
                            Integer.parseInt(parts[1]),
                            Observation.of(Long.parseLong(parts[0]), 1)));
        }
        return samples;
    }
}
