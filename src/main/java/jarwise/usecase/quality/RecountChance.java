package jarwise.usecase.quality;

import jarwise.decision.ActionThreshold;
import jarwise.decision.Finding.Subject;
import jarwise.pest.Pest;
import jarwise.sample.CollectedSample;
import jarwise.sample.DetectionValue.Kind;
import jarwise.stats.estimate.DetectionShare;
import jarwise.store.TalliedSample;
import jarwise.tally.StageKey;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.form.Fields;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How likely a filter is to be counted again: one in ten of all, those near a decision three times
 * as likely. Our own rule ({@code docs/methods.md}, "Which filters are counted again").
 *
 * @param rules what the site has chosen
 */
record RecountChance(SiteRules rules) {

    static final double ONE_IN_TEN = 0.1;
    static final int NEAR = 3;

    /** So many times over or under the line is still near it. */
    private static final double FACTOR = 4;

    /** So many finds can be one look more or less, where there is no line to be near to. */
    private static final long FEW = 3;

    /** Codes for finds that nobody decides by. */
    private static final Set<String> NO_PEST = Set.of("other", "unsure");

    /** Keeps the first filters of a site from being drawn by whim. */
    private static final int FILTERS_BEFORE = 10;

    /**
     * The chance of one filter.
     *
     * @param filter the one that has been read
     * @param before filters of the same site read before it
     */
    double of(TalliedSample filter, Collection<TalliedSample> before) {
        double sum = FILTERS_BEFORE;
        for (TalliedSample one : before) {
            sum += weight(one);
        }
        return Math.min(1, ONE_IN_TEN * weight(filter) * (before.size() + FILTERS_BEFORE) / sum);
    }

    int weight(TalliedSample filter) {
        for (Pest pest : rules.pests().all()) {
            for (String group : pest.stageGroups()) {
                if (isNear(filter, pest, group)) {
                    return NEAR;
                }
            }
        }
        return 1;
    }

    private boolean isNear(TalliedSample filter, Pest pest, String group) {
        List<StageKey> stages =
                pest.stagesIn(group).stream()
                        .map(stage -> new StageKey(pest.code(), stage.code()))
                        .toList();
        Map<StageKey, Long> counts = filter.individuals();
        Optional<LocalDate> day = filter.sample().collectedOn();
        if (day.isEmpty() || !counts.keySet().containsAll(stages)) {
            return false;
        }
        long found = stages.stream().mapToLong(stage -> counts.getOrDefault(stage, 0L)).sum();
        Subject subject = new Subject(pest.code(), group);
        Optional<ActionThreshold> line = rules.lineOn(subject, day.get());
        if (line.isEmpty()) {
            return !pest.naturalEnemy()
                    && !NO_PEST.contains(pest.code())
                    && found > 0
                    && found <= FEW;
        }
        double times = density(filter.sample(), subject, day.get(), found) / line.get().density();
        return times >= 1 / FACTOR && times <= FACTOR;
    }

    /** Animals per growing point, corrected with what is in use. */
    private double density(CollectedSample sample, Subject subject, LocalDate day, long found) {
        double washed =
                sample.wash()
                        .fluid()
                        .flatMap(
                                f -> rules.shareOn(Kind.EXTRACTION, Fields.wordOf(f), subject, day))
                        .map(DetectionShare::mean)
                        .orElse(1.0);
        double seen =
                sample.reading()
                        .reader()
                        .flatMap(reader -> rules.shareOn(Kind.READER, reader, subject, day))
                        .map(DetectionShare::mean)
                        .orElse(1.0);
        double exposure = sample.samplingUnits() * sample.reading().filterShare() * washed * seen;
        return exposure > 0 ? found / exposure : 0;
    }
}
