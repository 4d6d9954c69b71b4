package jarwise.usecase.microscope;

import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.RoundQuestion;
import jarwise.sample.CollectedSample;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.SampleCode;
import jarwise.tally.SampleEvent;
import jarwise.wire.microscope.MicroscopeSheet.FilterToRead;
import jarwise.wire.microscope.MicroscopeSheet.Group;
import jarwise.wire.microscope.MicroscopeSheet.Stop;
import jarwise.wire.microscope.MicroscopeSheet.Window;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What is known of the filters that wait, from which each is laid out for its reader.
 *
 * @param protocol freezer time and the time until a filter is dry
 * @param rounds by the codes of their jars
 * @param firsts samples that are to be counted again, by code
 * @param lookedFor pests looked for
 * @param limits what each filter does to the verdict of its stand
 * @param known events on record, by code
 */
record Desk(
        ProtocolVersion protocol,
        Map<SampleCode, RoundPlan> rounds,
        Map<SampleCode, CollectedSample> firsts,
        LookedFor lookedFor,
        Map<SampleCode, StopLimits.OfFilter> limits,
        Map<SampleCode, List<SampleEvent>> known) {

    private static final StopLimits.OfFilter NO_LIMITS = new StopLimits.OfFilter(List.of(), 0);

    FilterToRead lay(CollectedSample sample) {
        SampleCode code = sample.code();
        Optional<RoundPlan> round = Optional.ofNullable(rounds.get(code));
        Optional<CollectedSample> first = sample.recountOf().map(firsts::get);
        return new FilterToRead(
                sample,
                round.flatMap(plan -> jar(plan, code)),
                round.map(plan -> plan.ofCrop().size()).orElse(0),
                window(first.orElse(sample)),
                lookedFor.on(sample),
                drawnStart(code),
                known.getOrDefault(code, List.of()),
                stop(round, limits.getOrDefault(code, NO_LIMITS)),
                first.flatMap(one -> one.reading().reader()));
    }

    private static Optional<PlannedJar> jar(RoundPlan round, SampleCode code) {
        return round.jars().stream().filter(jar -> jar.code().equals(code)).findAny();
    }

    private Optional<Window> window(CollectedSample sample) {
        return sample.times()
                .washed()
                .map(
                        washed -> {
                            Instant frozen = sample.times().freezerIn().orElse(washed);
                            return new Window(
                                    frozen.plus(protocol.freeze()),
                                    washed.plus(protocol.readWithin()));
                        });
    }

    /** Drawn from the code, so that every device walks the same filter in the same order. */
    private static int drawnStart(SampleCode code) {
        CRC32 sum = new CRC32();
        sum.update(code.text().getBytes(StandardCharsets.UTF_8));
        return (int) (sum.getValue() & Integer.MAX_VALUE);
    }

    private static Stop stop(Optional<RoundPlan> round, StopLimits.OfFilter filter) {
        boolean detection =
                round.filter(plan -> plan.question() == RoundQuestion.DETECT).isPresent();
        List<Group> groups = filter.groups().stream().map(Desk::group).toList();
        return new Stop(detection, groups, filter.othersToRead());
    }

    private static Group group(StopLimits.Limit limit) {
        return new Group(
                limit.pest(),
                limit.group(),
                limit.stages(),
                limit.belowFrom(),
                limit.below(),
                limit.above());
    }
}
