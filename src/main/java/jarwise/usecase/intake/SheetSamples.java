package jarwise.usecase.intake;

import jarwise.base.InvalidInput;
import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.tally.Facts;
import jarwise.tally.StageKey;
import jarwise.usecase.intake.SheetSample.SheetCount;
import jarwise.wire.sheet.CountCell;
import jarwise.wire.sheet.CountRow;
import jarwise.wire.sheet.CountSheet;
import jarwise.wire.sheet.KnownColumn;
import jarwise.wire.sheet.SheetColumns;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Puts the rows of a sheet together to samples; every fault is named, and any refuses it whole. */
final class SheetSamples {

    /** More would be a wrong column, not a nursery. */
    private static final int MOST_SAMPLES = 1_000_000;

    private static final String OBSCURED = Facts.OTHER + "obscured";

    private final CountSheet sheet;
    private final PestWords words;
    private final RowFacts rowFacts;
    private final Faults faults = new Faults();
    private final List<SheetSample> samples = new ArrayList<>();
    private final String name;

    private SheetSamples(CountSheet sheet, PestWords words, String name) {
        this.sheet = sheet;
        this.words = words;
        this.name = name;
        this.rowFacts = new RowFacts(words.choices(), faults);
    }

    /**
     * Reads the samples off a sheet.
     *
     * @param sheet its rows, without fault so far
     * @param words what its pests and stages are called
     * @param name what the codes of samples begin with that have none of their own
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    static List<SheetSample> of(CountSheet sheet, PestWords words, String name) {
        SheetSamples reader = new SheetSamples(sheet, words, name);
        reader.read();
        reader.faults.refuseIfAny();
        return reader.samples;
    }

    /** {@return whether samples are told by codes of the sheet's own} */
    static boolean hasCodes(SheetColumns columns) {
        return columns.index(KnownColumn.SAMPLE).isPresent();
    }

    private void read() {
        boolean coded = hasCodes(sheet.columns());
        Map<String, List<CountRow>> rowsOfSample = new LinkedHashMap<>();
        int place = 0;
        int lastRow = 0;
        for (CountRow row : sheet.rows()) {
            place += row.row() == lastRow ? 0 : 1;
            lastRow = row.row();
            String key = coded ? row.text(KnownColumn.SAMPLE) : String.valueOf(place);
            if (key.isEmpty()) {
                add(row, KnownColumn.SAMPLE, "", FaultKind.SAMPLE_BLANK);
            } else {
                rowsOfSample.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
            }
        }
        rowsOfSample.forEach((key, rows) -> addSamples(coded, key, rows));
    }

    private void addSamples(boolean coded, String key, List<CountRow> rows) {
        CountRow first = rows.get(0);
        if (coded && first.frequency() != 1) {
            add(first, KnownColumn.SAMPLE, key, FaultKind.FREQUENCY_OF_ONE_SAMPLE);
            return;
        }
        if (samples.size() + first.frequency() > MOST_SAMPLES) {
            add(first, KnownColumn.COUNT, key, FaultKind.SAMPLES_TOO_MANY, "" + MOST_SAMPLES);
            return;
        }
        Map<Step, Map<String, String>> facts = facts(rows);
        List<SheetCount> counts = counts(rows);
        for (long copy = 1; copy <= first.frequency(); copy++) {
            boolean repeated = sheet.columns().mapping().frequency().isPresent();
            String code = coded ? key : name + "-" + key + (repeated ? "." + copy : "");
            code(first, code)
                    .ifPresent(c -> samples.add(new SheetSample(c, first.row(), facts, counts)));
        }
    }

    private Optional<SampleCode> code(CountRow row, String text) {
        try {
            return Optional.of(new SampleCode(text));
        } catch (InvalidInput e) {
            add(row, KnownColumn.SAMPLE, text, FaultKind.SAMPLE_CODE_UNUSABLE);
            return Optional.empty();
        }
    }

    private Map<Step, Map<String, String>> facts(List<CountRow> rows) {
        CountRow first = rows.get(0);
        Map<Step, Map<String, String>> facts = rowFacts.of(first);
        int checked = first.row();
        for (CountRow row : rows) {
            if (row.row() != checked) {
                checked = row.row();
                agree(first, facts, row, rowFacts.of(row));
            }
        }
        rows.stream()
                .filter(row -> row.count().isCounted())
                .findFirst()
                .ifPresent(read -> facts.put(Step.READ, RowFacts.reading(read)));
        noteObscured(facts, rows);
        return facts;
    }

    /** A stage that could not be read is neither a zero nor a stage nobody looked for. */
    private void noteObscured(Map<Step, Map<String, String>> facts, List<CountRow> rows) {
        String obscured =
                rows.stream()
                        .filter(row -> row.count().state() == CountCell.State.OBSCURED)
                        .flatMap(row -> key(row).stream())
                        .map(key -> key.pest() + " " + key.lifeStage())
                        .collect(Collectors.joining(", "));
        if (!obscured.isEmpty()) {
            facts.computeIfAbsent(Step.REGISTERED, step -> new TreeMap<>()).put(OBSCURED, obscured);
        }
    }

    private void agree(
            CountRow first,
            Map<Step, Map<String, String>> facts,
            CountRow row,
            Map<Step, Map<String, String>> others) {
        Map<String, String> one = flat(facts, RowFacts.reading(first));
        Map<String, String> other = flat(others, RowFacts.reading(row));
        for (String fact : union(one, other)) {
            String a = one.getOrDefault(fact, "");
            String b = other.getOrDefault(fact, "");
            if (!a.equals(b)) {
                faults.add(
                        Fault.in(
                                row.row(),
                                fact.replaceFirst("^other:", ""),
                                b,
                                FaultKind.SAMPLE_DISAGREES,
                                String.valueOf(first.row()),
                                a,
                                row.text(KnownColumn.SAMPLE)));
            }
        }
    }

    private static Iterable<String> union(Map<String, String> one, Map<String, String> other) {
        TreeMap<String, String> both = new TreeMap<>(one);
        both.putAll(other);
        return both.keySet();
    }

    private static Map<String, String> flat(
            Map<Step, Map<String, String>> facts, Map<String, String> reading) {
        Map<String, String> flat = new TreeMap<>(reading);
        facts.forEach((step, noted) -> flat.putAll(noted));
        return flat;
    }

    private List<SheetCount> counts(List<CountRow> rows) {
        Map<StageKey, CountRow> seen = new LinkedHashMap<>();
        List<SheetCount> counts = new ArrayList<>();
        for (CountRow row : rows) {
            Optional<StageKey> key = key(row);
            if (key.isEmpty()) {
                continue;
            }
            CountRow before = seen.putIfAbsent(key.get(), row);
            if (before != null) {
                add(
                        row,
                        KnownColumn.COUNT,
                        String.valueOf(row.count().individuals()),
                        FaultKind.COUNTED_TWICE,
                        row.text(KnownColumn.SAMPLE),
                        key.get().pest() + " " + key.get().lifeStage(),
                        String.valueOf(before.row()));
            } else if (row.count().isCounted()) {
                counts.add(new SheetCount(key.get(), row.count().individuals(), row.row()));
            }
        }
        return counts;
    }

    private Optional<StageKey> key(CountRow row) {
        String pestWord = row.text(KnownColumn.PEST);
        String named = pestWord.isEmpty() ? words.choices().unnamed().pest().orElse("") : pestWord;
        Optional<Pest> pest = words.pest(named);
        if (pest.isEmpty()) {
            add(row, KnownColumn.PEST, named, FaultKind.PEST_UNKNOWN, words.codes());
            return Optional.empty();
        }
        String stageWord = row.text(KnownColumn.STAGE);
        String meant =
                stageWord.isEmpty() ? words.choices().unnamed().stage().orElse("") : stageWord;
        Optional<LifeStage> stage = words.stage(pest.get(), meant);
        if (stage.isEmpty()) {
            add(
                    row,
                    KnownColumn.STAGE,
                    meant,
                    FaultKind.STAGE_UNKNOWN,
                    pest.get().code(),
                    PestWords.stagesOf(pest.get()));
        }
        return stage.map(found -> new StageKey(pest.get().code(), found.code()));
    }

    private void add(
            CountRow row, KnownColumn column, String value, FaultKind kind, String... arguments) {
        String name = sheet.columns().mapping().of(column).orElseGet(() -> column.text());
        faults.add(Fault.in(row.row(), name, value, kind, arguments));
    }
}
