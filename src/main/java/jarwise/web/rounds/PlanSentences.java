package jarwise.web.rounds;

import jarwise.plan.ComparisonOutlook;
import jarwise.render.finding.FindingWords;
import jarwise.render.words.Figures;
import jarwise.stats.efficacy.EfficacyVerdict;
import jarwise.usecase.planning.Ask;
import jarwise.usecase.planning.PlanAnswer;
import jarwise.usecase.planning.PlanRequest;
import jarwise.web.Frame;
import java.util.ArrayList;
import java.util.List;

/** What a round will be able to say, in sentences. */
final class PlanSentences {

    private final Frame frame;
    private final Figures figures;
    private final PlanRequest request;

    PlanSentences(Frame frame, FindingWords say, PlanRequest request) {
        this.frame = frame;
        this.figures = say.figures();
        this.request = request;
    }

    String tells(PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Detect detect) {
            return detect.bound().isPresent()
                    ? frame.say(
                            "plan.tells.detect", figures.fewerThan(detect.bound().getAsDouble()))
                    : frame.say("plan.tells.detect.none");
        }
        if (answer instanceof PlanAnswer.Estimate estimate) {
            return frame.say(
                    "plan.tells.estimate",
                    figures.lower(estimate.row().lower()),
                    figures.upper(estimate.row().upper()));
        }
        if (answer instanceof PlanAnswer.Compare compare) {
            return compare.outlook()
                    .outlook()
                    .map(this::compared)
                    .orElseGet(() -> frame.say("plan.tells.compare.drawing"));
        }
        if (answer instanceof PlanAnswer.Decide decide) {
            Ask.Decide ask = (Ask.Decide) request.ask();
            return frame.say(
                    "plan.tells.decide",
                    figures.density(
                            Math.max(
                                    decide.at(ask.low()).averageJars(),
                                    decide.at(ask.high()).averageJars())));
        }
        PlanAnswer.Delimit delimit = (PlanAnswer.Delimit) answer;
        return delimit.boundOfAll().isPresent() && delimit.jars() > 0
                ? frame.say(
                        "plan.tells.delimit", figures.fewerThan(delimit.boundOfAll().getAsDouble()))
                : frame.say("plan.tells.delimit.none");
    }

    private String compared(ComparisonOutlook outlook) {
        double efficacy = ((Ask.Compare) request.ask()).efficacy();
        double tells = 1 - outlook.probability(EfficacyVerdict.CANNOT_TELL);
        return frame.say(
                "plan.tells.compare",
                figures.percent(efficacy),
                figures.plain(Math.floor(100 * tells + 1e-9)));
    }

    List<String> leads(PlanAnswer answer) {
        List<String> leads = new ArrayList<>();
        if (answer instanceof PlanAnswer.Detect detect) {
            Ask.Detect ask = (Ask.Detect) request.ask();
            leads.add(
                    frame.say(
                            "plan.lead.detect",
                            figures.exactly(ask.density()),
                            figures.plain(Math.floor(100 * detect.chance() + 1e-9))));
            if (detect.needed().isEmpty()) {
                leads.add(frame.say("plan.lead.never", figures.percent(ask.confidence())));
            } else if (detect.needed().getAsLong() > detect.jars()) {
                leads.add(needed(detect.needed().getAsLong()));
            }
        } else if (answer instanceof PlanAnswer.Estimate estimate) {
            leads.add(
                    frame.say(
                            "plan.lead.estimate",
                            figures.percent(rounded(estimate.row().precision()))));
            if (estimate.needed().isPresent() && estimate.needed().getAsLong() > estimate.jars()) {
                leads.add(needed(estimate.needed().getAsLong()));
            }
        } else if (answer instanceof PlanAnswer.Compare compare) {
            leads.add(frame.say("plan.lead.compare", figures.percent(compare.target())));
        } else if (answer instanceof PlanAnswer.Decide decide) {
            leads.add(decided((Ask.Decide) request.ask(), decide));
        } else if (answer instanceof PlanAnswer.Delimit delimit) {
            if (delimit.boundOfOne().isPresent()) {
                leads.add(
                        frame.say(
                                "plan.lead.delimit",
                                figures.fewerThan(delimit.boundOfOne().getAsDouble())));
            }
            leads.add(frame.say("plan.lead.delimit.next"));
        }
        leads.add(frame.say("caution.unseen"));
        return leads;
    }

    private String needed(long jars) {
        return frame.say("plan.lead.needed", figures.jars(jars));
    }

    /** Half a per cent more or less says nothing. */
    private static double rounded(double share) {
        return Math.round(100 * share) / 100.0;
    }

    private String decided(Ask.Decide ask, PlanAnswer.Decide answer) {
        return frame.say(
                "plan.lead.decide",
                figures.exactly(ask.low()),
                figures.plain(Math.floor(100 * answer.at(ask.low()).below() + 1e-9)),
                figures.exactly(ask.high()),
                figures.plain(Math.floor(100 * answer.at(ask.high()).above() + 1e-9)));
    }
}
