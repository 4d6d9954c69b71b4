package jarwise.web.quality;

import jarwise.decision.Finding.Subject;
import jarwise.sample.DetectionValue;
import jarwise.usecase.quality.AdoptMeasured;
import jarwise.usecase.quality.Blanks;
import jarwise.usecase.quality.MeasuredShare;
import jarwise.usecase.quality.Quality;
import jarwise.web.Frame;
import jarwise.web.piece.Form;
import jarwise.web.piece.Picture;
import jarwise.web.piece.Reason;
import jarwise.web.piece.Table;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What the quality page shows, in the reader's words. */
public final class QualityView {

    private final Frame frame;
    private final Quality quality;
    private final Form form;
    private final QualityWords words;
    private final ShareRows shares;

    QualityView(Frame frame, Quality quality, Form form) {
        this.frame = frame;
        this.quality = quality;
        this.form = form;
        this.words = new QualityWords(frame, quality.rules().pests());
        this.shares = new ShareRows(quality, words);
    }

    /**
     * A value that is or was in use.
     *
     * @param key its share's name in forms
     * @param since its first day, as forms have it
     * @param name whose, and which animals
     * @param value found of known, or one share
     * @param from its first day in words
     * @param ended when it ended; empty where it did not
     * @param source where it comes from
     */
    public record Adopted(
            String key,
            String since,
            String name,
            String value,
            String from,
            String ended,
            String source) {}

    /**
     * A blank in which something was found.
     *
     * @param code on its label
     * @param day when it was washed
     * @param found what was in it
     */
    public record Carried(String code, String day, String found) {}

    /** {@return the form that was refused, if one was} */
    public Form form() {
        return form;
    }

    /** {@return the day of the page} */
    public LocalDate today() {
        return frame.now().toLocalDate();
    }

    /** {@return what readers find and the wash brings off, in one or two sentences} */
    public String answer() {
        String reader = sentence(DetectionValue.Kind.READER);
        String wash = sentence(DetectionValue.Kind.EXTRACTION);
        return reader.isEmpty() && wash.isEmpty()
                ? frame.say("quality.answer.nothing")
                : (reader + " " + wash).strip();
    }

    /** The reader who finds least, the fluid that is known best, of the animals that come first. */
    private String sentence(DetectionValue.Kind kind) {
        List<MeasuredShare> all =
                quality.shares().stream().filter(share -> share.kind() == kind).toList();
        if (all.isEmpty()) {
            return "";
        }
        Subject first = all.get(0).subject();
        Comparator<MeasuredShare> order =
                kind == DetectionValue.Kind.READER
                        ? Comparator.comparing(share -> share.estimate().share())
                        : Comparator.comparing(
                                share -> share.estimate().upper() - share.estimate().lower());
        MeasuredShare said =
                all.stream()
                        .filter(share -> share.subject().equals(first))
                        .sorted(
                                Comparator.comparing(
                                                (MeasuredShare share) -> !share.estimate().tells())
                                        .thenComparing(order))
                        .findFirst()
                        .orElseThrow();
        String key = kind == DetectionValue.Kind.READER ? "reader" : "wash";
        MeasuredShare.Estimate estimate = said.estimate();
        return frame.say(
                "quality.answer." + key + (estimate.tells() ? "" : ".not-yet"),
                words.whose(kind, said.whose()),
                words.ofHundred(estimate.share()),
                words.finding().animals(said.subject()),
                words.limits(estimate.lower(), estimate.upper()),
                said.readingsNeeded().isPresent()
                        ? words.readings(kind, said.readingsNeeded().getAsInt())
                        : frame.say("quality.more-than-anybody"));
    }

    /** {@return the scale of the pictures} */
    public Picture.Panel head() {
        return shares.head();
    }

    /** {@return readers by animals} */
    public List<ShareRow> readers() {
        return shares.of(DetectionValue.Kind.READER);
    }

    /** {@return fluids by animals} */
    public List<ShareRow> fluids() {
        return shares.of(DetectionValue.Kind.EXTRACTION);
    }

    /** {@return the table behind the pictures} */
    public Optional<Table> months() {
        return shares.table();
    }

    /** {@return known filters and spikes that say nothing, as a sentence; empty for none} */
    public String leftOut() {
        return quality.leftOut() == 0
                ? ""
                : words.figures().counted("quality.left-out", quality.leftOut());
    }

    /** {@return where the value that the row offers comes from} */
    public String source(String key) {
        return quality.shares().stream()
                .filter(share -> share.key().equals(key))
                .findFirst()
                .map(words::source)
                .orElse("");
    }

    /** {@return every value that is or was in use, those still in use first} */
    public List<Adopted> adopted() {
        return quality.rules().shares().stream()
                .sorted(Comparator.comparing(value -> value.withdrawnOn().isPresent()))
                .map(this::adopted)
                .toList();
    }

    private Adopted adopted(DetectionValue value) {
        return new Adopted(
                AdoptMeasured.key(value),
                value.holdsFrom().toString(),
                frame.say(
                        "quality.name",
                        words.whose(value.kind(), value.subject()),
                        words.subject(new Subject(value.pest(), value.stageGroup()))),
                words.value(value),
                frame.day(value.holdsFrom()),
                value.withdrawnOn().map(frame::day).orElse(""),
                value.source());
    }

    /** {@return readers against each other} */
    public RecountRows recounts() {
        return new RecountRows(quality, words);
    }

    /** {@return what the recounts say, as a heading} */
    public String recountTitle() {
        int done = quality.recounts().size() - recounts().open().size();
        return frame.say(
                "quality.recounts.title",
                done,
                words.figures().whole(done),
                recounts().open().size(),
                words.figures().whole(recounts().open().size()));
    }

    /** {@return how many blanks were read and how many held anything, as a heading} */
    public String blankTitle() {
        Blanks blanks = quality.blanks();
        if (blanks.read() == 0) {
            return frame.say("quality.blanks.none");
        }
        return frame.say(
                "quality.blanks.title",
                words.figures().counted("quality.blanks.read", blanks.read()),
                blanks.withFinds().size(),
                words.figures().whole(blanks.withFinds().size()));
    }

    /** {@return blanks in which anything was found} */
    public List<Carried> carried() {
        return quality.blanks().withFinds().stream().map(this::carried).toList();
    }

    private Carried carried(Blanks.Carried blank) {
        List<String> found =
                blank.individuals().entrySet().stream()
                        .map(one -> words.found(one.getKey(), one.getValue()))
                        .toList();
        return new Carried(
                blank.sample().code().text(),
                blank.sample().collectedOn().map(frame::day).orElse(""),
                words.finding().list(found));
    }

    /** {@return why the page says so} */
    public List<Reason> reasons() {
        return List.of(
                reason("reader", "found-share"),
                reason("wash", "extraction-efficiency"),
                reason("enough", "share-enough"),
                reason("recount", "agreement"));
    }

    private Reason reason(String key, String method) {
        return new Reason(
                frame.say("quality.why." + key + ".title"),
                frame.say("quality.why." + key),
                List.of(frame.say("quality.why." + key + ".more")),
                method);
    }
}
