package jarwise.usecase.planning;

import jarwise.base.Message;
import jarwise.decision.Finding;
import jarwise.decision.Stand;
import jarwise.plan.RoundQuestion;
import jarwise.site.Bench;
import jarwise.usecase.findings.SiteRules;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A round as far as it is planned: what can be asked, what was typed, and the answer to it.
 *
 * @param question what it is to be able to say
 * @param subject which animals
 * @param day on which jars are cut
 * @param rules what the site has chosen
 * @param benches every bench of the site
 * @param stands crop lots on benches on that day
 * @param habits numbers that are taken while nobody types others, by field
 * @param last what was last found on each stand
 * @param faults what is wrong with the typed numbers, by field
 * @param typed what was typed, by field
 * @param request what is asked; empty where something is wrong with it
 * @param answer what the round can tell; empty likewise
 * @param places where its jars are cut, in the order of the walk; empty while no stand is chosen
 * @param warnings what stands in its way
 */
public record PlannedRound(
        RoundQuestion question,
        Finding.Subject subject,
        LocalDate day,
        SiteRules rules,
        List<Bench> benches,
        List<StandThere> stands,
        Map<String, Habit> habits,
        Map<Stand, Finding> last,
        Map<String, Message> faults,
        Map<String, String> typed,
        Optional<PlanRequest> request,
        Optional<PlanAnswer> answer,
        List<JarPlace> places,
        List<RoundWarning> warnings) {

    public PlannedRound {
        benches = List.copyOf(benches);
        stands = List.copyOf(stands);
        habits = Map.copyOf(habits);
        faults = Map.copyOf(faults);
        typed = Map.copyOf(typed);
        places = List.copyOf(places);
        warnings = List.copyOf(warnings);
    }

    /** {@return what was typed into a field, or what is taken without} */
    public String value(String field) {
        String text = typed.getOrDefault(field, "");
        Habit habit = habits.get(field);
        return text.isBlank() && habit != null ? habit.value() : text;
    }

    /** {@return whether nothing stands in the way of registering it} */
    public boolean mayBeRegistered() {
        return request.isPresent()
                && !places.isEmpty()
                && warnings.stream().noneMatch(RoundWarning::blocks);
    }
}
