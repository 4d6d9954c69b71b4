package jarwise.usecase.paper;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.plan.RoundPlan;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundPlanStore;
import jarwise.usecase.OpenData;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes labels into a file, beside a running server.
 *
 * @param clock what time it is
 */
public record SaveLabels(InstantSource clock) {

    /** A sheet for the test page where nobody named one. */
    private static final String USUAL_SHEET = "a4-21";

    private static final LocalDate LAST_DAY = LocalDate.of(9999, 12, 31);

    /** How far everything is moved, mm to the right and down. */
    public record Nudge(double across, double down) {}

    /**
     * How they are to be printed.
     *
     * @param sheet name of the geometry; empty for the one the site has chosen
     * @param nudge mm to the right and down; empty for what the site has chosen
     * @param start first label still on the sheet, from 1
     */
    public record Wanted(Optional<String> sheet, Optional<Nudge> nudge, int start) {

        LabelChoice over(LabelChoice chosen) {
            Nudge moved = nudge.orElseGet(() -> new Nudge(chosen.across(), chosen.down()));
            return new LabelChoice(sheet.orElse(chosen.sheet()), moved.across(), moved.down());
        }
    }

    /**
     * Writes the labels of a round.
     *
     * @param address data folder or database
     * @param nursery short name; empty where there is only one
     * @param round the round's name
     * @param file ends in .pdf; replaced if it is there
     * @param wanted how
     * @return the round, for the answer
     * @throws InvalidInput if there is no such round, or the file cannot be written
     */
    public RoundPlan run(
            String address, Optional<String> nursery, String round, Path file, Wanted wanted) {
        needPdf(file);
        try (Database database = OpenData.at(address)) {
            Nursery site = site(new SiteStore(database).nurseries(), nursery);
            RoundPlan plan =
                    new RoundPlanStore(database)
                            .find(site.slug(), round)
                            .orElseThrow(() -> noRound(database, site, round));
            PrintLabels print = new PrintLabels(database);
            Instant now = clock.instant();
            LabelChoice choice =
                    wanted.over(print.chosen(site, now.atZone(site.zone()).toLocalDate()));
            write(
                    file,
                    print.labels(site, plan, choice, wanted.start(), PrintLabels.words(site), now));
            return plan;
        }
    }

    /** Writes the test page of a sheet; no data are needed. */
    public static void testPage(Path file, Wanted wanted) {
        needPdf(file);
        LabelChoice choice = wanted.over(new LabelChoice(USUAL_SHEET, 0, 0));
        write(file, PrintLabels.testPage(choice, Words.of(Language.ENGLISH)));
    }

    private static InvalidInput noRound(Database database, Nursery site, String round) {
        List<String> known =
                new RoundPlanStore(database)
                        .plans(site.slug(), LocalDate.EPOCH, LAST_DAY).stream()
                                .map(RoundPlan::id)
                                .toList();
        return new InvalidInput(
                "There is no round '%s' in %s. %s"
                        .formatted(
                                round,
                                site.name(),
                                known.isEmpty()
                                        ? "No round is planned yet."
                                        : "The latest is %s."
                                                .formatted(known.get(known.size() - 1))));
    }

    private static Nursery site(List<Nursery> all, Optional<String> slug) {
        if (slug.isEmpty() && all.size() == 1) {
            return all.get(0);
        }
        String known = all.stream().map(Nursery::slug).collect(Collectors.joining(", "));
        if (all.isEmpty()) {
            throw new InvalidInput("There is no nursery in these data, so there are no rounds.");
        }
        if (slug.isEmpty()) {
            throw new Refused(Message.of("report.fault.which", known));
        }
        return all.stream()
                .filter(nursery -> slug.get().equals(nursery.slug()))
                .findFirst()
                .orElseThrow(
                        () -> new Refused(Message.of("report.fault.nursery", slug.get(), known)));
    }

    private static void needPdf(Path file) {
        if (!file.toString().toLowerCase(Locale.ROOT).endsWith(".pdf")) {
            throw new InvalidInput(
                    "The labels are to be written to '%s'; the name must end in .pdf."
                            .formatted(file));
        }
    }

    private static void write(Path file, byte[] pdf) {
        try {
            Files.write(file, pdf);
        } catch (IOException e) {
            throw new InvalidInput(
                    ("The labels cannot be written to '%s'. Maybe the folder is not there or may"
                                    + " not be written to.")
                            .formatted(file));
        }
    }
}
