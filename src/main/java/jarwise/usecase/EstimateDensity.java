package jarwise.usecase;

import jarwise.decision.ActionThreshold;
import jarwise.decision.Basis;
import jarwise.decision.DetectionMix;
import jarwise.decision.Finding;
import jarwise.decision.Finding.Subject;
import jarwise.decision.Judgement;
import jarwise.decision.Verdict;
import jarwise.sample.CollectedSample;
import jarwise.sample.DetectionValue;
import jarwise.sample.Fluid;
import jarwise.stats.count.Observation;
import jarwise.stats.estimate.DensityEstimate;
import jarwise.stats.estimate.DensityEstimator;
import jarwise.stats.estimate.DetectionShare;
import jarwise.stats.estimate.KPrior;
import jarwise.usecase.findings.EarlierRounds;
import jarwise.usecase.findings.Estimates;
import jarwise.usecase.findings.Group;
import jarwise.usecase.findings.SiteRules;
import jarwise.usecase.findings.Sorting;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * How many there are, how sure that is, and what follows: the one place where the counts of the
 * database and the engine meet.
 *
 * @param estimates the engine
 * @param rules what the site has chosen
 * @param history how clumped these animals were before, as far as the site knows
 * @param subject which animals
 */
public record EstimateDensity(
        Estimates estimates, SiteRules rules, EarlierRounds history, Subject subject) {

    /** Level of every interval on screens and letters. */
    public static final double CONFIDENCE_LEVEL = 0.95;

    /**
     * Estimates the density in one group of samples: random crop samples that were read for these
     * animals, with the shares, the line and the limits valid on the day.
     */
    public Finding run(Group group) {
        LocalDate day = group.day();
        Sorting sorting = new Sorting(group, rules.protocolOn(day));
        if (sorting.used().isEmpty()) {
            return finding(group, sorting, Optional.empty(), Optional.empty());
        }
        DetectionMix mix = mixOf(sorting, day);
        Optional<KPrior> known = priorBefore(firstDay(sorting.used(), day));
        KPrior prior = known.orElse(KPrior.standard());
        Optional<ActionThreshold> line = rules.lineOn(subject, day);
        DensityEstimator estimator = estimator(mix, prior, line);
        DensityEstimate density = estimates.density(estimator, mix.observations());
        Basis basis = basisOf(sorting.used(), mix, prior, known.isPresent(), day);
        return finding(
                group,
                sorting,
                Optional.of(new Finding.Estimated(density, basis)),
                line.flatMap(value -> judge(value, density, day)));
    }

    /**
     * Adds to a finding how many more samples would tell, if they looked like those there are.
     * Takes a dozen estimates, so it is asked for only where it is shown.
     */
    public Finding withMoreSamples(Group group, Finding finding) {
        if (!finding.verdict().equals(Optional.of(Verdict.CANNOT_TELL))) {
            return finding;
        }
        Finding.Estimated estimated = finding.estimated().orElseThrow();
        Judgement judgement = finding.judgement().orElseThrow();
        Sorting sorting = new Sorting(group, rules.protocolOn(group.day()));
        DetectionMix mix = mixOf(sorting, group.day());
        DensityEstimator estimator =
                estimator(mix, estimated.basis().prior(), Optional.of(judgement.line()));
        OptionalInt more =
                estimates.samplesThatWouldTell(
                        estimator, mix.observations(), rules.limitsOn(group.day()));
        return new Finding(
                finding.subject(),
                finding.stand(),
                finding.day(),
                finding.evidence(),
                finding.estimated(),
                Optional.of(judgement.withMoreSamples(more)));
    }

    /**
     * The chance that the density in one group is above the line: that of {@link #run}, but without
     * its interval, for questions that are asked many times.
     *
     * @return empty where {@link #run} has no judgement
     */
    public OptionalDouble chanceAbove(Group group) {
        LocalDate day = group.day();
        Optional<ActionThreshold> line = rules.lineOn(subject, day);
        Sorting sorting = new Sorting(group, rules.protocolOn(day));
        if (sorting.used().isEmpty() || line.isEmpty()) {
            return OptionalDouble.empty();
        }
        DetectionMix mix = mixOf(sorting, day);
        KPrior prior = priorBefore(firstDay(sorting.used(), day)).orElse(KPrior.standard());
        return estimates.chanceAboveThreshold(estimator(mix, prior, line), mix.observations());
    }

    /** {@return the verdict if the wash brought off another share than assumed} */
    public Optional<Finding> withExtraction(Group group, double share) {
        Sorting sorting = new Sorting(group, rules.protocolOn(group.day()));
        if (sorting.used().isEmpty()) {
            return Optional.empty();
        }
        List<DetectionMix.Part> parts =
                sorting.used().stream()
                        .map(
                                sample ->
                                        new DetectionMix.Part(
                                                observation(sorting, sample),
                                                DetectionShare.known(share),
                                                sensitivity(sample, group.day()).orElse(ALL)))
                        .toList();
        DetectionMix mix = DetectionMix.of(parts);
        KPrior prior = priorBefore(firstDay(sorting.used(), group.day())).orElse(KPrior.standard());
        Optional<ActionThreshold> line = rules.lineOn(subject, group.day());
        DensityEstimate density =
                estimates.density(estimator(mix, prior, line), mix.observations());
        Basis basis = basisOf(sorting.used(), mix, prior, false, group.day());
        return Optional.of(
                finding(
                        group,
                        sorting,
                        Optional.of(new Finding.Estimated(density, basis)),
                        line.flatMap(value -> judge(value, density, group.day()))));
    }

    private static final DetectionShare ALL = DetectionShare.known(1);

    private Finding finding(
            Group group,
            Sorting sorting,
            Optional<Finding.Estimated> estimated,
            Optional<Judgement> judgement) {
        return new Finding(
                subject, group.stand(), group.day(), sorting.evidence(), estimated, judgement);
    }

    private Optional<KPrior> priorBefore(LocalDate day) {
        return history.priorBefore(day);
    }

    private static LocalDate firstDay(List<CollectedSample> samples, LocalDate otherwise) {
        return samples.stream()
                .flatMap(sample -> sample.collectedOn().stream())
                .min(LocalDate::compareTo)
                .orElse(otherwise);
    }

    private static DensityEstimator estimator(
            DetectionMix mix, KPrior prior, Optional<ActionThreshold> line) {
        DensityEstimator estimator =
                DensityEstimator.standard()
                        .withConfidenceLevel(CONFIDENCE_LEVEL)
                        .withPrior(prior)
                        .withDetection(mix.detection());
        return line.map(value -> estimator.withActionThreshold(value.density())).orElse(estimator);
    }

    private Optional<Judgement> judge(
            ActionThreshold line, DensityEstimate density, LocalDate day) {
        if (density.probabilityAboveThreshold().isEmpty()) {
            return Optional.empty();
        }
        double above = density.probabilityAboveThreshold().getAsDouble();
        return Optional.of(
                new Judgement(
                        line,
                        above,
                        Verdict.of(above, rules.limitsOn(day)),
                        OptionalInt.empty(),
                        rules.minutesPerJarOn(day)));
    }

    private DetectionMix mixOf(Sorting sorting, LocalDate day) {
        return DetectionMix.of(
                sorting.used().stream()
                        .map(
                                sample ->
                                        new DetectionMix.Part(
                                                observation(sorting, sample),
                                                efficiency(sample, day).orElse(ALL),
                                                sensitivity(sample, day).orElse(ALL)))
                        .toList());
    }

    private static Observation observation(Sorting sorting, CollectedSample sample) {
        return new Observation(
                sorting.individualsIn(sample),
                sample.samplingUnits(),
                sample.reading().filterShare());
    }

    private Optional<DetectionShare> efficiency(CollectedSample sample, LocalDate day) {
        return sample.wash()
                .fluid()
                .flatMap(
                        fluid ->
                                rules.shareOn(
                                        DetectionValue.Kind.EXTRACTION,
                                        fluid.name().toLowerCase(java.util.Locale.ROOT),
                                        subject,
                                        day));
    }

    private Optional<DetectionShare> sensitivity(CollectedSample sample, LocalDate day) {
        return sample.reading()
                .reader()
                .flatMap(reader -> rules.shareOn(DetectionValue.Kind.READER, reader, subject, day));
    }

    private Basis basisOf(
            List<CollectedSample> used,
            DetectionMix mix,
            KPrior prior,
            boolean fromHistory,
            LocalDate day) {
        Set<Fluid> fluids =
                used.stream()
                        .flatMap(sample -> sample.wash().fluid().stream())
                        .collect(Collectors.toSet());
        Set<String> readers =
                used.stream()
                        .flatMap(sample -> sample.reading().reader().stream())
                        .collect(Collectors.toSet());
        return new Basis(
                mix.detection(),
                prior,
                fromHistory ? history.samplesBefore(firstDay(used, day)) : 0,
                fluids,
                readers,
                used.stream().allMatch(sample -> efficiency(sample, day).isPresent()),
                used.stream().allMatch(sample -> sensitivity(sample, day).isPresent()));
    }
}
