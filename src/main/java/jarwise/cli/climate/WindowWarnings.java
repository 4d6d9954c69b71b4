package jarwise.cli.climate;

import jarwise.cli.print.Figures;
import jarwise.phenology.window.SetWindow;
import jarwise.phenology.window.WindowConstants;
import jarwise.usecase.climate.FindWindow;
import jarwise.usecase.climate.FindWindow.Assumption;
import jarwise.usecase.climate.FindWindow.Found;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a person should know about a window, a sentence each. */
final class WindowWarnings {

    private WindowWarnings() {}

    static List<String> of(FindWindow asked, Found found) {
        List<String> warnings = new ArrayList<>();
        warnings.add(
                "The label's least interval and the re-entry time come first, and local rules"
                        + " decide; a window is only when the insects can be met.");
        warnings.addAll(aboutSets(asked, found.window().sets()));
        found.window().sets().forEach(set -> warnings.addAll(about(set, asked.stage())));
        warnings.addAll(aboutLog(found.assumption()));
        boolean reachable = found.window().latest().isPresent();
        if (reachable && found.cooler().latest().isEmpty()) {
            warnings.add(
                    "A degree cooler there is no window; how far a degree moves it is not given.");
        }
        warnings.addAll(LogWarnings.of(found.climate()));
        return warnings;
    }

    private static List<String> aboutSets(FindWindow asked, List<SetWindow> sets) {
        List<String> warnings = new ArrayList<>();
        if (sets.stream().map(SetWindow::constants).anyMatch(WindowConstants::surrogate)) {
            warnings.add(
                    ("No constants of %s are published; those of a related species stand in for"
                                    + " them (surrogate), and may be wrong.")
                            .formatted(asked.pest()));
        }
        if (sets.stream().map(SetWindow::constants).anyMatch(WindowConstants::shared)) {
            warnings.add(
                    ("How the degree-days are shared among egg, %s and the rest is an assumption"
                                    + " from memory, without a source.")
                            .formatted(asked.stage()));
        }
        return warnings;
    }

    private static List<String> about(SetWindow set, String stage) {
        List<String> warnings = new ArrayList<>();
        String source = set.constants().source();
        if (set.earliest().isEmpty() || set.latest().isEmpty()) {
            warnings.add(
                    "%s: no window within %d days, it is too cool for these constants."
                            .formatted(source, SetWindow.FARTHEST.toDays()));
        }
        if (set.followUps().size() > 1) {
            String times =
                    set.followUps().stream()
                            .map(time -> time.toLocalDate().toString())
                            .collect(Collectors.joining(", "));
            warnings.add(
                    ("%s: the first leave the stage %s before the last have hatched, so that one"
                                    + " follow-up cannot meet all; %d can, on %s.")
                            .formatted(source, stage, set.followUps().size(), times));
        }
        return warnings;
    }

    private static List<String> aboutLog(Assumption assumption) {
        List<String> warnings = new ArrayList<>();
        if (assumption.afterLog().isPresent()) {
            warnings.add(
                    ("The log ends at %s; after that %s °C was assumed, the mean of its last %s"
                                    + " days.")
                            .formatted(
                                    assumption.logEnd(),
                                    Figures.of(assumption.afterLog().getAsDouble()),
                                    Figures.of(
                                            Math.min(
                                                    FindWindow.DAYS_OF_MEAN,
                                                    assumption.meanDays()))));
        }
        if (!assumption.gaps().isEmpty()) {
            warnings.add(
                    ("%d gap(s) in the log after the treatment, the first from %s to %s, were"
                                    + " filled with the mean of its last days.")
                            .formatted(
                                    assumption.gaps().size(),
                                    assumption.gaps().get(0).from(),
                                    assumption.gaps().get(0).to()));
        }
        return warnings;
    }
}
