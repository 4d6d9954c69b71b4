package jarwise.usecase.demo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A bench that is sampled, what stands on it, and how many of each stage truly live there.
 *
 * @param bench bench code
 * @param lot crop lot
 * @param crop kind of plant
 * @param variety cultivar
 * @param lookedFor pests that the reader looks for on its filters
 * @param densities true mean per growing point, one number a round
 */
public record Stand(
        String bench,
        String lot,
        String crop,
        String variety,
        Set<String> lookedFor,
        Map<Stage, double[]> densities) {

    private static final String PREDATORS = Stage.CUCUMERIS.pest();

    private static final List<Stand> ALL =
            List.of(
                    new Stand(
                            "H2-B4",
                            "L-121",
                            "Gerbera",
                            "Pellam Pink",
                            Set.of("FRANOC", "THRITB", PREDATORS),
                            TrueDensities.PELLAM_PINK),
                    new Stand(
                            "H2-B6",
                            "L-103",
                            "Gardenia",
                            "Vellichor",
                            Set.of("FRANOC", "HEMTLA", PREDATORS),
                            TrueDensities.VELLICHOR),
                    new Stand(
                            "H3-B5",
                            "L-112",
                            "Capsicum",
                            "Copper Wren",
                            Set.of("FRANOC", "THRITB", "APHIGO", Stage.MUMMY.pest()),
                            TrueDensities.COPPER_WREN),
                    new Stand(
                            "H3-B2",
                            "L-106",
                            "Hibiscus",
                            "Saffron Bell",
                            Set.of("FRANOC", "THRITB", "TETRUR", PREDATORS),
                            TrueDensities.SAFFRON_BELL),
                    gerbera("P1-B5", "L-109", "Cloudmarsh", TrueDensities.CLOUDMARSH),
                    gerbera("P1-B4", "L-117", "Rubia Tarn", TrueDensities.RUBIA_TARN_CHECK),
                    gerbera("P1-B3", "L-117", "Rubia Tarn", TrueDensities.RUBIA_TARN_TREATED));

    private static Stand gerbera(
            String bench, String lot, String variety, Map<Stage, double[]> densities) {
        return new Stand(bench, lot, "Gerbera", variety, Set.of("FRANOC", "THRITB"), densities);
    }

    public String house() {
        return bench.substring(0, 2);
    }

    /** {@return true mean per growing point in a round, from 1} */
    public double density(Stage stage, int round) {
        double[] ofStage = densities.get(stage);
        return ofStage == null ? 0 : ofStage[round - 1];
    }

    /** Growing points in a jar by the site's protocol. */
    public static final int GROWING_POINTS = 10;

    /** In the order of the walk: from clean houses to dirty ones. */
    public static List<Stand> all() {
        return ALL;
    }

    /** Hibiscus at the door of P1: a hot spot, looked at on purpose and never for a mean. */
    public static Stand atTheDoorOfP1() {
        return new Stand(
                "P1-A2",
                "L-110",
                "Hibiscus",
                "Saffron Bell",
                Set.of("FRANOC", "THRITB"),
                TrueDensities.AT_THE_DOOR);
    }

    public static Stand on(String bench) {
        return find(bench).orElseThrow();
    }

    public static Optional<Stand> find(String bench) {
        return all().stream().filter(stand -> stand.bench.equals(bench)).findAny();
    }

    /** {@return jars that are cut here in a round} */
    public int jars(int round) {
        return switch (bench) {
            case "P1-B3" -> round == 1 ? 6 : 8;
            case "P1-B4" -> round < 3 ? 0 : 8;
            case "P1-B5", "H2-B4" -> 6;
            default -> 3;
        };
    }

    /** {@return plants that are tapped here in a round} */
    public int taps(int round) {
        return switch (bench) {
            case "P1-B4" -> round < 3 ? 0 : 20;
            case "P1-B3", "P1-B5", "H2-B4" -> 20;
            default -> 0;
        };
    }
}
