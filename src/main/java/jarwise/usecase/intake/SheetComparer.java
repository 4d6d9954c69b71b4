package jarwise.usecase.intake;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.site.Bench;
import jarwise.site.CropLot;
import jarwise.site.House;
import jarwise.store.EventStore;
import jarwise.store.ImportStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.tally.Facts;
import jarwise.tally.ImportBatch;
import jarwise.tally.ImportRow;
import jarwise.tally.SampleEvent;
import jarwise.usecase.intake.ImportPlan.NamedIn;
import jarwise.usecase.intake.ImportPlan.NewPlaces;
import jarwise.wire.sheet.CountSheet;
import jarwise.wire.sheet.SheetReader;
import jarwise.wire.table.TableRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Reads a sheet and holds it against what is on record.
 *
 * @param events what happened to samples
 * @param imports earlier sheets
 * @param pests pests and their stages
 * @param sites houses, benches and crop lots
 */
record SheetComparer(EventStore events, ImportStore imports, PestStore pests, SiteStore sites) {

    ImportPlan plan(String nursery, SheetFile file, ImportChoices choices) {
        CountSheet sheet = SheetReader.samples(file.table(), choices.mapping());
        EarlierSheets earlier = new EarlierSheets(imports, events, nursery, file.header());
        boolean coded = SheetSamples.hasCodes(sheet.columns());
        Optional<String> grownFrom =
                coded || choices.asNew()
                        ? Optional.empty()
                        : earlier.continued(file.table().rows());
        String name = grownFrom.orElseGet(() -> earlier.freeName(file.shortName()));
        PestWords words = new PestWords(pests.pests().all(), choices);
        List<SheetSample> samples = SheetSamples.of(sheet, words, name);
        List<ImportRow> rows = rows(file, samples, coded, name);
        return new ImportPlan(
                file.header(),
                Comparison.ofAll(
                        samples,
                        eventsOf(nursery, samples),
                        takenBack(nursery),
                        choices.unnamed().day()),
                earlier.gone(rows),
                newPlaces(nursery, samples),
                rows,
                grownFrom.orElse(""),
                sheet.notes());
    }

    private Map<SampleCode, List<SampleEvent>> eventsOf(String nursery, List<SheetSample> samples) {
        return events.ofSamples(nursery, samples.stream().map(SheetSample::code).toList());
    }

    private Set<String> takenBack(String nursery) {
        return imports.batches(nursery).stream()
                .filter(batch -> batch.takenBack().isPresent())
                .map(ImportBatch::id)
                .collect(Collectors.toSet());
    }

    private static List<ImportRow> rows(
            SheetFile file, List<SheetSample> samples, boolean coded, String name) {
        Map<Integer, Integer> placeOfRow = new HashMap<>();
        List<TableRow> table = file.table().rows();
        for (int i = 0; i < table.size(); i++) {
            placeOfRow.put(table.get(i).row(), i + 1);
        }
        Map<Integer, Integer> parts = new HashMap<>();
        List<ImportRow> rows = new ArrayList<>();
        for (SheetSample sample : samples) {
            for (SheetSample.SheetCount count : sample.counts()) {
                int place = Objects.requireNonNull(placeOfRow.get(count.row()));
                int part = parts.merge(place, 1, Integer::sum);
                rows.add(
                        new ImportRow(
                                place,
                                part,
                                EarlierSheets.key(coded, name, place, sample.code()),
                                EarlierSheets.text(table.get(place - 1).cells()),
                                sample.code(),
                                count.key()));
            }
        }
        return rows;
    }

    private NewPlaces newPlaces(String nursery, List<SheetSample> samples) {
        TreeSet<String> houses = new TreeSet<>();
        TreeMap<String, String> benches = new TreeMap<>();
        TreeMap<String, String> varieties = new TreeMap<>();
        for (SheetSample sample : samples) {
            Map<String, String> facts =
                    Objects.requireNonNullElse(
                            sample.facts().get(Step.REGISTERED), Map.<String, String>of());
            String house = facts.getOrDefault(Facts.HOUSE, "");
            String bench = facts.getOrDefault(Facts.BENCH, "");
            String variety = facts.getOrDefault(Facts.VARIETY, "");
            add(benches, bench, house.isEmpty() ? houseIn(bench) : house);
            if (!bench.isEmpty() || !house.isEmpty()) {
                houses.add(house.isEmpty() ? houseIn(bench) : house);
            }
            add(varieties, variety, facts.getOrDefault(Facts.CROP, ""));
        }
        sites.houses(nursery).stream().map(House::code).forEach(houses::remove);
        sites.benches(nursery).stream().map(Bench::code).forEach(benches::remove);
        sites.cropLots(nursery).stream().map(CropLot::variety).forEach(varieties::remove);
        return new NewPlaces(List.copyOf(houses), named(benches), named(varieties));
    }

    private static void add(Map<String, String> names, String name, String within) {
        if (!name.isEmpty()) {
            names.putIfAbsent(name, within);
        }
    }

    /** P1-B3 mostly stands in P1; a bench without such a code is put in a house of its own name. */
    private static String houseIn(String bench) {
        int dash = bench.indexOf('-');
        return dash > 0 ? bench.substring(0, dash) : bench;
    }

    private static List<NamedIn> named(Map<String, String> names) {
        return names.entrySet().stream()
                .map(entry -> new NamedIn(entry.getKey(), entry.getValue()))
                .toList();
    }
}
