package jarwise.web.quality;

import jarwise.stats.agreement.CountPair;
import jarwise.stats.agreement.LimitsOfAgreement;
import jarwise.usecase.quality.Quality;
import jarwise.usecase.quality.ReaderAgreement;
import jarwise.usecase.quality.Recount;
import jarwise.web.piece.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Readers against each other, and the filters behind it. */
public final class RecountRows {

    /** Expected share of pairs outside the band of chance. */
    private static final double OUTSIDE = 0.05;

    /** Limits farther apart than that are not shown as a figure. */
    private static final double TOO_FAR = 5;

    private final Quality quality;
    private final QualityWords words;

    RecountRows(Quality quality, QualityWords words) {
        this.quality = quality;
        this.words = words;
    }

    /**
     * Two readers on the same filters.
     *
     * @param readers who
     * @param subject which animals
     * @param ratio the second for each 100 of the first, with limits
     * @param pairs filters that say something, and those that do not
     * @param beyond pairs beyond chance
     */
    public record Row(String readers, String subject, String ratio, String pairs, String beyond) {}

    /** {@return readers against each other, by pest and stages} */
    public List<Row> rows() {
        return quality.agreements().stream().map(this::row).toList();
    }

    private Row row(ReaderAgreement agreement) {
        return new Row(
                words.frame().say("quality.agreement.readers", agreement.other(), agreement.one()),
                words.subject(agreement.subject()),
                agreement.ratio().map(ratio -> ratio(ratio, agreement.one())).orElse(""),
                words.frame()
                        .say(
                                "quality.agreement.pairs",
                                whole(agreement.pairs().size()),
                                whole(agreement.empty())),
                beyond(agreement));
    }

    private String ratio(ReaderAgreement.Ratio ratio, String one) {
        if (ratio.upper() > TOO_FAR * ratio.lower()) {
            return words.frame().say("quality.agreement.not-yet");
        }
        return words.frame()
                .say(
                        "quality.agreement.ratio",
                        whole(Math.round(100 * ratio.estimate())),
                        whole((long) Math.floor(100 * ratio.lower())),
                        whole((long) Math.ceil(100 * ratio.upper())),
                        one);
    }

    private String beyond(ReaderAgreement agreement) {
        if (agreement.outsideBand().isEmpty()) {
            return words.frame().say("quality.agreement.no-band");
        }
        return words.frame()
                .say(
                        "quality.agreement.beyond",
                        whole(agreement.outsideBand().getAsInt()),
                        words.figures().density(OUTSIDE * agreement.pairs().size()));
    }

    /** {@return limits of agreement and concordance, in figures} */
    public Table figuresTable() {
        List<List<String>> rows = new ArrayList<>();
        for (ReaderAgreement agreement : quality.agreements()) {
            rows.add(
                    List.of(
                            words.frame()
                                    .say(
                                            "quality.agreement.row",
                                            agreement.one(),
                                            agreement.other(),
                                            words.subject(agreement.subject())),
                            agreement.limits().map(l -> signed(l.bias())).orElse(missing()),
                            agreement.limits().map(this::limits).orElse(missing()),
                            agreement
                                    .concordance()
                                    .map(c -> words.figures().density(c.estimate()))
                                    .orElse(missing()),
                            agreement
                                    .concordance()
                                    .filter(c -> c.lower().isPresent())
                                    .map(
                                            c ->
                                                    words.frame()
                                                            .say(
                                                                    "quality.range",
                                                                    signed(c.lower().orElse(0)),
                                                                    signed(c.upper().orElse(0))))
                                    .orElse(missing())));
        }
        return new Table(
                words.frame().say("quality.agreement.table"),
                List.of(
                        words.frame().say("quality.agreement.head.readers"),
                        words.frame().say("quality.agreement.head.bias"),
                        words.frame().say("quality.agreement.head.limits"),
                        words.frame().say("quality.agreement.head.concordance"),
                        words.frame().say("quality.agreement.head.concordance-limits")),
                rows);
    }

    private String limits(LimitsOfAgreement limits) {
        return words.frame()
                .say("quality.range", signed(limits.lowerLimit()), signed(limits.upperLimit()));
    }

    private String signed(double value) {
        return words.figures().plain(Math.round(value * 100) / 100.0);
    }

    private String missing() {
        return words.frame().say("quality.no-figure");
    }

    private String whole(long value) {
        return words.figures().whole(value);
    }

    /** {@return filters that wait for their second count} */
    public List<Recount> open() {
        return quality.recounts().stream().filter(recount -> !recount.counted()).toList();
    }

    /** {@return filters counted twice; the first count is shown only now} */
    public Table doneTable() {
        List<List<String>> rows =
                quality.recounts().stream()
                        .filter(Recount::counted)
                        .map(
                                done ->
                                        List.of(
                                                done.first().code().text(),
                                                done.again()
                                                        .collectedOn()
                                                        .map(words.frame()::day)
                                                        .orElse(""),
                                                done.firstReader().orElse(""),
                                                done.secondReader().orElse(""),
                                                counts(done)))
                        .toList();
        return new Table(
                words.frame().say("quality.recount.done"),
                List.of(
                        words.frame().say("quality.recount.code"),
                        words.frame().say("quality.recount.day"),
                        words.frame().say("quality.recount.first"),
                        words.frame().say("quality.recount.again"),
                        words.frame().say("quality.recount.counts")),
                rows);
    }

    private String counts(Recount done) {
        if (!done.comparable()) {
            return words.frame().say("quality.recount.part");
        }
        String counts =
                done.counts().entrySet().stream()
                        .filter(entry -> anyFound(entry.getValue()))
                        .map(
                                entry ->
                                        words.frame()
                                                .say(
                                                        "quality.recount.pair",
                                                        words.subject(entry.getKey()),
                                                        pair(entry.getValue())))
                        .sorted()
                        .collect(Collectors.joining("; "));
        return counts.isEmpty() ? words.frame().say("quality.recount.none") : counts;
    }

    private static boolean anyFound(CountPair pair) {
        return pair.first() + pair.second() > 0;
    }

    private String pair(CountPair pair) {
        return words.frame()
                .say("quality.recount.numbers", whole(pair.first()), whole(pair.second()));
    }
}
