package jarwise.usecase.map;

import jarwise.base.Message;
import jarwise.site.Bench;
import jarwise.site.Occupancy;
import jarwise.site.PlantMove;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundStore;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * Carries a crop lot, or a part of it, from one bench to another on a day. What stood where before
 * that day stays on record; nothing before the last change of a bench can be changed.
 */
public final class MovePlants {

    private static final long MOST_PLANTS = 10_000_000;

    private final Database database;
    private final SiteStore sites;
    private final RoundStore rounds;

    public MovePlants(Database database) {
        this.database = database;
        this.sites = new SiteStore(database);
        this.rounds = new RoundStore(database);
    }

    /** What leaves, and what is there to take it in. */
    private record Move(
            String nursery, Occupancy there, Bench to, Optional<Occupancy> here, LocalDate day) {}

    /**
     * Moves plants.
     *
     * @param fields {@code stand} as {@link Stands#key} writes it, {@code to}, {@code day}, {@code
     *     plants}; all of them where no number is given
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public void run(String nursery, LocalDate today, Fields fields) {
        Stands stands = new Stands(sites.occupancies(nursery));
        Optional<Occupancy> there = stands.chosen(fields);
        String toCode = fields.needed("to");
        Optional<Bench> to =
                sites.benches(nursery).stream()
                        .filter(bench -> bench.code().equals(toCode))
                        .findFirst();
        if (!toCode.isEmpty() && to.isEmpty()) {
            fields.fault("to", Message.of("settings.place.unknown", toCode));
        }
        fields.needed("day");
        Optional<LocalDate> day = fields.pastDay("day", today);
        OptionalLong number = fields.whole("plants", 1, MOST_PLANTS);
        there.ifPresent(stand -> checkPlants(stand, number, fields));
        if (there.isPresent() && to.isPresent() && day.isPresent()) {
            check(stands, there.get(), to.get(), day.get(), fields);
        }
        fields.refuseIfAny();
        Occupancy stand = there.orElseThrow();
        long plants =
                number.isPresent() ? number.getAsLong() : Math.round(stand.plants().orElseThrow());
        Bench bench = to.orElseThrow();
        move(
                new Move(
                        nursery,
                        stand,
                        bench,
                        stands.open(bench.code(), stand.cropLot()),
                        day.orElseThrow()),
                plants);
    }

    private static void checkPlants(Occupancy there, OptionalLong number, Fields fields) {
        if (there.plants().isEmpty()) {
            if (number.isEmpty()) {
                fields.fault("plants", Message.of("map.move.count", there.bench()));
            }
        } else if (number.isPresent() && number.getAsLong() > there.plants().getAsDouble()) {
            fields.fault(
                    "plants",
                    Message.of(
                            "map.move.more",
                            String.valueOf(Math.round(there.plants().getAsDouble())),
                            there.cropLot(),
                            there.bench()));
        }
    }

    private static void check(
            Stands stands, Occupancy there, Bench to, LocalDate day, Fields fields) {
        if (there.bench().equals(to.code())) {
            fields.fault("to", Message.of("map.move.same", to.code()));
        }
        if (day.isBefore(there.from())) {
            fields.fault(
                    "day",
                    Message.of(
                            "map.move.before",
                            there.cropLot(),
                            there.bench(),
                            there.from().toString()));
        }
        stands.lastChange(to.code(), there.cropLot())
                .filter(day::isBefore)
                .ifPresent(
                        last ->
                                fields.fault(
                                        "day",
                                        Message.of(
                                                "map.move.target",
                                                there.cropLot(),
                                                to.code(),
                                                last.toString())));
    }

    private void move(Move move, long plants) {
        database.inOneTransaction(
                () -> {
                    leave(move, plants);
                    arrive(move, plants);
                    PlantMove carried =
                            new PlantMove(
                                    move.day(),
                                    move.there().bench(),
                                    move.to().code(),
                                    move.there().cropLot(),
                                    Math.toIntExact(plants + before(move)));
                    rounds.add(move.nursery(), carried);
                    return carried;
                });
    }

    /** Two loads on one day are one move of both together. */
    private long before(Move move) {
        return rounds.moves(move.nursery()).stream()
                .filter(known -> known.movedOn().equals(move.day()))
                .filter(known -> known.fromBench().equals(move.there().bench()))
                .filter(known -> known.toBench().equals(move.to().code()))
                .filter(known -> known.cropLot().equals(move.there().cropLot()))
                .mapToLong(PlantMove::plants)
                .sum();
    }

    private void leave(Move move, long plants) {
        Occupancy there = move.there();
        boolean whole =
                there.plants().isPresent() && Math.round(there.plants().getAsDouble()) == plants;
        boolean sameDay = there.from().equals(move.day());
        if (whole) {
            LocalDate last = sameDay ? move.day() : move.day().minusDays(1);
            sites.save(move.nursery(), Stands.ended(there, last));
            return;
        }
        if (!sameDay) {
            sites.save(move.nursery(), Stands.ended(there, move.day().minusDays(1)));
        }
        sites.save(move.nursery(), Stands.with(there, move.day(), sum(there.plants(), -plants)));
    }

    private void arrive(Move move, long plants) {
        if (move.here().isEmpty()) {
            Occupancy from = move.there();
            sites.save(
                    move.nursery(),
                    new Occupancy(
                            move.to().code(),
                            from.cropLot(),
                            move.day(),
                            Optional.empty(),
                            OptionalDouble.of((double) plants),
                            from.growingPointsPerPlant(),
                            from.estimatedOn()));
            return;
        }
        Occupancy here = move.here().get();
        if (here.from().isBefore(move.day())) {
            sites.save(move.nursery(), Stands.ended(here, move.day().minusDays(1)));
        }
        sites.save(move.nursery(), Stands.with(here, move.day(), sum(here.plants(), plants)));
    }

    private static OptionalDouble sum(OptionalDouble known, long more) {
        return known.isPresent() ? OptionalDouble.of(known.getAsDouble() + more) : known;
    }
}
