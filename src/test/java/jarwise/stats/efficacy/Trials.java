package jarwise.stats.efficacy;

import jarwise.numeric.NegativeBinomial;
import jarwise.numeric.SeededRandom;
import jarwise.stats.count.Observation;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Trials for tests: from the open data sets, or drawn from a seed. */
final class Trials {

    private Trials() {}

    static EfficacyTrial read(String file, boolean perGrowingPoint) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/reference/data", file));
        return EfficacyTrial.of(
                group(lines, "treated,before", perGrowingPoint),
                group(lines, "treated,after", perGrowingPoint),
                group(lines, "control,before", perGrowingPoint),
                group(lines, "control,after", perGrowingPoint));
    }

    private static List<Observation> group(List<String> lines, String name, boolean units) {
        List<Observation> result = new ArrayList<>();
        for (String line : lines) {
            if (line.startsWith(name + ",")) {
                String[] cells = line.split(",", -1);
                double u = units ? Double.parseDouble(cells[3]) : 1;
                result.add(Observation.of(Long.parseLong(cells[4]), u));
            }
        }
        return result;
    }

    /** Eight jars a group of 6 to 14 growing points, with at least one individual. */
    static List<Observation> drawn(SeededRandom random, double density) {
        List<Observation> jars = new ArrayList<>();
        jars.add(Observation.of(1, 7));
        for (int i = 0; i < 7; i++) {
            double units = 6 + random.below(9);
            NegativeBinomial perJar = new NegativeBinomial(density * units, 0.7);
            jars.add(Observation.of(random.count(perJar), units));
        }
        return jars;
    }

    static EfficacyTrial drawn(long seed) {
        SeededRandom random = new SeededRandom(seed);
        return EfficacyTrial.of(
                drawn(random, 0.9), drawn(random, 0.2), drawn(random, 1), drawn(random, 1.2));
    }
}
