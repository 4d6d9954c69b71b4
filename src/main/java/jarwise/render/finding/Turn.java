package jarwise.render.finding;

import jarwise.decision.Finding;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.stats.estimate.DensityEstimate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a bench fell or rose, said only where it is beyond doubt: the newest round's interval and
 * that of an earlier one do not meet. Two 95 % intervals that do not meet differ at far more than
 * 95 %, so this errs towards saying nothing.
 */
public final class Turn {

    private Turn() {}

    /** {@return "fell between 6 April and 4 May"; empty where the rounds do not show it} */
    public static Optional<String> of(List<Finding> rounds, Words words) {
        List<Finding> read = rounds.stream().filter(f -> f.estimated().isPresent()).toList();
        if (read.size() < 2) {
            return Optional.empty();
        }
        Finding last = read.get(read.size() - 1);
        Finding peak = read.stream().max(Comparator.comparingDouble(f -> density(f).lower())).get();
        if (upper(last) < density(peak).lower()) {
            return Optional.of(say("findings.trend.fell", peak, last, words));
        }
        Finding bottom = read.stream().min(Comparator.comparingDouble(Turn::upper)).get();
        if (density(last).lower() > upper(bottom)) {
            return Optional.of(say("findings.trend.rose", bottom, last, words));
        }
        return Optional.empty();
    }

    private static String say(String key, Finding from, Finding to, Words words) {
        Days days = new Days(words);
        return words.say(key, days.dayMonth(from.day()), days.dayMonth(to.day()));
    }

    private static DensityEstimate density(Finding finding) {
        return finding.estimated().orElseThrow().density();
    }

    private static double upper(Finding finding) {
        return density(finding).upper().orElse(Double.POSITIVE_INFINITY);
    }
}
