package jarwise.usecase.map;

import jarwise.decision.Finding;
import jarwise.plan.Spot;
import jarwise.site.CropLot;
import jarwise.site.PlantMove;
import jarwise.site.floor.FloorPlan;
import jarwise.site.floor.FloorPlan.PlacedBench;
import jarwise.treatment.Application;
import jarwise.usecase.findings.Findings;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A nursery from above, as one round found it.
 *
 * @param plan where everything lies
 * @param findings what is known of the round shown, and nothing else; empty where there are no
 *     animals to look for
 * @param day the round shown, or the day of the page where there is no round
 * @param walked whether the round shown has been walked; false for one that is only planned
 * @param stops every round there is to show, in order
 * @param benches every bench of the plan, in the order of the walk
 * @param extras what lies on the plan beside the benches
 */
public record CropMap(
        FloorPlan plan,
        Optional<Findings> findings,
        LocalDate day,
        boolean walked,
        List<Stop> stops,
        List<BenchState> benches,
        Extras extras) {

    public CropMap {
        stops = List.copyOf(stops);
        benches = List.copyOf(benches);
    }

    /**
     * A round that can be shown.
     *
     * @param day its day, or the Monday of its week
     * @param above benches above the line
     * @param walked whether any jar was cut; false for one that is only planned
     */
    public record Stop(LocalDate day, int above, boolean walked) {}

    /** What can be said of a bench in one round. */
    public enum Status {
        ABOVE,
        CANNOT_TELL,
        BELOW,
        NO_LINE,
        NOT_READ,
        NOT_SAMPLED,
        /** No crop is entered for it on that day. */
        EMPTY
    }

    /**
     * A bench in the round shown.
     *
     * @param placed where it stands
     * @param lots crop lots on it that day
     * @param findings one for each variety sampled, most likely above the line first
     * @param status of the first of them
     */
    public record BenchState(
            PlacedBench placed, List<CropLot> lots, List<Finding> findings, Status status) {
        public BenchState {
            lots = List.copyOf(lots);
            findings = List.copyOf(findings);
        }

        /** {@return its code} */
        public String code() {
            return placed.bench().code();
        }
    }

    /**
     * A re-entry interval that is running, or whose end nobody knows.
     *
     * @param application what was done
     * @param benches benches of the plan that nobody may go to
     * @param ends when the interval has passed; empty where it is not known
     */
    public record NoEntry(Application application, Set<String> benches, Optional<Instant> ends) {}

    /**
     * What lies on the plan beside the benches.
     *
     * @param noEntry re-entry intervals that run now
     * @param moves plants carried in the weeks before the round
     * @param places random places of the round, by bench
     */
    public record Extras(
            List<NoEntry> noEntry, List<PlantMove> moves, Map<String, List<Spot>> places) {
        public Extras {
            noEntry = List.copyOf(noEntry);
            moves = List.copyOf(moves);
            places = Map.copyOf(places);
        }
    }

    /** {@return how many benches have a status} */
    public int count(Status status) {
        return (int) benches.stream().filter(bench -> bench.status() == status).count();
    }

    /** {@return the bench with this code} */
    public Optional<BenchState> bench(String code) {
        return benches.stream().filter(bench -> bench.code().equals(code)).findFirst();
    }
}
