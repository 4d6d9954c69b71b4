package jarwise.web.quality;

import jarwise.decision.Finding.Subject;
import jarwise.pest.Pests;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Figures;
import jarwise.sample.DetectionValue;
import jarwise.tally.StageKey;
import jarwise.usecase.quality.KnownFinds;
import jarwise.usecase.quality.MeasuredShare;
import jarwise.web.Frame;
import java.time.LocalDate;

/**
 * Sentences of the quality page.
 *
 * @param frame the reader's language and clocks
 * @param pests names of what can be counted
 */
record QualityWords(Frame frame, Pests pests) {

    FindingWords finding() {
        return new FindingWords(frame.words(), pests);
    }

    Figures figures() {
        return new Figures(frame.words());
    }

    /** {@return "larvae of western flower thrips"} */
    String subject(Subject subject) {
        return finding().subject(subject);
    }

    /** {@return "1 second-stage larva of western flower thrips"} */
    String found(StageKey stage, long individuals) {
        return frame.say(
                "quality.blanks.found",
                figures().whole(individuals),
                finding().stage(stage.lifeStage()),
                finding().pest(stage.pest()));
    }

    /** {@return "SC-2" or "soap"} */
    String whose(DetectionValue.Kind kind, String whose) {
        return kind == DetectionValue.Kind.READER ? whose : frame.say("fluid." + whose);
    }

    /** {@return "SC-2, larvae of western flower thrips"} */
    String name(MeasuredShare share) {
        return frame.say(
                "quality.name", whose(share.kind(), share.whose()), subject(share.subject()));
    }

    /** {@return "82 of 100"} */
    String ofHundred(double share) {
        return frame.say("quality.of-hundred", figures().whole(Math.round(100 * share)));
    }

    /** {@return "75 to 88", rounded outward} */
    String limits(double lower, double upper) {
        return frame.say(
                "quality.limits",
                figures().whole((long) Math.floor(100 * lower)),
                figures().whole((long) Math.ceil(100 * upper)));
    }

    /** {@return "3 March to 6 May 2026", or the one day} */
    String days(LocalDate first, LocalDate last) {
        Days days = new Days(frame.words());
        return first.equals(last)
                ? days.dated(first)
                : frame.say("quality.days", days.dated(first), days.dated(last));
    }

    /** {@return "13 seeded filters" or "2 spikes"} */
    String readings(DetectionValue.Kind kind, long readings) {
        return figures()
                .counted(
                        kind == DetectionValue.Kind.READER
                                ? "quality.seeded.count"
                                : "quality.spikes.count",
                        readings);
    }

    /** {@return where an adopted value comes from} */
    String source(MeasuredShare share) {
        String washes =
                share.washSeries() == 0
                        ? ""
                        : figures().counted("quality.washes.count", share.washSeries());
        if (share.finds().isEmpty()) {
            return frame.say("quality.source.washes", washes);
        }
        KnownFinds finds = share.finds().get();
        return washes.isEmpty()
                ? frame.say(
                        "quality.source",
                        readings(share.kind(), finds.readings()),
                        days(finds.first(), finds.last()))
                : frame.say(
                        "quality.source.both",
                        readings(share.kind(), finds.readings()),
                        days(finds.first(), finds.last()),
                        washes);
    }

    /** {@return "61 of 67" or "60 %"} */
    String value(DetectionValue value) {
        return value.value().isPresent()
                ? figures().percent(value.value().getAsDouble())
                : frame.say(
                        "settings.share.found",
                        figures().whole(Math.round(value.found().orElse(0))),
                        figures().whole(Math.round(value.known().orElse(0))));
    }
}
