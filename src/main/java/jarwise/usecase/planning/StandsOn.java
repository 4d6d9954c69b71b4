package jarwise.usecase.planning;

import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.site.Occupancy;
import jarwise.store.SiteStore;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** Reads which crop lot stands on which bench on a day. */
final class StandsOn {

    private StandsOn() {}

    /** {@return every stand of that day, by house, bench and lot} */
    static List<StandThere> day(SiteStore sites, String nursery, LocalDate day) {
        List<House> houses = sites.houses(nursery);
        Map<String, CropLot> lots =
                sites.cropLots(nursery).stream()
                        .collect(Collectors.toMap(CropLot::code, lot -> lot));
        List<Occupancy> standing =
                sites.occupancies(nursery).stream().filter(there -> there.covers(day)).toList();
        List<StandThere> stands = new ArrayList<>();
        for (int place = 0; place < houses.size(); place++) {
            for (Bench bench : sites.benches(nursery)) {
                if (bench.house().equals(houses.get(place).code())) {
                    stands.addAll(on(houses.get(place), place, bench, standing, lots));
                }
            }
        }
        return List.copyOf(stands);
    }

    private static List<StandThere> on(
            House house,
            int place,
            Bench bench,
            List<Occupancy> standing,
            Map<String, CropLot> lots) {
        Map<String, OptionalDouble> points = new LinkedHashMap<>();
        standing.stream()
                .filter(there -> there.bench().equals(bench.code()))
                .filter(there -> lots.containsKey(there.cropLot()))
                .forEach(there -> points.put(there.cropLot(), growingPoints(there)));
        List<StandThere> stands = new ArrayList<>();
        points.forEach(
                (lot, number) -> {
                    CropLot there = lots.get(lot);
                    if (there != null) {
                        stands.add(new StandThere(house, place, bench, there, number));
                    }
                });
        return stands;
    }

    private static OptionalDouble growingPoints(Occupancy there) {
        return there.plants().isPresent() && there.growingPointsPerPlant().isPresent()
                ? OptionalDouble.of(
                        there.plants().getAsDouble() * there.growingPointsPerPlant().getAsDouble())
                : OptionalDouble.empty();
    }
}
