package jarwise.render.chart;

import jarwise.base.InvalidInput;
import jarwise.base.Require;
import jarwise.pest.StageMark;
import jarwise.render.words.Interval;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * Rounds of one place in the order of time. Panels that stand under each other have the same
 * rounds; a round without jars here is in it as not sampled.
 *
 * @param place bench or variety, the panel's title
 * @param note a few words beside it
 * @param mark mark of the stage the picture is about; none where stages are mixed
 * @param rounds at least one, by day
 * @param treatments what was done to this place
 * @param rows numbers under the dates, one for each round
 */
public record Trend(
        String place,
        String note,
        Optional<StageMark> mark,
        List<Round> rounds,
        List<Treatment> treatments,
        List<Row> rows) {

    /**
     * One round here.
     *
     * @param day the day the samples were collected
     * @param interval what is known
     * @param tip its values in words, for the tooltip
     */
    public record Round(LocalDate day, Interval interval, String tip) {}

    /**
     * A spray or a release.
     *
     * @param at when
     * @param group mode-of-action group as written on the label, such as "15" or "15 + 6"
     */
    public record Treatment(LocalDateTime at, String group) {}

    /**
     * Numbers under the dates.
     *
     * @param name what is counted, such as "jars washed"
     * @param brief the same in a word, for the phone
     * @param strong whether these are the numbers the picture shows
     * @param values one for each round; "–" where there is none
     */
    public record Row(String name, String brief, boolean strong, List<String> values) {
        public Row {
            values = List.copyOf(values);
        }
    }

    public Trend {
        Require.atLeast("rounds", rounds.size(), 1);
        rounds = List.copyOf(rounds);
        treatments = List.copyOf(treatments);
        rows = List.copyOf(rows);
        for (int i = 1; i < rounds.size(); i++) {
            if (!rounds.get(i).day().isAfter(rounds.get(i - 1).day())) {
                throw new InvalidInput(
                        "The round of %s follows that of %s; rounds must be in order."
                                .formatted(rounds.get(i).day(), rounds.get(i - 1).day()));
            }
        }
        for (Row row : rows) {
            if (row.values().size() != rounds.size()) {
                throw new InvalidInput(
                        "The row '%s' has %d values for %d rounds."
                                .formatted(row.name(), row.values().size(), rounds.size()));
            }
        }
    }
}
