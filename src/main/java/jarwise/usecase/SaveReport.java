package jarwise.usecase;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.decision.Finding.Subject;
import jarwise.pest.Pest;
import jarwise.render.report.Letter;
import jarwise.render.report.LetterPrinter;
import jarwise.render.report.Paper;
import jarwise.render.words.Language;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SampleStore;
import jarwise.store.SettingsStore;
import jarwise.store.SiteStore;
import jarwise.store.work.RoundStore;
import jarwise.store.work.TreatmentStore;
import jarwise.usecase.findings.SiteCounts;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Writes the grower's letter into a file, beside a running server.
 *
 * @param clock what time it is
 */
public record SaveReport(InstantSource clock) {

    /**
     * What is asked for.
     *
     * @param nursery short name of the site; empty where there is only one
     * @param pest pest code; empty for the first one with a line
     * @param stageGroup stages added up; empty for the first one of the pest with a line
     * @param language of the letter; empty for the site's own
     * @param paper sheet of the PDF
     */
    public record Wanted(
            Optional<String> nursery,
            Optional<String> pest,
            Optional<String> stageGroup,
            Optional<String> language,
            Paper paper) {}

    /**
     * Writes the letter.
     *
     * @param address data folder or database
     * @param file ends in .html or .pdf; replaced if it is there
     * @param wanted which letter
     * @return its first sentence
     * @throws InvalidInput if there is nothing to write, or the file cannot be written
     */
    public String run(String address, Path file, Wanted wanted) {
        boolean pdf = isPdf(file);
        try (Database database = OpenData.at(address)) {
            Letter letter = letter(database, wanted);
            LetterPrinter printer = new LetterPrinter();
            byte[] bytes =
                    pdf
                            ? printer.pdf(letter, wanted.paper())
                            : printer.html(letter).getBytes(StandardCharsets.UTF_8);
            Files.write(file, bytes);
            return letter.answer();
        } catch (IOException e) {
            throw new Refused(Message.of("report.fault.write", file.toString()));
        }
    }

    private static boolean isPdf(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (name.endsWith(".pdf") || name.endsWith(".html")) {
            return name.endsWith(".pdf");
        }
        throw new Refused(Message.of("report.fault.ending", file.toString()));
    }

    private Letter letter(Database database, Wanted wanted) {
        SiteStore site = new SiteStore(database);
        SiteCounts counts =
                new SiteCounts(
                        new SampleStore(database),
                        new SettingsStore(database),
                        new PestStore(database),
                        new EventStore(database));
        WriteReport write =
                new WriteReport(
                        new ShowFindings(counts, site, new TreatmentStore(database)),
                        new RoundStore(database));
        Nursery nursery = nursery(site.nurseries(), wanted.nursery());
        return write.run(
                        new WriteReport.Request(
                                nursery,
                                wanted.pest().map(code -> subject(counts, nursery, code, wanted)),
                                language(wanted.language().orElse(nursery.language())),
                                Optional.empty(),
                                clock.instant().atZone(nursery.zone())))
                .orElseThrow(() -> new Refused(Message.of("report.empty")));
    }

    private static Nursery nursery(List<Nursery> all, Optional<String> slug) {
        String known = all.stream().map(Nursery::slug).collect(Collectors.joining(", "));
        if (slug.isEmpty() && all.size() == 1) {
            return all.get(0);
        }
        if (slug.isEmpty()) {
            throw new Refused(Message.of("report.fault.which", known));
        }
        return all.stream()
                .filter(nursery -> slug.equals(Optional.of(nursery.slug())))
                .findFirst()
                .orElseThrow(
                        () -> new Refused(Message.of("report.fault.nursery", slug.get(), known)));
    }

    private static Subject subject(SiteCounts counts, Nursery nursery, String code, Wanted wanted) {
        Pest pest =
                counts.rules(nursery.slug())
                        .pests()
                        .find(code)
                        .orElseThrow(() -> new Refused(Message.of("report.fault.pest", code)));
        String group = wanted.stageGroup().orElse(pest.stageGroups().get(0));
        if (!pest.stageGroups().contains(group)) {
            throw new Refused(
                    Message.of(
                            "report.fault.stage",
                            group,
                            code,
                            String.join(", ", pest.stageGroups())));
        }
        return new Subject(code, group);
    }

    private static Language language(String code) {
        return Language.of(code)
                .orElseThrow(() -> new Refused(Message.of("report.fault.language", code)));
    }
}
