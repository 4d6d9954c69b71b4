package jarwise.usecase.pattern;

import jarwise.base.Message;
import jarwise.stats.count.CountData;
import jarwise.stats.count.CountFit;
import jarwise.stats.count.Observation;
import jarwise.stats.space.BenchCount;
import jarwise.stats.space.MoranTest;
import jarwise.stats.space.Neighbours;
import jarwise.stats.space.NewNextToOld;
import jarwise.stats.space.ShareOfBenches;
import jarwise.usecase.SheetRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Says where on the map the counts of a sheet are.
 *
 * @param round the round it is about, empty if the sheet has none
 * @param benches its benches, sorted by house and name
 * @param share share of benches with a find
 * @param moran whether dense benches lie together
 * @param earlier the round before, if there is one
 * @param newNextToOld whether new finds lie beside the old ones of the round before
 * @param warnings what a person should know, a sentence each
 * @param notes what a person should know about how the sheet was read
 */
public record MapSpread(
        String round,
        List<BenchCount> benches,
        ShareOfBenches share,
        MoranTest moran,
        Optional<String> earlier,
        Optional<NewNextToOld> newNextToOld,
        List<String> warnings,
        List<Message> notes) {

    /** Under so many benches the test of Moran's I says little; our choice. */
    private static final int FEW_BENCHES = 10;

    /**
     * Reads a sheet and describes its last round; where it has more, the last against the one
     * before.
     *
     * @param request the sheet
     * @param options how it is read as a map
     * @return what was found
     */
    public static MapSpread run(SheetRequest request, SpreadOptions options) {
        BenchRounds read = BenchRounds.read(request, options);
        Map<String, BenchCount> last = read.rounds().lastEntry().getValue();
        List<BenchCount> benches = List.copyOf(last.values());
        Neighbours neighbours = Neighbours.of(benches, options.reach());
        MoranTest moran =
                MoranTest.of(
                        benches.stream().mapToDouble(BenchCount::logDensity).toArray(),
                        neighbours,
                        options.permutations());
        Optional<Map.Entry<RoundName, Map<String, BenchCount>>> entry =
                Optional.ofNullable(read.rounds().lowerEntry(read.rounds().lastKey()));
        Optional<RoundName> before = entry.map(Map.Entry::getKey);
        Optional<NewNextToOld> joins =
                entry.map(
                        earlier ->
                                NewNextToOld.of(
                                        earlier.getValue(),
                                        last,
                                        all -> Neighbours.of(all, options.reach()),
                                        options.permutations()));
        String round = read.rounds().lastKey().text();
        List<String> warnings = new ArrayList<>();
        warnRounds(read.rounds().size(), round, before, warnings);
        warnMoran(moran, neighbours, warnings);
        joins.ifPresent(test -> warnJoins(test, warnings));
        ShareOfBenches share = share(benches, options);
        if (Double.isInfinite(share.k()) && options.k().isEmpty()) {
            warnings.add("No k of the benches: they differ no more than by chance.");
        }
        return new MapSpread(
                round,
                benches,
                share,
                moran,
                before.map(RoundName::text),
                joins,
                warnings,
                read.notes());
    }

    private static ShareOfBenches share(List<BenchCount> benches, SpreadOptions options) {
        double mean = benches.stream().mapToDouble(BenchCount::effort).sum() / benches.size();
        double k =
                options.k()
                        .orElseGet(
                                () ->
                                        CountFit.of(CountData.of(observations(benches)))
                                                .kOrInfinity());
        return ShareOfBenches.of(benches, k, options.effort().orElse(mean));
    }

    private static List<Observation> observations(List<BenchCount> benches) {
        return benches.stream()
                .map(bench -> Observation.of(bench.individuals(), bench.effort()))
                .toList();
    }

    private static void warnRounds(
            int rounds, String round, Optional<RoundName> before, List<String> warnings) {
        if (rounds > 2) {
            warnings.add(
                    ("The sheet has %d rounds; this is about the last, %s, and its new finds"
                                    + " against %s.")
                            .formatted(rounds, round, before.map(RoundName::text).orElse("")));
        }
    }

    private static void warnMoran(MoranTest moran, Neighbours neighbours, List<String> warnings) {
        if (neighbours.pairs() == 0) {
            warnings.add(
                    "No Moran's I: no bench has a neighbour. Maybe a longer --reach, in the unit of"
                            + " the places.");
        } else if (moran.index().isEmpty()) {
            warnings.add("No Moran's I: all benches are the same.");
        } else if (neighbours.alone() > 0) {
            warnings.add(
                    "Benches without a neighbour: %d. They count for the mean only."
                            .formatted(neighbours.alone()));
        }
        if (moran.index().isPresent() && neighbours.benches() < FEW_BENCHES) {
            warnings.add(
                    "Fewer than 10 benches: only a strong pattern can show, and none shown is no"
                            + " proof of none.");
        }
    }

    private static void warnJoins(NewNextToOld joins, List<String> warnings) {
        if (joins.pValue().isPresent()) {
            return;
        }
        if (joins.newBenches() == 0 || joins.newBenches() == joins.couldTurn()) {
            warnings.add(
                    "No p for new next to old: of the %d benches that could turn, %d did."
                            .formatted(joins.couldTurn(), joins.newBenches()));
        } else {
            warnings.add(
                    "No p for new next to old: every bench that could turn has as many old ones"
                            + " beside it.");
        }
    }
}
