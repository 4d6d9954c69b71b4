package jarwise.usecase.findings;

import jarwise.decision.Evidence;
import jarwise.decision.Evidence.Flag;
import jarwise.decision.Evidence.LeftOut;
import jarwise.sample.CollectedSample;
import jarwise.sample.Fill;
import jarwise.sample.Fluid;
import jarwise.sample.ProtocolVersion;
import jarwise.sample.Purpose;
import jarwise.sample.SampleState;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/** Sorts the samples of a group into those that enter the mean and those that do not, and why. */
public final class Sorting {

    private static final Set<SampleState> GONE =
            EnumSet.of(SampleState.LOST, SampleState.SPILLED, SampleState.DISCARDED);
    private static final Set<SampleState> READ =
            EnumSet.of(SampleState.READ, SampleState.PARTLY_READ);

    private final Group group;
    private final ProtocolVersion protocol;
    private final List<CollectedSample> used = new ArrayList<>();
    private final Map<LeftOut, Integer> leftOut = new EnumMap<>(LeftOut.class);
    private final Map<Flag, Integer> flags = new EnumMap<>(Flag.class);
    private int notRead;

    /** Sorts a group by the protocol of its day. */
    public Sorting(Group group, ProtocolVersion protocol) {
        this.group = group;
        this.protocol = protocol;
        group.samples().forEach(this::sort);
    }

    /** {@return samples that enter the mean} */
    public List<CollectedSample> used() {
        return used;
    }

    /** {@return what was counted in one of the samples that enter the mean} */
    public long individualsIn(CollectedSample sample) {
        return Objects.requireNonNull(group.individuals().get(sample.code()));
    }

    /** {@return how many there are of each kind} */
    public Evidence evidence() {
        return new Evidence(
                used.size(),
                used.stream().mapToDouble(CollectedSample::samplingUnits).sum(),
                used.stream().mapToLong(this::individualsIn).sum(),
                notRead,
                leftOut,
                flags);
    }

    private void sort(CollectedSample sample) {
        if (sample.purpose() == Purpose.TARGETED) {
            leftOut.merge(LeftOut.TARGETED, 1, Integer::sum);
        } else if (GONE.contains(sample.state())) {
            leftOut.merge(LeftOut.LOST, 1, Integer::sum);
        } else if (!READ.contains(sample.state())) {
            notRead++;
        } else if (!group.individuals().containsKey(sample.code())
                || !(sample.reading().filterShare() > 0)) {
            leftOut.merge(LeftOut.NOT_LOOKED_FOR, 1, Integer::sum);
        } else if (sample.wash().fluid().equals(Optional.of(Fluid.WATER))) {
            leftOut.merge(LeftOut.PLAIN_WATER, 1, Integer::sum);
        } else {
            used.add(sample);
            flagsOf(sample, protocol).forEach(flag -> flags.merge(flag, 1, Integer::sum));
        }
    }

    /** {@return what was off with a sample} */
    static Set<Flag> flagsOf(CollectedSample sample, ProtocolVersion protocol) {
        Set<Flag> flags = EnumSet.noneOf(Flag.class);
        if (sample.wash().fill().equals(Optional.of(Fill.PACKED))) {
            flags.add(Flag.PACKED);
        }
        if (sample.reading().filterShare() < 1) {
            flags.add(Flag.PARTLY_READ);
        }
        Optional<Instant> read = sample.times().read();
        if (read.isPresent()) {
            if (sample.times()
                    .washed()
                    .map(washed -> read.get().isAfter(washed.plus(protocol.readWithin())))
                    .orElse(false)) {
                flags.add(Flag.LATE);
            }
            if (sample.times()
                    .freezerIn()
                    .map(frozen -> read.get().isBefore(frozen.plus(protocol.freeze())))
                    .orElse(false)) {
                flags.add(Flag.EARLY);
            }
        }
        return flags;
    }
}
