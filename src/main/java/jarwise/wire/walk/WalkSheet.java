package jarwise.wire.walk;

import jarwise.plan.RoundPlan;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.SampleCode;
import jarwise.site.Bench;
import jarwise.tally.SampleEvent;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that a round needs where there is no server.
 *
 * @param plan the round
 * @param protocol how this site washes and keeps on the day of the round
 * @param benches of the site, in the order of the walk
 * @param noEntry places that may not be entered
 * @param people role codes of those who work here
 * @param steps what is on record of each jar: its steps and what was taken back
 */
public record WalkSheet(
        RoundPlan plan,
        ProtocolVersion protocol,
        List<Bench> benches,
        List<NoEntry> noEntry,
        List<String> people,
        Map<SampleCode, List<SampleEvent>> steps) {

    /**
     * A place that nobody may enter.
     *
     * @param house greenhouse
     * @param benches benches; none means the whole house
     * @param until end of the longest interval; empty where it is not known
     */
    public record NoEntry(String house, List<String> benches, Optional<Instant> until) {}

    /**
     * Who asks for the sheet, and in which language.
     *
     * @param nursery slug of the site
     * @param siteName its name
     * @param zone time zone of its clocks
     * @param now by the clock of the server: that of a device may be wrong
     * @param language of the page
     * @param person who said so at this screen; empty while nobody did
     * @param token of the page, for what is sent back
     * @param words sentences of the page, by key
     */
    public record Visitor(
            String nursery,
            String siteName,
            String zone,
            Instant now,
            String language,
            String person,
            String token,
            Map<String, String> words) {}
}
