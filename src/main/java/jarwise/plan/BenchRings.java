package jarwise.plan;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.site.Bench;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Rings of benches around a find: the neighbours, their neighbours and so on. Bays stand side by
 * side in the order of the walk, and the benches of a bay behind each other; a bench is as many
 * rings away as bays or benches lie between, whichever are more.
 *
 * @param find code of the bench with the find
 * @param places every bench of its house
 */
public record BenchRings(String find, List<Place> places) {

    /**
     * Where a bench stands.
     *
     * @param bench its code
     * @param bay number of its bay, from 0
     * @param row place in the bay, from 0
     * @param ring rings away from the find; 0 is the find itself
     */
    public record Place(String bench, int bay, int row, int ring) {}

    public BenchRings {
        places = List.copyOf(places);
    }

    /**
     * Lays rings around a bench, in its own house.
     *
     * @param benches benches of the site
     * @param find code of one of them
     * @throws InvalidInput if it is none of them
     */
    public static BenchRings around(List<Bench> benches, String find) {
        Bench centre =
                benches.stream()
                        .filter(bench -> bench.code().equals(find))
                        .findFirst()
                        .orElseThrow(
                                () -> new InvalidInput("There is no bench %s.".formatted(find)));
        Map<String, List<Bench>> bays = new LinkedHashMap<>();
        benches.stream()
                .filter(bench -> bench.house().equals(centre.house()))
                .sorted(Comparator.comparingInt(Bench::position))
                .forEach(
                        bench ->
                                bays.computeIfAbsent(bench.bay(), bay -> new ArrayList<>())
                                        .add(bench));
        List<String> order = List.copyOf(bays.keySet());
        int bay = order.indexOf(centre.bay());
        int row = bays.getOrDefault(centre.bay(), List.of()).indexOf(centre);
        List<Place> places = new ArrayList<>();
        for (int b = 0; b < order.size(); b++) {
            List<Bench> there = bays.getOrDefault(order.get(b), List.of());
            for (int r = 0; r < there.size(); r++) {
                int ring = Math.max(Math.abs(b - bay), Math.abs(r - row));
                places.add(new Place(there.get(r).code(), b, r, ring));
            }
        }
        return new BenchRings(find, places);
    }

    /** {@return benches of the first {@code rings} rings, the find itself left out} */
    public List<String> within(int rings) {
        Require.atLeast("rings", rings, 1);
        return places.stream()
                .filter(place -> place.ring() >= 1 && place.ring() <= rings)
                .sorted(Comparator.comparingInt(Place::ring).thenComparing(Place::bench))
                .map(Place::bench)
                .toList();
    }
}
