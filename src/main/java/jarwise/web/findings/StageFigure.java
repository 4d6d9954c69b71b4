package jarwise.web.findings;

import jarwise.decision.Finding.Subject;
import jarwise.pest.LifeStage;
import jarwise.render.chart.StageBars;
import jarwise.render.chart.Trend;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.web.piece.Notes;
import jarwise.web.piece.Picture;
import jarwise.web.piece.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Animals counted by stage and round, and the table behind them. */
final class StageFigure {

    private final Findings findings;
    private final FindingWords say;
    private final Words words;
    private final List<Trend.Treatment> treatments;

    StageFigure(Findings findings, FindingWords say, List<Trend.Treatment> treatments) {
        this.findings = findings;
        this.say = say;
        this.words = say.words();
        this.treatments = treatments;
    }

    Optional<FindingsView.Figure> figure() {
        long animals =
                findings.stages().stream()
                        .flatMap(stage -> stage.byRound().values().stream())
                        .mapToLong(Long::longValue)
                        .sum();
        if (animals == 0) {
            return Optional.empty();
        }
        StageBars.Mix mix = mix();
        String label = words.say("findings.stages.label", pest());
        return Optional.of(
                new FindingsView.Figure(
                        words.say("findings.stages.title", say.start(pest())),
                        words.say("findings.stages.sub"),
                        new Picture(
                                List.of(
                                        new Picture.Panel(
                                                StageBars.desk(words).draw(mix, label),
                                                StageBars.phone(words).draw(mix, label)))),
                        table(),
                        Notes.of(
                                List.of(
                                        Notes.Note.of(
                                                words.say("notes.shares.title"),
                                                words.say("notes.shares")),
                                        Notes.Note.of(
                                                words.say("notes.unseen.title"),
                                                words.say("notes.unseen"))))));
    }

    private String pest() {
        return say.pest(findings.scope().subject().pest());
    }

    /** Late stages on top, as they stand on the plant: adults, pupal stages, larvae. */
    private StageBars.Mix mix() {
        Map<String, LifeStage> known = lifeStages();
        List<StageBars.Stage> rows = new ArrayList<>();
        for (Findings.StageCounts stage : findings.stages()) {
            LifeStage life = known.get(stage.lifeStage());
            if (life != null) {
                rows.add(new StageBars.Stage(say.stage(life.code()), life.mark(), counts(stage)));
            }
        }
        Collections.reverse(rows);
        Subject subject = findings.scope().subject();
        return new StageBars.Mix(
                findings.rounds().days(),
                rows,
                treatments,
                words.say("findings.stages.share", say.animals(subject)),
                known.values().stream()
                        .filter(life -> life.group().equals(subject.stageGroup()))
                        .map(LifeStage::mark)
                        .toList());
    }

    private Map<String, LifeStage> lifeStages() {
        Map<String, LifeStage> known = new HashMap<>();
        findings.rules()
                .pests()
                .find(findings.scope().subject().pest())
                .ifPresent(pest -> pest.lifeStages().forEach(life -> known.put(life.code(), life)));
        return known;
    }

    private List<OptionalInt> counts(Findings.StageCounts stage) {
        List<OptionalInt> counts = new ArrayList<>();
        for (LocalDate day : findings.rounds().days()) {
            Long there = stage.byRound().get(day);
            counts.add(
                    there == null ? OptionalInt.empty() : OptionalInt.of(Math.toIntExact(there)));
        }
        return counts;
    }

    private Table table() {
        List<String> head = new ArrayList<>();
        head.add(words.say("findings.table.day"));
        findings.stages().forEach(stage -> head.add(say.stage(stage.lifeStage())));
        Days days = new Days(words);
        List<List<String>> rows = new ArrayList<>();
        for (LocalDate day : findings.rounds().days()) {
            List<String> row = new ArrayList<>();
            row.add(days.dated(day));
            findings.stages()
                    .forEach(
                            stage ->
                                    row.add(
                                            Optional.ofNullable(stage.byRound().get(day))
                                                    .map(say.figures()::whole)
                                                    .orElse("–")));
            rows.add(row);
        }
        return new Table(words.say("findings.stages.label", pest()), head, rows);
    }
}
