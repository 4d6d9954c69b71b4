package jarwise.usecase.planning;

import jarwise.decision.Finding.Subject;
import jarwise.sample.CollectedSample;
import jarwise.sample.DetectionValue;
import jarwise.sample.Fluid;
import jarwise.sample.SamplingMethod;
import jarwise.stats.estimate.KPrior;
import jarwise.usecase.findings.EarlierRounds;
import jarwise.usecase.findings.SiteCounts;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.form.Fields;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What this site's own jars say of the numbers that a plan needs; common practice where they say
 * nothing.
 */
final class SiteHabits {

    /** Minutes of common practice, without a source. */
    private static final double CUT_MINUTES = 3;

    private static final double WASH_MINUTES = 5;
    private static final double READ_MINUTES = 10;

    private static final int HISTORY_DAYS = 366;
    private static final int LEAST_READINGS = 5;

    private final String nursery;
    private final SiteRules rules;
    private final SiteCounts counts;
    private final Subject subject;
    private final LocalDate day;
    private final List<CollectedSample> jars;

    SiteHabits(String nursery, SiteRules rules, SiteCounts counts, Subject subject, LocalDate day) {
        this.nursery = nursery;
        this.rules = rules;
        this.counts = counts;
        this.subject = subject;
        this.day = day;
        this.jars =
                counts.cropSamples(nursery, SamplingMethod.WASH, day.minusDays(HISTORY_DAYS), day);
    }

    /**
     * {@return the habits by field}
     *
     * @param typedFluid fluid that was chosen, or an empty text
     * @param typedReader reader that was chosen, or an empty text
     * @param person who is at the screen
     */
    Map<String, Habit> habits(String typedFluid, String typedReader, String person) {
        Map<String, Habit> habits = new TreeMap<>();
        Habit fluid = fluid();
        Habit reader = reader(person);
        habits.put("fluid", fluid);
        habits.put("reader", reader);
        habits.put("k", k());
        habits.put(
                "efficiency",
                share(
                        DetectionValue.Kind.EXTRACTION,
                        typedFluid.isEmpty() ? fluid.value() : typedFluid));
        habits.put(
                "sensitivity",
                share(
                        DetectionValue.Kind.READER,
                        typedReader.isEmpty() ? reader.value() : typedReader));
        habits.put("points", points());
        habits.put("cut", minutes(SiteRules.CUT_MINUTES, CUT_MINUTES));
        habits.put("wash", minutes(SiteRules.WASH_MINUTES, WASH_MINUTES));
        habits.put("read", reading(typedReader.isEmpty() ? reader.value() : typedReader));
        return habits;
    }

    private Habit k() {
        EarlierRounds history = counts.history(nursery, rules, subject, day);
        Optional<KPrior> known = history.priorBefore(day);
        return known.map(
                        prior ->
                                Habit.of(
                                        rounded(prior.medianK()),
                                        "plan.from.history",
                                        String.valueOf(history.samplesBefore(day))))
                .orElseGet(
                        () -> Habit.of(rounded(KPrior.standard().medianK()), "plan.from.common.k"));
    }

    /** Two digits are more than is known of k, and what is shown is what is calculated with. */
    static String rounded(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(2))
                .stripTrailingZeros()
                .toPlainString();
    }

    private Habit fluid() {
        return newestFirst(jar -> jar.wash().fluid().filter(fluid -> fluid != Fluid.WATER))
                .map(fluid -> Habit.of(Fields.wordOf(fluid), "plan.from.last"))
                .orElseGet(() -> Habit.of(Fields.wordOf(Fluid.SOAP), "plan.from.common"));
    }

    private Habit reader(String person) {
        Map<String, Long> readings =
                jars.stream()
                        .flatMap(jar -> jar.reading().reader().stream())
                        .collect(Collectors.groupingBy(reader -> reader, Collectors.counting()));
        if (readings.containsKey(person)) {
            return Habit.of(person, "plan.from.person");
        }
        return readings.entrySet().stream()
                .max(
                        Map.Entry.<String, Long>comparingByValue()
                                .thenComparing(Map.Entry.<String, Long>comparingByKey().reversed()))
                .map(most -> Habit.of(most.getKey(), "plan.from.most"))
                .orElseGet(() -> Habit.of("", "plan.from.nobody"));
    }

    private <T> Optional<T> newestFirst(Function<CollectedSample, Optional<T>> wanted) {
        List<T> found = jars.stream().flatMap(jar -> wanted.apply(jar).stream()).toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
    }

    /** As adopted by the site, found of known where it was measured; all of it otherwise. */
    private Habit share(DetectionValue.Kind kind, String whose) {
        return rules.shares().stream()
                .filter(share -> share.kind() == kind && share.subject().equals(whose))
                .filter(share -> share.pest().equals(subject.pest()))
                .filter(share -> share.stageGroup().equals(subject.stageGroup()))
                .filter(share -> share.holdsOn(day))
                .findFirst()
                .map(share -> Habit.of(written(share), "plan.from.adopted", share.source()))
                .orElseGet(() -> Habit.of("1", "plan.from.unmeasured"));
    }

    private static String written(DetectionValue share) {
        return share.value().isPresent()
                ? String.valueOf(share.value().getAsDouble())
                : "%d/%d"
                        .formatted(
                                Math.round(share.found().orElseThrow()),
                                Math.round(share.known().orElseThrow()));
    }

    private Habit points() {
        String points = String.valueOf(rules.protocolOn(day).growingPointsPerJar());
        boolean own =
                rules.protocols().stream().anyMatch(version -> !version.holdsFrom().isAfter(day));
        return Habit.of(points, own ? "plan.from.protocol" : "plan.from.common");
    }

    private Habit minutes(String setting, double usual) {
        return rules.numberOn(setting, day)
                .map(own -> Habit.of(plain(own), "plan.from.setting"))
                .orElseGet(() -> Habit.of(plain(usual), "plan.from.common"));
    }

    /** The reader's own mean where five filters or more were timed; else what the site says. */
    private Habit reading(String reader) {
        double[] own =
                jars.stream()
                        .filter(jar -> jar.reading().reader().filter(reader::equals).isPresent())
                        .map(jar -> jar.reading().minutes())
                        .filter(minutes -> minutes.isPresent())
                        .mapToDouble(minutes -> minutes.getAsDouble())
                        .toArray();
        if (own.length >= LEAST_READINGS) {
            double mean = Arrays.stream(own).average().orElseThrow();
            return Habit.of(
                    plain(Math.round(10 * mean) / 10.0),
                    "plan.from.readings",
                    reader,
                    String.valueOf(own.length));
        }
        Optional<Double> whole = rules.numberOn(SiteRules.MINUTES_PER_JAR, day);
        return whole.map(
                        minutes ->
                                Habit.of(
                                        plain(Math.max(0, minutes - CUT_MINUTES - WASH_MINUTES)),
                                        "plan.from.setting"))
                .orElseGet(() -> Habit.of(plain(READ_MINUTES), "plan.from.common"));
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
