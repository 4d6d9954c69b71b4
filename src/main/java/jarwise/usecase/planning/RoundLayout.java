package jarwise.usecase.planning;

import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.decision.Verdict;
import jarwise.plan.BenchSpots;
import jarwise.plan.Spot;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import jarwise.stats.design.AllocatedStratum;
import jarwise.stats.design.Allocation;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Shares jars out among stands, draws their places and puts them in the order of a walk that
 * carries nothing from a dirty bench to a clean one: houses without finds above the line first,
 * propagation before finishing, and in a house the benches above the line last.
 *
 * @param request what is asked
 * @param last what was last found on each stand
 */
record RoundLayout(PlanRequest request, Map<Stand, Finding> last) {

    private static final Pattern PROPAGATION =
            Pattern.compile("propag|multiplic|semill|sembl|semis|plug|young|bouture");

    /** Jars that every stand gets: two where its own mean and its spread are wanted. */
    static int leastPerStand(Ask ask) {
        return ask instanceof Ask.Estimate ? Allocation.LEAST : 1;
    }

    /** {@return the jars in the order of the walk, checks of the work last} */
    List<JarPlace> jars(PlanAnswer answer) {
        Map<String, Integer> numbers = numbers(answer);
        List<JarPlace> jars = new ArrayList<>(placed(numbers));
        request.extras().hotSpots().stream()
                .map(
                        stand ->
                                new JarPlace(
                                        Optional.of(stand),
                                        Purpose.TARGETED,
                                        SampleRole.CROP,
                                        Optional.empty()))
                .forEach(jars::add);
        jars.sort(Comparator.comparing((JarPlace jar) -> jar.stand().orElseThrow(), walk()));
        if (request.extras().blank()) {
            jars.add(check(SampleRole.BLANK));
        }
        if (request.extras().spiked().isPresent()) {
            jars.add(check(SampleRole.SPIKE));
        }
        return List.copyOf(jars);
    }

    private static JarPlace check(SampleRole role) {
        return new JarPlace(Optional.empty(), Purpose.TARGETED, role, Optional.empty());
    }

    /** {@return jars at random places by stand} */
    Map<String, Integer> numbers(PlanAnswer answer) {
        Map<String, Integer> numbers = new LinkedHashMap<>();
        if (answer instanceof PlanAnswer.Delimit delimit) {
            Set<String> left = new LinkedHashSet<>(delimit.sampled());
            request.stands().stream()
                    .filter(stand -> left.remove(stand.bench().code()))
                    .forEach(stand -> numbers.put(stand.key(), 1));
            return numbers;
        }
        if (request.ask() instanceof Ask.Compare compare) {
            List<StandThere> treated =
                    request.stands().stream()
                            .filter(stand -> !stand.key().equals(compare.check()))
                            .toList();
            share(treated, compare.jarsPerGroup(), numbers);
            numbers.put(compare.check(), compare.jarsPerGroup());
            return numbers;
        }
        share(request.stands(), answer.jars(), numbers);
        return numbers;
    }

    private void share(List<StandThere> stands, int jars, Map<String, Integer> numbers) {
        boolean sizesKnown = stands.stream().allMatch(stand -> stand.growingPoints().isPresent());
        List<AllocatedStratum> strata =
                stands.stream()
                        .map(
                                stand -> {
                                    OptionalDouble size = stand.growingPoints();
                                    return AllocatedStratum.ofSize(
                                            stand.key(), sizesKnown ? size.getAsDouble() : 1);
                                })
                        .toList();
        int least = leastPerStand(request.ask());
        Allocation.of(strata, Math.max(jars, least * stands.size()), least)
                .shares()
                .forEach(share -> numbers.put(share.stratum().name(), share.sampleSize()));
    }

    /** Two lots on one bench share its places: no two jars at one. */
    private List<JarPlace> placed(Map<String, Integer> numbers) {
        Map<String, List<StandThere>> byBench =
                request.stands().stream()
                        .collect(
                                Collectors.groupingBy(
                                        stand -> stand.bench().code(),
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        List<JarPlace> jars = new ArrayList<>();
        byBench.forEach(
                (bench, stands) -> {
                    List<StandThere> wanted = new ArrayList<>();
                    for (StandThere stand : stands) {
                        int number = numbers.getOrDefault(stand.key(), 0);
                        wanted.addAll(Collections.nCopies(number, stand));
                    }
                    List<Spot> spots = BenchSpots.draw(bench, wanted.size(), request.seed());
                    for (int i = 0; i < wanted.size(); i++) {
                        jars.add(random(wanted.get(i), spots.get(i)));
                    }
                });
        return jars;
    }

    private static JarPlace random(StandThere stand, Spot spot) {
        return new JarPlace(Optional.of(stand), Purpose.RANDOM, SampleRole.CROP, Optional.of(spot));
    }

    private Comparator<StandThere> walk() {
        Set<String> dirty =
                request.stands().stream()
                        .filter(this::aboveTheLine)
                        .map(stand -> stand.house().code())
                        .collect(Collectors.toSet());
        return Comparator.comparing((StandThere stand) -> dirty.contains(stand.house().code()))
                .thenComparing(stand -> !isPropagation(stand))
                .thenComparing(StandThere::housePlace)
                .thenComparing(this::aboveTheLine)
                .thenComparing(stand -> stand.bench().position())
                .thenComparing(stand -> stand.bench().code());
    }

    private boolean aboveTheLine(StandThere stand) {
        Finding finding = last.get(stand.stand());
        return finding != null && finding.verdict().equals(Optional.of(Verdict.ABOVE_THE_LINE));
    }

    private static boolean isPropagation(StandThere stand) {
        String name = stand.house().name().toLowerCase(Locale.ROOT);
        return PROPAGATION.matcher(name).find();
    }
}
