package jarwise.wire.microscope;

import jarwise.pest.Pests;
import jarwise.plan.PlannedJar;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleCode;
import jarwise.stats.filter.FilterLayout;
import jarwise.tally.SampleEvent;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that counting filters needs where there is no server.
 *
 * @param layout the grid on the filter
 * @param filters that were planned, cut, washed or begun and are not read
 * @param read codes of filters read lately, so that a label scanned again gets an answer
 * @param pests what can be told apart
 * @param usual pests looked for where nothing else is known, the most important first
 * @param people role codes of those who work here
 */
public record MicroscopeSheet(
        FilterLayout layout,
        List<FilterToRead> filters,
        List<SampleCode> read,
        Pests pests,
        List<String> usual,
        List<String> people) {

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
     */
    public record FilterToRead(
            CollectedSample sample,
            Optional<PlannedJar> jar,
            int jars,
            Optional<Window> window,
            List<String> pests,
            int walkStart,
            List<SampleEvent> events) {}

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
     * @param language of the page
     * @param person who said so at this screen; empty while nobody did
     * @param token of the page, for what is sent back
     * @param words sentences of the page, by key
     * @param pestNames what pests are called, by code
     * @param stageNames what life stages are called, by stage code
     */
    public record Visitor(
            String nursery,
            String zone,
            String language,
            String person,
            String token,
            Map<String, String> words,
            Map<String, String> pestNames,
            Map<String, String> stageNames) {}
}
