package jarwise.usecase.findings;

import jarwise.decision.Evidence;
import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.sample.CollectedSample;
import jarwise.treatment.Application;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is known of one kind of animal in one choice of places and days.
 *
 * @param scope what is shown
 * @param rules what the site has chosen
 * @param choices what else could be shown
 * @param rounds the days, or weeks, of cutting
 * @param series every stand, most likely above the line first
 * @param bare stands with a crop where nothing was sampled
 * @param stages individuals by life stage and round, in all random jars of the choice together
 * @param targeted samples that find pests and never enter a mean
 * @param lowExtraction the last finding of each stand if washing brought off only a quarter
 */
public record Findings(
        Scope scope,
        SiteRules rules,
        Choices choices,
        Rounds rounds,
        List<Series> series,
        List<Stand> bare,
        List<StageCounts> stages,
        List<Targeted> targeted,
        Map<Stand, Finding> lowExtraction) {

    /** Share that a low extraction is shown with: close to what was published for other crops. */
    public static final double LOW_EXTRACTION = 0.25;

    /**
     * What can be chosen.
     *
     * @param subjects pests and stage groups
     * @param varieties cultivars sampled in these days
     * @param houses greenhouses sampled in these days
     * @param benches benches sampled in these days
     */
    public record Choices(
            List<Finding.Subject> subjects,
            List<String> varieties,
            List<String> houses,
            List<String> benches) {}

    /**
     * The rounds of one stand.
     *
     * @param stand where
     * @param rounds one finding for each round in which jars were cut here
     * @param taps animals on taps, by round
     * @param treatments applications to this bench in these days
     */
    public record Series(
            Stand stand,
            List<Finding> rounds,
            Map<LocalDate, Taps> taps,
            List<Application> treatments) {

        public Series {
            rounds = List.copyOf(rounds);
            treatments = List.copyOf(treatments);
        }

        /** {@return the newest round} */
        public Finding last() {
            return rounds.get(rounds.size() - 1);
        }

        /** {@return the newest round that has been read, else the newest} */
        public Finding lastRead() {
            for (int i = rounds.size() - 1; i >= 0; i--) {
                if (rounds.get(i).estimated().isPresent()) {
                    return rounds.get(i);
                }
            }
            return last();
        }
    }

    /**
     * Animals on taps.
     *
     * @param taps plants tapped
     * @param individuals found on them
     */
    public record Taps(double taps, long individuals) {
        /** {@return both together} */
        public Taps plus(Taps other) {
            return new Taps(taps + other.taps, individuals + other.individuals);
        }
    }

    /**
     * One life stage, round by round.
     *
     * @param lifeStage stage code
     * @param byRound individuals; a round that is not here was not read for this stage
     */
    public record StageCounts(String lifeStage, Map<LocalDate, Long> byRound) {}

    /**
     * A targeted sample.
     *
     * @param sample where and when
     * @param individuals found; empty where it has not been read for these animals
     */
    public record Targeted(CollectedSample sample, Optional<Long> individuals) {}

    /** {@return how many samples of all rounds were off or left out, by round} */
    public Map<LocalDate, List<Evidence>> evidence() {
        return series.stream()
                .flatMap(one -> one.rounds().stream())
                .collect(
                        java.util.stream.Collectors.groupingBy(
                                Finding::day,
                                java.util.TreeMap::new,
                                java.util.stream.Collectors.mapping(
                                        Finding::evidence, java.util.stream.Collectors.toList())));
    }

    /** {@return whether any jar of the choice was cut} */
    public boolean sampled() {
        return !series.isEmpty();
    }
}
