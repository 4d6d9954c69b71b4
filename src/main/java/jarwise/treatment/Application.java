package jarwise.treatment;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * One application of one product or a tank mix, as it was done.
 *
 * @param id its name in the ledger, unique in the nursery
 * @param house greenhouse it was done in
 * @param benches benches treated; empty means the whole house
 * @param started when the first bench was treated
 * @param ended when the last one was done; empty while it is going on or nobody noted it
 * @param products what was in the tank, at least one, each once
 * @param amount how much, as noted
 * @param applicator role code
 * @param note anything else
 */
public record Application(
        String id,
        String house,
        Set<String> benches,
        Instant started,
        Optional<Instant> ended,
        List<ProductUse> products,
        String amount,
        String applicator,
        String note) {

    public Application {
        Require.notBlank("application", id);
        Require.notBlank("house", house);
        Require.notBlank("applicator", applicator);
        benches = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(benches));
        products = List.copyOf(products);
        Require.atLeast("products of " + id, products.size(), 1);
        if (products.stream().map(ProductUse::product).distinct().count() < products.size()) {
            throw new InvalidInput(
                    "Application %s names a product twice; each must stand once.".formatted(id));
        }
        if (ended.isPresent() && ended.get().isBefore(started)) {
            throw new InvalidInput(
                    "Application %s ended %s, before it started, %s. Maybe the two are swapped."
                            .formatted(id, ended.get(), started));
        }
    }

    /** {@return whether {@code bench} of {@code itsHouse} was treated} */
    public boolean covers(String itsHouse, String bench) {
        return benches.isEmpty() ? house.equals(itsHouse) : benches.contains(bench);
    }

    /**
     * {@return when the longest re-entry interval of the mix has passed; empty where the end or any
     * interval is not known, and then nobody may enter}
     */
    public Optional<Instant> reentryEnds() {
        if (products.stream().anyMatch(use -> use.reentryHours().isEmpty())) {
            return Optional.empty();
        }
        double hours =
                products.stream()
                        .mapToDouble(use -> use.reentryHours().orElseThrow())
                        .max()
                        .orElse(0);
        return ended.map(end -> end.plus(Duration.ofSeconds((long) Math.ceil(hours * 3600))));
    }

    /** {@return whether the re-entry interval is known to have passed at {@code now}} */
    public boolean mayBeEntered(Instant now) {
        return reentryEnds().map(end -> !now.isBefore(end)).orElse(false);
    }
}
