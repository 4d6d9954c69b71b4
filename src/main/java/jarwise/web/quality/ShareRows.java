package jarwise.web.quality;

import jarwise.render.chart.ShareStrip;
import jarwise.sample.DetectionValue;
import jarwise.usecase.quality.KnownFinds;
import jarwise.usecase.quality.MeasuredShare;
import jarwise.usecase.quality.Quality;
import jarwise.web.piece.Picture;
import jarwise.web.piece.StripRow.Lines;
import jarwise.web.piece.Table;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measured shares as strips on one scale, and the table behind them. */
final class ShareRows {

    private final Quality quality;
    private final QualityWords words;
    private final ShareStrip desk;
    private final ShareStrip phone;

    ShareRows(Quality quality, QualityWords words) {
        this.quality = quality;
        this.words = words;
        this.desk = ShareStrip.desk(words.figures());
        this.phone = ShareStrip.phone(words.figures());
    }

    Picture.Panel head() {
        return new Picture.Panel(desk.head(), phone.head());
    }

    List<ShareRow> of(DetectionValue.Kind kind) {
        return quality.shares().stream()
                .filter(share -> share.kind() == kind)
                .map(this::row)
                .toList();
    }

    private ShareRow row(MeasuredShare share) {
        MeasuredShare.Estimate estimate = share.estimate();
        ShareStrip.Share drawn =
                new ShareStrip.Share(
                        estimate.share(),
                        estimate.lower(),
                        estimate.upper(),
                        share.inUse().map(ShareRows::value).orElse(OptionalDouble.empty()));
        String label = label(share);
        return new ShareRow(
                share.key(),
                "share-" + share.key().replaceAll("[^A-Za-z0-9]", "-"),
                new Lines(
                        words.frame()
                                .say(
                                        "quality.row",
                                        words.whose(share.kind(), share.whose()),
                                        words.finding().animals(share.subject())),
                        words.finding().pest(share.subject().pest())),
                found(share),
                new Lines(
                        words.ofHundred(estimate.share()),
                        estimate.tells()
                                ? words.limits(estimate.lower(), estimate.upper())
                                : notYet(share)),
                new Picture.Panel(desk.row(drawn, label), phone.row(drawn, label)),
                use(share),
                words.name(share),
                !isInUse(share));
    }

    private Lines found(MeasuredShare share) {
        if (share.finds().isEmpty()) {
            return new Lines(
                    words.figures().counted("quality.washes.count", share.washSeries()), "");
        }
        KnownFinds finds = share.finds().get();
        String more = words.readings(share.kind(), finds.readings());
        if (share.washSeries() > 0) {
            more += ", " + words.figures().counted("quality.washes.count", share.washSeries());
        }
        if (!share.readersApart()) {
            more += "; " + words.frame().say("quality.with-reader");
        }
        if (finds.falseFinds() > 0) {
            more += ", " + words.figures().counted("quality.false.count", finds.falseFinds());
        }
        return new Lines(
                words.frame()
                        .say(
                                "settings.share.found",
                                words.figures().whole(finds.found()),
                                words.figures().whole(finds.known())),
                more);
    }

    /** {@return that it cannot be told yet, and how many readings would tell} */
    String notYet(MeasuredShare share) {
        String limits = words.limits(share.estimate().lower(), share.estimate().upper());
        if (share.readingsNeeded().isEmpty()) {
            return words.frame().say("quality.not-yet", limits);
        }
        return words.frame()
                .say(
                        "quality.not-yet.needed",
                        limits,
                        words.readings(share.kind(), share.readingsNeeded().getAsInt()));
    }

    private Lines use(MeasuredShare share) {
        return share.inUse()
                .map(
                        value ->
                                new Lines(
                                        words.value(value),
                                        words.frame()
                                                .say(
                                                        "quality.since",
                                                        words.frame().day(value.holdsFrom()))))
                .orElse(new Lines(words.frame().say("quality.none-in-use"), ""));
    }

    private static boolean isInUse(MeasuredShare share) {
        return share.inUse()
                .filter(value -> value.found().orElse(-1) == share.estimate().adopted().found())
                .filter(value -> value.known().orElse(-1) == share.estimate().adopted().outOf())
                .isPresent();
    }

    private static OptionalDouble value(DetectionValue value) {
        return value.value().isPresent()
                ? value.value()
                : OptionalDouble.of(
                        (value.found().orElse(0) + 0.5) / (value.known().orElse(0) + 1));
    }

    private String label(MeasuredShare share) {
        return words.frame()
                .say(
                        "quality.tip",
                        words.name(share),
                        words.ofHundred(share.estimate().share()),
                        words.limits(share.estimate().lower(), share.estimate().upper()),
                        share.inUse()
                                .map(words::value)
                                .map(value -> words.frame().say("quality.tip.use", value))
                                .orElse(words.frame().say("quality.none-in-use")));
    }

    /** {@return every value of the pictures, month by month; empty where nothing is measured} */
    Optional<Table> table() {
        List<List<String>> rows = new ArrayList<>();
        for (MeasuredShare share : quality.shares()) {
            for (Map.Entry<YearMonth, KnownFinds> month : share.months().entrySet()) {
                rows.add(monthRow(share, month.getKey(), month.getValue()));
            }
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Table(
                                words.frame().say("quality.months"),
                                List.of(
                                        words.frame().say("quality.months.whose"),
                                        words.frame().say("quality.months.month"),
                                        words.frame().say("quality.months.readings"),
                                        words.frame().say("quality.months.found"),
                                        words.frame().say("quality.months.known"),
                                        words.frame().say("quality.months.false")),
                                rows));
    }

    private List<String> monthRow(MeasuredShare share, YearMonth month, KnownFinds finds) {
        return List.of(
                words.name(share),
                month.toString(),
                words.figures().whole(finds.readings()),
                words.figures().whole(finds.found()),
                words.figures().whole(finds.known()),
                words.figures().whole(finds.falseFinds()));
    }
}
