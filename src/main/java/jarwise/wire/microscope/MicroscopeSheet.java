package jarwise.wire.microscope;

import jarwise.pest.Pests;
import jarwise.plan.PlannedJar;
import jarwise.sample.CollectedSample;
import jarwise.sample.SeededFilter;
import jarwise.stats.filter.FilterLayout;
import jarwise.tally.SampleEvent;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Everything that counting filters needs where there is no server.
 *
 * @param layout the grid on the filter
 * @param filters that were planned, cut, washed or begun and are not read
 * @param read jars read lately: a label scanned again gets an answer, and a jar may be washed again
 * @param seeded filters in use of which is known what lies on them
 * @param pests what can be told apart
 * @param usual pests looked for where nothing else is known, the most important first
 * @param people role codes of those who work here
 * @param rules how this site reads filters
 * @param secondsPerCell how long a cell takes each reader; under the empty text: anybody else
 */
public record MicroscopeSheet(
        FilterLayout layout,
        List<FilterToRead> filters,
        List<CollectedSample> read,
        List<SeededFilter> seeded,
        Pests pests,
        List<String> usual,
        List<String> people,
        Rules rules,
        Map<String, Double> secondsPerCell) {

    /**
     * How a site reads filters.
     *
     * @param passes passes that make a whole filter, 1 or more
     * @param wantedRelativeError standard error over estimate that is good enough
     * @param minutesAllowed minutes for one filter
     */
    public record Rules(
            int passes, OptionalDouble wantedRelativeError, OptionalDouble minutesAllowed) {}

    /**
     * A filter to read.
     *
     * @param sample what is known of it
     * @param jar the jar of its round, where it was planned
     * @param jars how many crop jars that round has
     * @param window when it may be read, where it was washed
     * @param pests codes looked for on it, the most important first
     * @param walkStart where its first pass starts
     * @param events what is on record of it, presses of all devices among them
     * @param stop when one may stop
     * @param notBy who counted first, where it is to be counted again
     */
    public record FilterToRead(
            CollectedSample sample,
            Optional<PlannedJar> jar,
            int jars,
            Optional<Window> window,
            List<String> pests,
            int walkStart,
            List<SampleEvent> events,
            Stop stop,
            Optional<String> notBy) {}

    /**
     * When one may stop on a filter.
     *
     * @param detection whether the round asks if a pest is there: then never on a zero
     * @param groups the kinds of animals with a line, and what this filter does to their verdict
     * @param othersToRead other filters of the same stand and round that wait
     */
    public record Stop(boolean detection, List<Group> groups, int othersToRead) {}

    /**
     * A kind of animal with a line. Numbers are of individuals on the whole filter.
     *
     * @param pest pest code
     * @param group stages that are added up
     * @param stages codes of these stages
     * @param belowFrom smallest number with which the verdict is below the line, where any is
     * @param below largest number with which it is; empty if with none
     * @param above smallest number from which on it is above the line; empty if with none
     */
    public record Group(
            String pest,
            String group,
            List<String> stages,
            int belowFrom,
            OptionalInt below,
            OptionalInt above) {}

    /**
     * When a filter may be read.
     *
     * @param earliest end of the freezer time
     * @param readBy when it has dried out
     */
    public record Window(Instant earliest, Instant readBy) {}

    /**
     * Who asks for the filters, and in which language.
     *
     * @param nursery slug of the site
     * @param zone time zone of its clocks
     * @param now by the clock of the server: that of a device may be wrong
     * @param language of the page
     * @param person who said so at this screen; empty while nobody did
     * @param token of the page, for what is sent back
     * @param program tells one version of the page's program from another
     * @param words sentences of the page, by key
     * @param pestNames what pests are called, by code
     * @param stageNames what life stages are called, by stage code
     */
    public record Visitor(
            String nursery,
            String zone,
            Instant now,
            String language,
            String person,
            String token,
            String program,
            Map<String, String> words,
            Map<String, String> pestNames,
            Map<String, String> stageNames) {}
}
