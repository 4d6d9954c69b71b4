package jarwise.usecase.map;

import jarwise.base.Message;
import jarwise.site.Occupancy;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What stands and stood on the benches of a site.
 *
 * @param all every occupancy
 */
public record Stands(List<Occupancy> all) {

    public Stands {
        all = List.copyOf(all);
    }

    /** {@return how a form names what stands somewhere} */
    public static String key(Occupancy stand) {
        return stand.cropLot() + " @ " + stand.bench();
    }

    /** {@return what stands somewhere now, by bench} */
    public List<Occupancy> open() {
        return all.stream().filter(stand -> stand.to().isEmpty()).toList();
    }

    /** {@return what stands of a lot on a bench now} */
    Optional<Occupancy> open(String bench, String lot) {
        return of(bench, lot).filter(stand -> stand.to().isEmpty()).findFirst();
    }

    /** {@return what stands in the field {@code stand}; a fault where it is gone} */
    Optional<Occupancy> chosen(Fields fields) {
        String key = fields.needed("stand");
        Optional<Occupancy> found =
                open().stream().filter(stand -> key(stand).equals(key)).findFirst();
        if (!key.isEmpty() && found.isEmpty()) {
            fields.fault("stand", Message.of("settings.place.gone"));
        }
        return found;
    }

    /** {@return the first day on which anything new can be said of a lot on a bench} */
    Optional<LocalDate> lastChange(String bench, String lot) {
        return of(bench, lot)
                .map(stand -> stand.to().map(last -> last.plusDays(1)).orElse(stand.from()))
                .max(LocalDate::compareTo);
    }

    private Stream<Occupancy> of(String bench, String lot) {
        return all.stream()
                .filter(stand -> stand.bench().equals(bench) && stand.cropLot().equals(lot));
    }

    static Occupancy ended(Occupancy stand, LocalDate last) {
        return new Occupancy(
                stand.bench(),
                stand.cropLot(),
                stand.from(),
                Optional.of(last),
                stand.plants(),
                stand.growingPointsPerPlant(),
                stand.estimatedOn());
    }

    /** The same lot on the same bench from a day on, with another number of plants. */
    static Occupancy with(Occupancy stand, LocalDate from, OptionalDouble plants) {
        return new Occupancy(
                stand.bench(),
                stand.cropLot(),
                from,
                stand.to(),
                plants,
                stand.growingPointsPerPlant(),
                stand.estimatedOn());
    }
}
