package jarwise.web.samples;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.render.chart.StageMarks;
import jarwise.render.words.Figures;
import jarwise.sample.CollectedSample;
import jarwise.sample.Fluid;
import jarwise.sample.Step;
import jarwise.tally.Deed;
import jarwise.tally.Facts;
import jarwise.tally.SampleEvent;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import jarwise.usecase.samples.ListSamples;
import jarwise.usecase.samples.SampleLog;
import jarwise.usecase.samples.ShowSample;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What the page of one sample shows.
 *
 * @param frame the reader's language and clocks
 * @param shown the sample
 * @param form the form that was refused, if one was
 * @param offers places, readers and pests to offer
 */
public record SampleView(
        Frame frame, ShowSample.Shown shown, Form form, ListSamples.Offers offers) {

    /** One station of the life line: what, when, whether it is reached, and a remark. */
    public record Station(String name, String when, boolean reached, String flag) {}

    /** One stage counted: who, how many, and the mark that stands for it. */
    public record Count(StageKey key, String stage, String pest, String mark, String number) {}

    /** {@return the sample itself} */
    public CollectedSample sample() {
        return shown.fold().sample();
    }

    /** {@return words for what happened} */
    public DeedWords words() {
        return new DeedWords(frame, shown.pests());
    }

    /** {@return what was found in it, as a sentence} */
    public String answer() {
        String code = sample().code().text();
        List<Count> counts = counts();
        if (counts.isEmpty() || SampleLog.hasEnded(shown.fold())) {
            return frame.say("sample.answer." + Fields.wordOf(sample().state()), code);
        }
        return FoundWords.of(frame, code, counts);
    }

    /** {@return where it was cut and from how much, as a sentence} */
    public String whereFrom() {
        CollectedSample sample = sample();
        List<String> parts = new ArrayList<>();
        parts.add(words().value(Facts.METHOD, Fields.wordOf(sample.method())));
        sample.place().variety().ifPresent(parts::add);
        sample.place().bench().ifPresent(parts::add);
        sample.collectedOn().ifPresent(day -> parts.add(frame.day(day)));
        parts.add(
                frame.say(
                        "sample.units",
                        sample.samplingUnits(),
                        new Figures(frame.words()).plain(sample.samplingUnits())));
        return String.join(", ", parts);
    }

    /** {@return warnings that belong to it: fluid, targeted, roles} */
    public List<String> cautions() {
        List<String> cautions = new ArrayList<>();
        Optional<Fluid> fluid = sample().wash().fluid();
        if (fluid.equals(Optional.of(Fluid.WATER))) {
            cautions.add(frame.say("sample.water"));
        }
        if (Fields.wordOf(sample().purpose()).equals("targeted")) {
            cautions.add(frame.say("sample.targeted"));
        }
        if (!Fields.wordOf(sample().role()).equals("crop")) {
            cautions.add(frame.say("sample.not-crop"));
        }
        return cautions;
    }

    /** {@return whether it was washed in alcohol, which has its own caution} */
    public boolean alcohol() {
        return sample().wash().fluid().equals(Optional.of(Fluid.ALCOHOL));
    }

    /** {@return the stations of its life, in order} */
    public List<Station> life() {
        CollectedSample.Times times = sample().times();
        Instant now = frame.now().toInstant();
        String early = shown.life().readEarly() ? frame.say("sample.read-early") : "";
        String late = shown.life().readLate() ? frame.say("sample.read-late") : early;
        boolean open = counts().isEmpty();
        String overdue = open && shown.life().isOverdueAt(now) ? frame.say("sample.overdue") : "";
        return List.of(
                station("life.cut", times.cut(), Step.CUT, ""),
                station("life.washed", times.washed(), Step.WASHED, ""),
                station("life.freezer-in", times.freezerIn(), Step.FREEZER_IN, ""),
                limit("life.readable", shown.life().earliestRead(), now, ""),
                station("life.read", times.read(), Step.READ, late),
                limit("life.read-by", shown.life().readBy(), now, overdue));
    }

    private Station station(String key, Optional<Instant> at, Step step, String flag) {
        boolean taken =
                at.isPresent()
                        || shown.fold().history().stream().anyMatch(event -> isStep(event, step));
        String when =
                at.map(frame::moment)
                        .orElse(taken ? frame.say("life.no-time") : frame.say("life.not-yet"));
        return new Station(frame.say(key), when, taken, flag);
    }

    private Station limit(String key, Optional<Instant> at, Instant now, String flag) {
        boolean reached = at.map(limit -> !limit.isAfter(now)).orElse(false);
        String when = at.map(frame::moment).orElse(frame.say("life.unknown"));
        return new Station(frame.say(key), when, reached, flag);
    }

    private static boolean isStep(SampleEvent event, Step step) {
        return event.deed() instanceof Deed.StepTaken taken && taken.step() == step;
    }

    /** {@return every stage that was read, zeros included, pest by pest} */
    public List<Count> counts() {
        List<Count> counts = new ArrayList<>();
        for (Pest pest : shown.pestsRead()) {
            for (LifeStage stage : pest.lifeStages()) {
                StageKey key = new StageKey(pest.code(), stage.code());
                OptionalLong number = shown.fold().tally().of(key);
                if (number.isPresent()) {
                    counts.add(
                            new Count(
                                    key,
                                    frame.stageName(stage.code()),
                                    frame.pestName(pest),
                                    StageMarks.draw(stage.mark()),
                                    String.valueOf(number.getAsLong())));
                }
            }
        }
        return counts;
    }

    /** {@return stages of the pests read that were not read themselves} */
    public List<String> notRead() {
        List<String> stages = new ArrayList<>();
        for (Pest pest : shown.pestsRead()) {
            for (LifeStage stage : pest.lifeStages()) {
                StageKey key = new StageKey(pest.code(), stage.code());
                if (shown.fold().tally().of(key).isEmpty()) {
                    stages.add(words().stage(pest.code(), stage.code()));
                }
            }
        }
        return stages;
    }

    /** {@return what is unsure, and what it can turn out to be} */
    public UnsureView unsure() {
        return new UnsureView(frame, shown);
    }

    /** {@return the finds that were kept} */
    public VoucherView vouchers() {
        return new VoucherView(frame, shown);
    }

    /** {@return what was counted and is in no number} */
    public AsideView aside() {
        return new AsideView(frame, shown);
    }

    /** {@return a fact of the sample as it may be corrected} */
    public String fact(String name) {
        return form.named("correct")
                .typedOr(name, Optional.ofNullable(facts().get(name)).orElse(""));
    }

    private Map<String, String> facts() {
        Map<String, String> facts = new HashMap<>();
        for (SampleEvent event : SampleLog.standing(shown.fold())) {
            if (event.deed() instanceof Deed.StepTaken step) {
                facts.putAll(step.facts());
            }
        }
        return facts;
    }

    /** {@return everything that happened, the latest first} */
    public List<HistoryRow> history() {
        return HistoryRow.of(shown.fold().history());
    }
}
