package jarwise.web.findings;

import io.javalin.http.Context;
import jarwise.base.Message;
import jarwise.base.Refused;
import jarwise.decision.Finding.Subject;
import jarwise.pest.Pest;
import jarwise.usecase.ShowFindings;
import jarwise.usecase.findings.Scope;
import jarwise.usecase.findings.SiteRules;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** What an address asks for: which animals, where, in which days. */
public final class ScopeQuery {

    private ScopeQuery() {}

    /**
     * Reads an address.
     *
     * @param last last day, where the address names none
     * @return what it asks for; empty where the site has no animals to look for
     */
    public static Optional<Scope> of(Context http, SiteRules rules, LocalDate last) {
        LocalDate to = day(http, "to").orElse(last);
        LocalDate from = day(http, "from").orElse(to.minusDays(ShowFindings.USUAL_DAYS));
        if (from.isAfter(to)) {
            throw new Refused(Message.of("findings.days", from.toString(), to.toString()));
        }
        return subject(http, rules, to)
                .map(
                        subject ->
                                new Scope(
                                        subject,
                                        text(http, "variety"),
                                        text(http, "house"),
                                        text(http, "bench"),
                                        from,
                                        to));
    }

    /** A stage that the chosen pest does not have gives way to one that it has. */
    private static Optional<Subject> subject(Context http, SiteRules rules, LocalDate day) {
        Optional<Subject> usual = ShowFindings.usual(rules, day);
        Optional<Pest> pest =
                text(http, "pest").or(() -> usual.map(Subject::pest)).flatMap(rules.pests()::find);
        return pest.map(
                chosen -> {
                    List<String> groups = chosen.stageGroups();
                    String group =
                            text(http, "stage")
                                    .filter(groups::contains)
                                    .or(
                                            () ->
                                                    usual.map(Subject::stageGroup)
                                                            .filter(groups::contains))
                                    .orElseGet(() -> groups.get(0));
                    return new Subject(chosen.code(), group);
                });
    }

    private static Optional<String> text(Context http, String name) {
        return Optional.ofNullable(http.queryParam(name)).filter(value -> !value.isBlank());
    }

    /** {@return a day named in an address; empty where there is none} */
    public static Optional<LocalDate> day(Context http, String name) {
        return text(http, name)
                .map(
                        value -> {
                            try {
                                return LocalDate.parse(value);
                            } catch (DateTimeException e) {
                                throw new Refused(Message.of("form.day", value));
                            }
                        });
    }
}
