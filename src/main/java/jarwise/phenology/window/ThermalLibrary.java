package jarwise.phenology.window;

import jarwise.base.InvalidInput;
import jarwise.stats.thermal.ThermalConstants;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * All published constants at hand.
 *
 * @param constants one a stage and publication
 * @param shares assumed shares of stages
 * @param surrogates pest without constants of its own, to the pest that stands in for it
 */
public record ThermalLibrary(
        List<PublishedConstants> constants,
        List<StageShare> shares,
        Map<String, String> surrogates) {

    private static final String EGG = "egg";

    /** What hatches from an egg; later stages are in nobody's window of eggs. */
    private static final List<String> HATCHED = List.of("larva", "nymph");

    public ThermalLibrary {
        constants = List.copyOf(constants);
        shares = List.copyOf(shares);
        surrogates = Map.copyOf(surrogates);
    }

    /**
     * {@return every published set that tells how long eggs and a stage of a pest take}
     *
     * @param pest code of the pest
     * @param stage stage that the product kills, the one that hatches from the egg
     * @throws InvalidInput if there is none
     */
    public List<WindowConstants> sets(String pest, String stage) {
        String source = surrogates.getOrDefault(pest, pest);
        boolean surrogate = !source.equals(pest);
        if (constants.stream().noneMatch(c -> c.pest().equals(source))) {
            throw new InvalidInput(
                    "--pest is \"%s\"; there are published constants for %s. Maybe FRANOC"
                            .formatted(pest, String.join(", ", pests())));
        }
        List<WindowConstants> sets = new ArrayList<>();
        for (PublishedConstants first : constants) {
            if (first.pest().equals(source)) {
                ownStages(first, stage, surrogate).ifPresent(sets::add);
                sharesOfTotal(first, stage, surrogate).ifPresent(sets::add);
            }
        }
        if (sets.isEmpty()) {
            throw noStage(source, stage);
        }
        return sets;
    }

    /** A publication that has both stages itself. */
    private Optional<WindowConstants> ownStages(
            PublishedConstants egg, String stage, boolean surrogate) {
        if (!egg.stage().equals(EGG) || !HATCHED.contains(stage)) {
            return Optional.empty();
        }
        return constants.stream()
                .filter(c -> c.stage().equals(stage) && c.cited().equals(egg.cited()))
                .findFirst()
                .map(
                        hit ->
                                new WindowConstants(
                                        egg.cited(),
                                        egg.constants(),
                                        hit.constants(),
                                        false,
                                        surrogate));
    }

    /** A publication that has only the way from egg to adult. */
    private Optional<WindowConstants> sharesOfTotal(
            PublishedConstants total, String stage, boolean surrogate) {
        OptionalDouble egg = share(total.pest(), EGG);
        OptionalDouble hit = share(total.pest(), stage);
        if (!total.stage().equals(PublishedConstants.TOTAL)
                || egg.isEmpty()
                || hit.isEmpty()
                || !HATCHED.contains(stage)) {
            return Optional.empty();
        }
        ThermalConstants whole = total.constants();
        return Optional.of(
                new WindowConstants(
                        total.cited(),
                        whole.part(egg.getAsDouble()),
                        whole.part(hit.getAsDouble()),
                        true,
                        surrogate));
    }

    /** {@return assumed share of a stage, if there is one} */
    public OptionalDouble share(String pest, String stage) {
        return shares.stream()
                .filter(share -> share.pest().equals(pest) && share.stage().equals(stage))
                .mapToDouble(StageShare::share)
                .findFirst();
    }

    private InvalidInput noStage(String pest, String stage) {
        TreeSet<String> stages = new TreeSet<>();
        for (PublishedConstants c : constants) {
            for (String other : HATCHED) {
                boolean eggs =
                        ownStages(c, other, false).isPresent()
                                || sharesOfTotal(c, other, false).isPresent();
                if (c.pest().equals(pest) && eggs) {
                    stages.add(other);
                }
            }
        }
        String allowed =
                stages.isEmpty()
                        ? "no published set at hand tells how long both its eggs and a later"
                                + " stage take. Maybe it lays no eggs."
                        : "allowed is "
                                + String.join(" or ", stages)
                                + ". Maybe --stage "
                                + stages.first();
        return new InvalidInput("--stage is \"%s\"; for %s %s".formatted(stage, pest, allowed));
    }

    private TreeSet<String> pests() {
        TreeSet<String> pests = new TreeSet<>(surrogates.keySet());
        constants.forEach(c -> pests.add(c.pest()));
        return pests;
    }
}
