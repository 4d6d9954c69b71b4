package jarwise.usecase.demo;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.ActionThreshold;
import jarwise.plan.Round;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.sample.LabelCode;
import jarwise.sample.SamplingMethod;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Occupancy;
import jarwise.site.PlantMove;
import jarwise.site.Setting;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

class DemoSiteTest {

    private static final LocalDate MOVED = LocalDate.of(2026, 4, 14);

    @Test
    void hasThreeHousesOfTheStorysSize() {
        assertThat(DemoSite.houses())
                .extracting(House::code, house -> house.areaM2().orElseThrow())
                .containsExactlyInAnyOrder(
                        Tuple.tuple("P1", 600.0),
                        Tuple.tuple("H2", 1200.0),
                        Tuple.tuple("H3", 1000.0));
        assertThat(DemoSite.benches()).as("bays of six benches: 2 + 4 + 3").hasSize(9 * 6);
    }

    @Test
    void thePotsThatMovedLeftP1B3ForH2B4InTheSeventhWeek() {
        assertThat(DemoSite.moves())
                .containsExactly(new PlantMove(MOVED, "P1-B3", "H2-B4", "L-117", 180));
        assertThat(MOVED)
                .isBetween(new WorkWeek(7).monday(), new WorkWeek(8).monday().minusDays(1));
        assertThat(plants("P1-B3", "L-117", MOVED.minusDays(1))).isEqualTo(420);
        assertThat(plants("P1-B3", "L-117", MOVED)).isEqualTo(420 - 180);
        assertThat(plants("H2-B4", "L-117", MOVED.minusDays(1))).isZero();
        assertThat(plants("H2-B4", "L-117", MOVED)).isEqualTo(180);
        assertThat(plants("H2-B4", "L-121", MOVED)).as("stood there before").isEqualTo(360);
    }

    /** Beat 6: what was moved is the lot with thrips, and it is not that of the new bench. */
    @Test
    void theTwoLotsOfTheStoryCameFromTwoSuppliers() {
        assertThat(lot("L-117").supplier()).hasValue("S-2");
        assertThat(lot("L-117").deliveredOn()).hasValue(LocalDate.of(2026, 2, 23));
        assertThat(lot("L-121").supplier()).hasValue("S-1");
        assertThat(lot("L-121").deliveredOn()).hasValue(LocalDate.of(2026, 3, 2));
    }

    @Test
    void onlyThePeppersAreEdible() {
        assertThat(DemoSite.cropLots())
                .filteredOn(CropLot::edible)
                .extracting(CropLot::variety)
                .containsExactly("Copper Wren");
    }

    @Test
    void theEleventhRoundHasTwentyMoreJarsOnTheBenchThatGotThePots() {
        LocalDate monday = LocalDate.of(2026, 5, 11);
        List<Round> eleventh =
                DemoSite.rounds().stream().filter(round -> round.day().equals(monday)).toList();

        assertThat(eleventh)
                .extracting(Round::method)
                .containsExactlyInAnyOrder(SamplingMethod.WASH, SamplingMethod.TAP);
        Round jars =
                eleventh.stream()
                        .filter(round -> round.method() == SamplingMethod.WASH)
                        .findAny()
                        .orElseThrow();
        assertThat(jars.samples()).isEqualTo(37);
        assertThat(jars.stops())
                .filteredOn(stop -> stop.bench().equals("H2-B4"))
                .singleElement()
                .satisfies(stop -> assertThat(stop.samples()).isEqualTo(6));
        RoundPlan more = DemoRounds.eleventh();
        assertThat(more.day()).isEqualTo(monday);
        assertThat(more.question()).isEqualTo(RoundQuestion.DETECT);
        assertThat(more.jars())
                .hasSize(20)
                .allSatisfy(
                        jar -> {
                            assertThat(jar.bench()).isEqualTo("H2-B4");
                            assertThat(LabelCode.parse(jar.code().text()).sampleCode())
                                    .isEqualTo(jar.code());
                        });
        assertThat(DemoRounds.eleventh()).as("every time the same").isEqualTo(more);
        assertThat(DemoSite.rounds()).noneMatch(round -> round.day().isAfter(monday));
    }

    @Test
    void neverSamplesTessellate() {
        assertThat(DemoSite.rounds())
                .allSatisfy(
                        round ->
                                assertThat(round.stops())
                                        .noneMatch(stop -> stop.bench().equals("H2-D1")));
        assertThat(DemoSite.occupancies()).anyMatch(stands -> stands.bench().equals("H2-D1"));
    }

    @Test
    void drawsItsOwnLinesOnTheFirstDay() {
        assertThat(DemoChoices.thresholds())
                .extracting(ActionThreshold::pest, ActionThreshold::density)
                .containsExactlyInAnyOrder(
                        Tuple.tuple("FRANOC", .1),
                        Tuple.tuple("HEMTLA", .5),
                        Tuple.tuple("TETRUR", .5),
                        Tuple.tuple("APHIGO", 1.0));
        assertThat(DemoChoices.thresholds())
                .allSatisfy(
                        line -> {
                            assertThat(line.setBy()).isEqualTo("HG-1");
                            assertThat(line.setOn()).isEqualTo(LocalDate.of(2026, 3, 2));
                        });
        assertThat(DemoChoices.settings())
                .filteredOn(setting -> setting.name().equals("target-efficacy"))
                .extracting(Setting::value)
                .containsExactly("0.6");
    }

    @Test
    void hasSixPeopleKnownByTheirRolesOnly() {
        Set<String> roles =
                DemoChoices.people().stream()
                        .map(person -> person.code())
                        .collect(Collectors.toSet());

        assertThat(roles).containsExactlyInAnyOrder("SC-1", "SC-2", "ES-1", "HG-1", "AP-1", "PL-1");
    }

    private static double plants(String bench, String lot, LocalDate day) {
        return DemoSite.occupancies().stream()
                .filter(stands -> stands.bench().equals(bench) && stands.cropLot().equals(lot))
                .filter(stands -> !stands.from().isAfter(day))
                .filter(stands -> stands.to().map(to -> !to.isBefore(day)).orElse(true))
                .mapToDouble(DemoSiteTest::plants)
                .sum();
    }

    private static double plants(Occupancy stands) {
        return stands.plants().orElseThrow();
    }

    private static CropLot lot(String code) {
        return DemoSite.cropLots().stream()
                .filter(lot -> lot.code().equals(code))
                .findAny()
                .orElseThrow();
    }
}
