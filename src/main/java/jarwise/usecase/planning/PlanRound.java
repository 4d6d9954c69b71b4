package jarwise.usecase.planning;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Stand;
import jarwise.plan.BenchRings;
import jarwise.plan.RoundQuestion;
import jarwise.site.Bench;
import jarwise.site.Nursery;
import jarwise.store.SampleStore;
import jarwise.store.SiteStore;
import jarwise.store.work.TreatmentStore;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Plans a round: says what it can tell and what it costs, before anything is cut. Writes nothing.
 *
 * @param counts counts and choices of the site
 * @param sites benches and crops
 * @param treatments ledger
 * @param samples filters in the freezer
 * @param outlooks simulated trials
 */
public record PlanRound(
        SiteCounts counts,
        SiteStore sites,
        TreatmentStore treatments,
        SampleStore samples,
        ComparisonOutlooks outlooks) {

    private static final double USUAL_DENSITY = 0.1;
    private static final double USUAL_TARGET = 0.8;

    /** Plans with these stores. */
    public PlanRound(
            SiteCounts counts, SiteStore sites, TreatmentStore treatments, SampleStore samples) {
        this(counts, sites, treatments, samples, new ComparisonOutlooks());
    }

    /**
     * Plans.
     *
     * @param typed fields of the form; what is missing is the site's habit
     * @param now the moment of the page, by the site's clocks
     * @param person who is at the screen
     */
    public PlannedRound run(
            Nursery nursery, Map<String, String> typed, ZonedDateTime now, String person) {
        String slug = nursery.slug();
        SiteRules rules = counts.rules(slug);
        Fields first = Fields.of(typed);
        RoundQuestion question =
                first.word("question", RoundQuestion.class).orElse(RoundQuestion.DETECT);
        LocalDate today = now.toLocalDate();
        LocalDate day = first.day("day").orElseGet(() -> nextWorkingDay(rules, today));
        Subject subject = subject(rules, first.text("subject"), today);
        List<StandThere> stands = StandsOn.day(sites, slug, day);
        Map<Stand, Finding> last = new LastFindings(counts).of(slug, rules, subject, today);
        Map<String, Habit> habits =
                new TreeMap<>(
                        new SiteHabits(slug, rules, counts, subject, today)
                                .habits(first.text("fluid"), first.text("reader"), person));
        habits.putAll(numbers(question, rules, subject, today, lastOf(stands, typed, last)));
        Draft draft =
                new Draft(
                        nursery,
                        rules,
                        question,
                        subject,
                        day,
                        sites.benches(slug),
                        stands,
                        habits,
                        last);
        return planned(draft, typed, today);
    }

    /** What is known before the numbers are read. */
    private record Draft(
            Nursery nursery,
            SiteRules rules,
            RoundQuestion question,
            Subject subject,
            LocalDate day,
            List<Bench> benches,
            List<StandThere> stands,
            Map<String, Habit> habits,
            Map<Stand, Finding> last) {

        PlannedRound refused(Map<String, String> typed, Map<String, Message> faults) {
            return new PlannedRound(
                    question,
                    subject,
                    day,
                    rules,
                    benches,
                    stands,
                    habits,
                    last,
                    faults,
                    typed,
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    List.of());
        }
    }

    private PlannedRound planned(Draft draft, Map<String, String> typed, LocalDate today) {
        Map<String, String> filled = new TreeMap<>(typed);
        draft.habits.forEach(
                (name, habit) -> {
                    if (filled.getOrDefault(name, "").isBlank()) {
                        filled.put(name, habit.value());
                    }
                });
        Fields fields = Fields.of(filled);
        fields.day("day")
                .filter(day -> day.isBefore(today))
                .ifPresent(day -> fields.fault("day", Message.of("plan.fault.past")));
        try {
            PlanRequest request =
                    new PlanFields(fields, typed, draft.stands, draft.benches)
                            .request(draft.question, draft.subject, draft.day, seed(typed, draft));
            return answered(draft, typed, request);
        } catch (FormRefused refused) {
            return draft.refused(typed, refused.faults());
        } catch (InvalidInput refused) {
            String said = String.valueOf(refused.getMessage());
            return draft.refused(typed, Map.of("density", Message.of("form.refused", said)));
        }
    }

    /** A seed is shown and can be typed; otherwise it is the number of the day. */
    private static long seed(Map<String, String> typed, Draft draft) {
        String text = typed.getOrDefault("seed", "").strip();
        return text.matches("-?[0-9]{1,15}") ? Long.parseLong(text) : draft.day.toEpochDay();
    }

    private PlannedRound answered(Draft draft, Map<String, String> typed, PlanRequest request) {
        PlanAnswer answer = answer(draft, request);
        List<JarPlace> places =
                request.stands().isEmpty() || lacksCheck(request)
                        ? List.of()
                        : new RoundLayout(request, draft.last).jars(answer);
        List<RoundWarning> warnings =
                new RoundWarnings(draft.nursery, draft.rules, treatments, samples)
                        .of(request, places, draft.last);
        return new PlannedRound(
                draft.question,
                draft.subject,
                draft.day,
                draft.rules,
                draft.benches,
                draft.stands,
                draft.habits,
                draft.last,
                Map.of(),
                typed,
                Optional.of(request),
                Optional.of(answer),
                places,
                warnings);
    }

    private static boolean lacksCheck(PlanRequest request) {
        return request.ask() instanceof Ask.Compare compare
                && (compare.check().isEmpty() || request.stands().size() < 2);
    }

    private PlanAnswer answer(Draft draft, PlanRequest request) {
        Answers answers = new Answers(request.assumed(), request.subject());
        int least = Math.max(1, RoundLayout.leastPerStand(request.ask()) * request.stands().size());
        Ask ask = request.ask();
        if (ask instanceof Ask.Detect detect) {
            return answers.detect(detect, request.wantedJars(), least);
        }
        if (ask instanceof Ask.Estimate estimate) {
            return answers.estimate(estimate, request.wantedJars(), least);
        }
        if (ask instanceof Ask.Compare compare) {
            double target =
                    draft.rules
                            .numberOn(SiteRules.TARGET_EFFICACY, request.day())
                            .orElse(USUAL_TARGET);
            return answers.compare(compare, target, outlooks);
        }
        if (ask instanceof Ask.Decide decide) {
            return answers.decide(decide, least);
        }
        return delimit((Ask.Delimit) ask, request, answers, draft.benches);
    }

    private static PlanAnswer.Delimit delimit(
            Ask.Delimit ask, PlanRequest request, Answers answers, List<Bench> benches) {
        boolean known = benches.stream().anyMatch(bench -> bench.code().equals(ask.find()));
        List<String> sampled =
                request.stands().stream().map(stand -> stand.bench().code()).distinct().toList();
        BenchRings rings =
                known
                        ? BenchRings.around(benches, ask.find())
                        : new BenchRings(ask.find(), List.of());
        return new PlanAnswer.Delimit(
                sampled.size(),
                rings,
                sampled,
                answers.boundIfNone(1),
                answers.boundIfNone(Math.max(1, sampled.size())));
    }

    private static LocalDate nextWorkingDay(SiteRules rules, LocalDate today) {
        Set<DayOfWeek> days = ReadingHours.days(rules.textOn(SiteRules.WORKING_DAYS, today));
        return Stream.iterate(today.plusDays(1), day -> day.plusDays(1))
                .limit(7)
                .filter(day -> days.contains(day.getDayOfWeek()))
                .findFirst()
                .orElse(today.plusDays(1));
    }

    /** What is typed as PEST/stages, or the first animals that the site has a line for. */
    private static Subject subject(SiteRules rules, String typed, LocalDate today) {
        String[] parts = typed.split("/", 2);
        boolean known =
                parts.length == 2
                        && rules.pests().find(parts[0]).stream()
                                .anyMatch(pest -> pest.stageGroups().contains(parts[1]));
        if (known) {
            return new Subject(parts[0], parts[1]);
        }
        return rules.subjectsWithLine(today).stream()
                .findFirst()
                .orElseGet(
                        () -> {
                            var pest =
                                    rules.pests().all().stream()
                                            .findFirst()
                                            .orElseThrow(
                                                    () -> new InvalidInput("There is no pest."));
                            return new Subject(pest.code(), pest.stageGroups().get(0));
                        });
    }

    private static Optional<Finding> lastOf(
            List<StandThere> stands, Map<String, String> typed, Map<Stand, Finding> last) {
        List<String> keys = List.of(typed.getOrDefault("stand", "").split(","));
        return stands.stream()
                .filter(stand -> keys.contains(stand.key()))
                .map(stand -> Optional.ofNullable(last.get(stand.stand())))
                .flatMap(Optional::stream)
                .filter(finding -> finding.evidence().individuals() > 0)
                .findFirst();
    }

    private static Map<String, Habit> numbers(
            RoundQuestion question,
            SiteRules rules,
            Subject subject,
            LocalDate today,
            Optional<Finding> found) {
        Map<String, Habit> numbers = new TreeMap<>();
        Optional<Double> line = rules.lineOn(subject, today).map(own -> own.density());
        double around = line.orElse(USUAL_DENSITY);
        String key = line.isPresent() ? "plan.from.line" : "plan.from.common";
        numbers.put("density", Habit.of(SiteHabits.rounded(around), key));
        if (question != RoundQuestion.DETECT) {
            found.flatMap(Finding::estimated)
                    .map(known -> SiteHabits.rounded(known.density().estimate()))
                    .ifPresent(value -> numbers.put("density", Habit.of(value, "plan.from.found")));
        }
        numbers.put("low", Habit.of(SiteHabits.rounded(around / 2), key));
        numbers.put("high", Habit.of(SiteHabits.rounded(around * 2), key));
        double target = rules.numberOn(SiteRules.TARGET_EFFICACY, today).orElse(USUAL_TARGET);
        numbers.put("efficacy", common(SiteHabits.rounded(100 * Math.max(target, USUAL_TARGET))));
        Map.of(
                        "confidence", "95",
                        "precision", "25",
                        "risk", "10",
                        "each", "8",
                        "most", "40",
                        "rings", "2",
                        "start", "07:30",
                        "spiked", "10")
                .forEach((name, value) -> numbers.put(name, common(value)));
        return numbers;
    }

    private static Habit common(String value) {
        return Habit.of(value, "plan.from.common");
    }
}
