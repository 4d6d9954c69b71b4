package jarwise.usecase.demo.day;

import jarwise.sample.CollectedSample;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.sample.SamplingMethod;
import jarwise.tally.SampleEvent;
import jarwise.tally.SampleFold;
import jarwise.usecase.demo.Stage;
import jarwise.usecase.demo.Streams;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The events of the demo folded into samples, and what was counted in them. */
record DemoCounts(List<SampleFold> samples) {

    /** The demo's own events, as its devices sent them, made once for all tests. */
    static final List<List<SampleEvent>> BATCHES = DemoEvents.of(Streams.SEED);

    private static final DemoCounts DEMO = of(BATCHES);

    static DemoCounts ofTheDemo() {
        return DEMO;
    }

    static DemoCounts of(Collection<List<SampleEvent>> batches) {
        Map<String, List<String>> stagesOf = new TreeMap<>();
        for (Stage stage : Stage.values()) {
            stagesOf.computeIfAbsent(stage.pest(), pest -> new java.util.ArrayList<>())
                    .add(stage.key().lifeStage());
        }
        return new DemoCounts(
                batches.stream()
                        .flatMap(List::stream)
                        .collect(
                                Collectors.groupingBy(
                                        SampleEvent::sample, TreeMap::new, Collectors.toList()))
                        .entrySet()
                        .stream()
                        .map(e -> SampleFold.of(e.getKey(), e.getValue(), stagesOf))
                        .toList());
    }

    DemoCounts where(Predicate<CollectedSample> wanted) {
        return new DemoCounts(samples.stream().filter(fold -> wanted.test(fold.sample())).toList());
    }

    /** The one jar with this number on a bench in a round. */
    SampleFold jar(int round, String bench, int number) {
        DemoCounts found =
                random(SamplingMethod.WASH, round, bench)
                        .where(s -> Integer.toString(number).equals(s.attributes().get("jar")));
        if (found.size() != 1) {
            throw new IllegalStateException("jars of that number: " + found.size());
        }
        return found.samples().get(0);
    }

    /** Only filters that were read to their end. */
    DemoCounts readWhole() {
        return where(sample -> sample.reading().filterShare() == 1);
    }

    DemoCounts random(SamplingMethod method, int round, String bench) {
        return random(method)
                .where(sample -> round(sample) == round)
                .where(sample -> sample.place().bench().orElse("").equals(bench));
    }

    DemoCounts random(SamplingMethod method) {
        return where(sample -> sample.method() == method)
                .where(sample -> sample.role() == SampleRole.CROP)
                .where(sample -> sample.purpose() == Purpose.RANDOM);
    }

    static int round(CollectedSample sample) {
        String round = sample.attributes().getOrDefault("round", "W0");
        return Integer.parseInt(round.substring(1));
    }

    long sum(Stage... stages) {
        Set<Stage> wanted = Set.copyOf(Arrays.asList(stages));
        return samples.stream()
                .flatMap(fold -> wanted.stream().map(s -> fold.tally().of(s.key()).orElse(0)))
                .mapToLong(Long::longValue)
                .sum();
    }

    long thrips() {
        return sum(Stage.LARVA1, Stage.LARVA2, Stage.PUPAL, Stage.ADULT);
    }

    long larvae() {
        return sum(Stage.LARVA1, Stage.LARVA2);
    }

    int size() {
        return samples.size();
    }
}
