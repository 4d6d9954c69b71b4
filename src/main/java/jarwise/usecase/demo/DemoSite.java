package jarwise.usecase.demo;

import jarwise.plan.Round;
import jarwise.sample.Purpose;
import jarwise.sample.SamplingMethod;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Nursery;
import jarwise.site.Occupancy;
import jarwise.site.PlantMove;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Places and plants of the demo nursery, all invented, and its second, empty client. */
public final class DemoSite {

    /** Quillback Lane Nursery. */
    public static final Nursery NURSERY =
            new Nursery("quillback-lane", "Quillback Lane Nursery", DemoClock.ZONE, "en");

    /** A client without any data, so that it shows that clients are kept apart. */
    public static final Nursery EMPTY = new Nursery("site-two", "Site Two", DemoClock.ZONE, "en");

    /** Benches over which a card hangs; none over H2-D1, which is never sampled. */
    public static final List<String> CARD_BENCHES =
            List.of(
                    "P1-A2", "P1-B3", "P1-B5", "H2-A1", "H2-B4", "H2-B6", "H2-D6", "H3-B2", "H3-B5",
                    "H3-C3");

    private static final LocalDate BEFORE = LocalDate.of(2026, 1, 12);
    private static final LocalDate ARRIVED = LocalDate.of(2026, 2, 23);
    private static final LocalDate MOVED = LocalDate.of(2026, 4, 14);
    private static final LocalDate FIRST_ROUND = LocalDate.of(2026, 3, 2);

    private DemoSite() {}

    /** {@return houses in the order of the walk, from clean to dirty} */
    public static List<House> houses() {
        return List.of(
                new House("H2", "Potted plants", OptionalDouble.of(1200)),
                new House("H3", "Mixed", OptionalDouble.of(1000)),
                new House("P1", "Propagation", OptionalDouble.of(600)));
    }

    /** {@return every bench, in the order of the walk} */
    public static List<Bench> benches() {
        List<Bench> benches = new ArrayList<>();
        for (House house : houses()) {
            char lastBay = house.code().equals("H2") ? 'D' : house.code().equals("H3") ? 'C' : 'B';
            for (char bay = 'A'; bay <= lastBay; bay++) {
                for (int bench = 1; bench <= 6; bench++) {
                    String code = house.code() + "-" + bay + bench;
                    String name = Character.toString(bay);
                    benches.add(new Bench(code, house.code(), name, benches.size()));
                }
            }
        }
        return benches;
    }

    /** {@return crop lots; L-117 and L-121 came during the story} */
    public static List<CropLot> cropLots() {
        return List.of(
                lot("L-101", "Schefflera", "Tessellate", "S-1", BEFORE),
                lot("L-103", "Gardenia", "Vellichor", "S-1", BEFORE),
                lot("L-106", "Hibiscus", "Saffron Bell", "S-1", BEFORE),
                lot("L-109", "Gerbera", "Cloudmarsh", "S-1", BEFORE),
                lot("L-110", "Hibiscus", "Saffron Bell", "S-1", BEFORE),
                new CropLot(
                        "L-112",
                        "Capsicum",
                        "Copper Wren",
                        Optional.of("S-1"),
                        Optional.of(BEFORE),
                        true),
                lot("L-117", "Gerbera", "Rubia Tarn", "S-2", ARRIVED),
                lot("L-121", "Gerbera", "Pellam Pink", "S-1", FIRST_ROUND));
    }

    private static CropLot lot(
            String code, String crop, String variety, String supplier, LocalDate delivered) {
        return new CropLot(
                code, crop, variety, Optional.of(supplier), Optional.of(delivered), false);
    }

    /** {@return what stood where from when to when, plants and growing points as estimated} */
    public static List<Occupancy> occupancies() {
        LocalDate before = MOVED.minusDays(1);
        return List.of(
                occupancy("P1-A2", "L-110", BEFORE, Optional.empty(), 240, 4),
                occupancy("P1-B3", "L-117", ARRIVED, Optional.of(before), 420, 2),
                occupancy("P1-B3", "L-117", MOVED, Optional.empty(), 240, 3),
                occupancy("P1-B4", "L-117", ARRIVED, Optional.empty(), 400, 2),
                occupancy("P1-B5", "L-109", BEFORE, Optional.empty(), 380, 2),
                occupancy("H2-B4", "L-121", FIRST_ROUND, Optional.empty(), 360, 2),
                occupancy("H2-B4", "L-117", MOVED, Optional.empty(), 180, 3),
                occupancy("H2-B6", "L-103", BEFORE, Optional.empty(), 300, 6),
                occupancy("H2-D1", "L-101", BEFORE, Optional.empty(), 200, 3),
                occupancy("H3-B2", "L-106", BEFORE, Optional.empty(), 260, 5),
                occupancy("H3-B5", "L-112", BEFORE, Optional.empty(), 320, 4));
    }

    private static Occupancy occupancy(
            String bench,
            String lot,
            LocalDate from,
            Optional<LocalDate> to,
            int plants,
            int growingPoints) {
        return new Occupancy(
                bench,
                lot,
                from,
                to,
                OptionalDouble.of(plants),
                OptionalDouble.of(growingPoints),
                Optional.of(from.isBefore(FIRST_ROUND) ? FIRST_ROUND : from));
    }

    /** {@return the pots that took thrips from propagation into the potted plants} */
    public static List<PlantMove> moves() {
        return List.of(new PlantMove(MOVED, "P1-B3", "H2-B4", "L-117", 180));
    }

    /** {@return what is planned by habit; {@link DemoRounds} adds 20 jars to the eleventh round} */
    public static List<Round> rounds() {
        List<Round> rounds = new ArrayList<>();
        for (int round = 1; round <= WorkWeek.ROUNDS; round++) {
            LocalDate day = new WorkWeek(round).cutOn();
            rounds.add(new Round(day, SamplingMethod.WASH, jars(round)));
            rounds.add(new Round(day, SamplingMethod.TAP, taps(round)));
            rounds.add(cards(new WorkWeek(round).cardsChanged()));
        }
        LocalDate eleventh = new WorkWeek(WorkWeek.ROUNDS + 1).monday();
        rounds.add(new Round(eleventh, SamplingMethod.WASH, jars(WorkWeek.ROUNDS)));
        rounds.add(new Round(eleventh, SamplingMethod.TAP, taps(WorkWeek.ROUNDS)));
        return rounds;
    }

    private static List<Round.Stop> jars(int round) {
        return Stand.all().stream()
                .filter(stand -> stand.jars(round) > 0)
                .map(stand -> new Round.Stop(stand.bench(), stand.jars(round), Purpose.RANDOM))
                .toList();
    }

    private static List<Round.Stop> taps(int round) {
        return Stand.all().stream()
                .filter(stand -> stand.taps(round) > 0)
                .map(stand -> new Round.Stop(stand.bench(), stand.taps(round), Purpose.RANDOM))
                .toList();
    }

    private static Round cards(LocalDate day) {
        List<Round.Stop> stops =
                CARD_BENCHES.stream()
                        .map(bench -> new Round.Stop(bench, 1, Purpose.RANDOM))
                        .toList();
        return new Round(day, SamplingMethod.CARD, stops);
    }
}
