package jarwise.usecase.paper;

import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.render.label.JarLabel;
import jarwise.render.label.LabelGeometry;
import jarwise.render.label.LabelJob;
import jarwise.render.label.LabelPicture;
import jarwise.render.label.LabelSheets;
import jarwise.render.label.RoundSheet;
import jarwise.render.label.TestPage;
import jarwise.render.report.Paper;
import jarwise.render.words.Days;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import jarwise.site.Setting;
import jarwise.store.Database;
import jarwise.store.SettingsStore;
import jarwise.store.work.TreatmentStore;
import jarwise.treatment.Application;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Prints the labels of a round, and remembers on which sheet. */
public final class PrintLabels {

    private static final long DAYS_BACK = 30;

    private final SettingsStore settings;
    private final TreatmentStore treatments;

    public PrintLabels(Database database) {
        this.settings = new SettingsStore(database);
        this.treatments = new TreatmentStore(database);
    }

    /** {@return the sheet and nudge that hold on a day} */
    public LabelChoice chosen(Nursery nursery, LocalDate day) {
        return settings.settings(nursery.slug()).stream()
                .filter(setting -> setting.name().equals(LabelChoice.SETTING))
                .filter(setting -> !setting.holdsFrom().isAfter(day))
                .findFirst()
                .map(setting -> LabelChoice.of(setting.value()))
                .orElseGet(() -> LabelChoice.usual(nursery));
    }

    /** Remembers a sheet and a nudge from today on, where they are new. */
    public void choose(Nursery nursery, LabelChoice choice, String person, ZonedDateTime now) {
        LocalDate today = now.toLocalDate();
        if (chosen(nursery, today).equals(choice)) {
            return;
        }
        String reason = words(nursery).say("label.chosen");
        settings.add(
                nursery.slug(),
                new Setting(LabelChoice.SETTING, choice.text(), today, person, reason),
                now.toInstant());
    }

    /** {@return words in the site's own language} */
    public static Words words(Nursery nursery) {
        return Words.of(Language.of(nursery.language()).orElse(Language.ENGLISH));
    }

    /**
     * Prints.
     *
     * @param nursery whose round it is
     * @param plan the round
     * @param choice sheet and nudge
     * @param start first label still on the sheet, from 1
     * @param words language
     * @param now the moment it is printed, for re-entry intervals that still run
     * @return a PDF
     */
    public byte[] labels(
            Nursery nursery,
            RoundPlan plan,
            LabelChoice choice,
            int start,
            Words words,
            Instant now) {
        String day = new Days(words).full(plan.day());
        String head = words.say("label.head", nursery.name(), plan.id(), day);
        List<JarLabel> jars = plan.jars().stream().map(jar -> JarLabel.of(jar, words)).toList();
        return LabelSheets.pdf(
                jars, job(choice, start, words, head, cautions(nursery, plan, words, now)));
    }

    /** {@return the round on paper, for a pencil} */
    public byte[] roundSheet(
            Nursery nursery, RoundPlan plan, Paper paper, Words words, Instant now) {
        String day = new Days(words).full(plan.day());
        String head = words.say("sheet.round.head", nursery.name(), plan.id(), day);
        return RoundSheet.pdf(plan, head, cautions(nursery, plan, words, now), paper, words);
    }

    /** {@return where the labels lie on the first sheet, as SVG} */
    public static String picture(RoundPlan plan, LabelChoice choice, int start, Words words) {
        List<JarLabel> jars = plan.jars().stream().map(jar -> JarLabel.of(jar, words)).toList();
        return LabelPicture.svg(jars, job(choice, start, words, "", List.of()));
    }

    /** {@return sheets that the labels of a round take} */
    public static int sheets(RoundPlan plan, LabelChoice choice, int start, Words words) {
        List<JarLabel> jars = plan.jars().stream().map(jar -> JarLabel.of(jar, words)).toList();
        return LabelSheets.sheets(jars, LabelGeometry.named(choice.sheet()), start);
    }

    /** {@return a page that shows where the labels lie} */
    public static byte[] testPage(LabelChoice choice, Words words) {
        String head = words.say("label.test.head", choice.sheet());
        return TestPage.pdf(job(choice, 1, words, head, List.of()));
    }

    private static LabelJob job(
            LabelChoice choice, int start, Words words, String head, List<String> cautions) {
        return new LabelJob(
                LabelGeometry.named(choice.sheet()),
                choice.across(),
                choice.down(),
                start,
                words,
                head,
                cautions);
    }

    /** {@return cautions that belong on every sheet of labels; running intervals by their end} */
    public List<String> cautions(Nursery nursery, RoundPlan plan, Words words, Instant now) {
        Instant walk = plan.day().atStartOfDay(nursery.zone()).toInstant();
        Instant from = now.isAfter(walk) ? now : walk;
        List<String> closed =
                treatments
                        .applications(nursery.slug(), from.minus(DAYS_BACK, ChronoUnit.DAYS), from)
                        .stream()
                        .filter(application -> !application.mayBeEntered(from))
                        .flatMap(one -> closed(one, nursery, plan, words).stream())
                        .toList();
        List<String> cautions = new ArrayList<>();
        cautions.add(words.say("label.caution.entry"));
        if (!closed.isEmpty()) {
            cautions.set(0, words.say("label.caution.closed", String.join("; ", closed)));
        }
        cautions.add(words.say("label.caution.alcohol"));
        return cautions;
    }

    private static Optional<String> closed(
            Application application, Nursery nursery, RoundPlan plan, Words words) {
        List<String> benches =
                plan.ofCrop().stream()
                        .filter(jar -> application.covers(jar.house(), jar.bench()))
                        .map(PlannedJar::bench)
                        .distinct()
                        .toList();
        if (benches.isEmpty()) {
            return Optional.empty();
        }
        String names = String.join(", ", benches);
        return Optional.of(
                application
                        .reentryEnds()
                        .map(end -> end.atZone(nursery.zone()))
                        .map(end -> words.say("label.closed.until", names, moment(end, words)))
                        .orElseGet(() -> words.say("label.closed", names)));
    }

    private static String moment(ZonedDateTime at, Words words) {
        Days days = new Days(words);
        return days.weekday(at.toLocalDate()) + ", " + days.time(at.toLocalTime());
    }
}
