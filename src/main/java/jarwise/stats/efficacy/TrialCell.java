package jarwise.stats.efficacy;

import jarwise.stats.count.CountData;
import jarwise.stats.count.CountLikelihood;
import jarwise.stats.count.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** The samples of one bench at one time. */
record TrialCell(String bench, boolean treated, boolean after, CountLikelihood likelihood) {

    /** {@return the cells of a trial that have samples, on benches where anything was found} */
    static List<TrialCell> of(EfficacyTrial trial) {
        List<TrialCell> cells = new ArrayList<>();
        trial.treated().forEach(bench -> add(cells, bench, true));
        trial.check().forEach(bench -> add(cells, bench, false));
        return cells.stream().filter(cell -> hasFind(cells, cell.bench())).toList();
    }

    private static void add(List<TrialCell> cells, TrialBench bench, boolean treated) {
        BiConsumer<List<Observation>, Boolean> adder =
                (observations, after) -> {
                    if (!observations.isEmpty()) {
                        CountLikelihood likelihood =
                                new CountLikelihood(CountData.of(observations));
                        cells.add(new TrialCell(bench.name(), treated, after, likelihood));
                    }
                };
        adder.accept(bench.before(), false);
        adder.accept(bench.after(), true);
    }

    private static boolean hasFind(List<TrialCell> cells, String bench) {
        return cells.stream()
                .filter(cell -> cell.bench().equals(bench))
                .anyMatch(cell -> cell.individuals() > 0);
    }

    double individuals() {
        return likelihood.data().individuals();
    }

    /** {@return whether this is one of the two groups that the interaction is about} */
    boolean isTreatedAfter() {
        return treated && after;
    }
}
