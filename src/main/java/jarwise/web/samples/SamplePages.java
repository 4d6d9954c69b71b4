package jarwise.web.samples;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import jarwise.base.InvalidInput;
import jarwise.sample.SampleCode;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleState;
import jarwise.sample.Step;
import jarwise.tally.EventId;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.samples.CorrectCount;
import jarwise.usecase.samples.CorrectSample;
import jarwise.usecase.samples.EndSample;
import jarwise.usecase.samples.EnterCounts;
import jarwise.usecase.samples.IdentifyUnsure;
import jarwise.usecase.samples.ListSamples;
import jarwise.usecase.samples.RecordSample;
import jarwise.usecase.samples.SettleQuestion;
import jarwise.usecase.samples.ShowSample;
import jarwise.usecase.samples.VoidCount;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import jarwise.web.piece.Form;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Samples: the list, a new one, one with its life and history, and what is done to it. */
public final class SamplePages implements Pages {

    private static final String NOBODY = "desk";

    private final Server.Kit kit;
    private final Deeds deeds;

    /** Makes the pages. */
    public SamplePages(Server.Kit kit, Deeds deeds) {
        this.kit = kit;
        this.deeds = deeds;
    }

    /** What can be done on these pages. */
    public record Deeds(
            ListSamples list,
            ShowSample show,
            RecordSample record,
            EnterCounts enter,
            CorrectCount correctCount,
            VoidCount voidCount,
            CorrectSample correct,
            EndSample end,
            SettleQuestion settle,
            IdentifyUnsure identify) {}

    /** One thing done to one sample. */
    private interface Change {
        void make(String nursery, String person, SampleCode code, Fields fields);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/samples", this::list);
        routes.get("/{nursery}/samples/{code}", http -> show(http, http.pathParam("code")));
        routes.get("/{nursery}/new-sample", http -> fresh(http, Optional.empty()));
        routes.post("/{nursery}/new-sample", this::record);
        change(routes, "enter", (n, p, code, fields) -> deeds.enter().run(n, p, code, fields));
        change(routes, "correct", (n, p, code, fields) -> deeds.correct().run(n, p, code, fields));
        change(routes, "end", (n, p, code, fields) -> deeds.end().run(n, p, code, fields));
        change(
                routes,
                "count",
                (n, p, code, fields) ->
                        deeds.correctCount().run(n, p, code, stage(fields), fields));
        change(
                routes,
                "void",
                (n, p, code, fields) -> deeds.voidCount().run(n, p, code, stage(fields), fields));
        change(routes, "settle", (n, p, code, fields) -> settle(n, p, code, fields));
        change(
                routes,
                "identify",
                (n, p, code, fields) -> deeds.identify().run(n, p, code, fields));
        routes.post("/{nursery}/sample/time", this::time);
    }

    private void change(RoutesConfig routes, String name, Change change) {
        routes.post("/{nursery}/sample/" + name, http -> make(http, name, change));
    }

    private void list(Context http) {
        Optional<String> code = Optional.ofNullable(http.queryParam("code"));
        if (code.isPresent()) {
            show(http, code.get());
            return;
        }
        Frame frame = kit.frames().ofSite(http, "samples");
        SampleFilter filter = filter(http);
        int page = number(http.queryParam("page"));
        ListSamples.Listed listed = deeds.list().run(slug(frame), filter, page);
        ListView view = new ListView(frame, filter, listed, deeds.list().offers(slug(frame)));
        kit.templates().answer(http, "samples.jte", Map.of("frame", frame, "view", view));
    }

    private static SampleFilter filter(Context http) {
        String state = Optional.ofNullable(http.queryParam("state")).orElse("");
        String day = Optional.ofNullable(http.queryParam("day")).orElse("");
        return new SampleFilter(
                Optional.ofNullable(http.queryParam("part")).orElse("").strip(),
                Arrays.stream(SampleState.values())
                        .filter(one -> Fields.wordOf(one).equals(state))
                        .findAny(),
                day(day));
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static int number(@org.jspecify.annotations.Nullable String text) {
        return text != null && text.matches("[0-9]{1,6}") ? Integer.parseInt(text) : 1;
    }

    private void fresh(Context http, Optional<Form> refused) {
        Frame frame = kit.frames().ofSite(http, "samples");
        Form form = refused.orElseGet(() -> Form.fresh(frame));
        NewView view = new NewView(frame, form, deeds.list().offers(slug(frame)));
        kit.templates().answer(http, "sample_new.jte", Map.of("frame", frame, "view", view));
    }

    private void record(Context http) {
        Frame frame = kit.frames().ofSite(http, "samples");
        Map<String, String> typed = typed(http);
        try {
            SampleCode code = deeds.record().run(slug(frame), person(frame), Fields.of(typed));
            http.redirect(frame.to(address(code)), HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            fresh(http, Optional.of(Form.refused(frame, "new", typed, refused)));
        }
    }

    private void show(Context http, String text) {
        Frame frame = kit.frames().ofSite(http, "samples");
        show(http, frame, code(text), Form.fresh(frame));
    }

    private void show(Context http, Frame frame, SampleCode code, Form form) {
        ShowSample.Shown shown =
                deeds.show()
                        .run(slug(frame), code, frame.now().toLocalDate())
                        .orElseThrow(NotFoundResponse::new);
        SampleView view = new SampleView(frame, shown, form, deeds.list().offers(slug(frame)));
        kit.templates().answer(http, "sample.jte", Map.of("frame", frame, "view", view));
    }

    private void make(Context http, String name, Change change) {
        Frame frame = kit.frames().ofSite(http, "samples");
        Map<String, String> typed = typed(http);
        SampleCode code = code(typed.getOrDefault("code", ""));
        try {
            change.make(slug(frame), person(frame), code, Fields.of(typed));
            http.redirect(frame.to(address(code)), HttpStatus.SEE_OTHER);
        } catch (FormRefused refused) {
            http.status(HttpStatus.UNPROCESSABLE_CONTENT);
            String form = formName(name, typed);
            show(http, frame, code, Form.refused(frame, form, typed, refused));
        }
    }

    /** A page has one form for each stage and one for each step. */
    private static String formName(String name, Map<String, String> typed) {
        return typed.containsKey("stage") && typed.containsKey("pest")
                ? name + ":" + typed.get("pest") + ":" + typed.get("stage")
                : name;
    }

    private void time(Context http) {
        make(
                http,
                "time",
                (nursery, person, code, fields) -> {
                    Step step = fields.word("step", Step.class).orElse(Step.REGISTERED);
                    deeds.correct()
                            .timeOfStep(
                                    nursery,
                                    person,
                                    code,
                                    step,
                                    kit.frames().ofSite(http, "samples").now().getZone(),
                                    fields);
                });
    }

    private void settle(String nursery, String person, SampleCode code, Fields fields) {
        String sequence = fields.text("sequence");
        long number = sequence.matches("[0-9]{1,18}") ? Long.parseLong(sequence) : 1;
        EventId right = new EventId(fields.needed("device"), Math.max(1, number));
        deeds.settle().run(nursery, person, code, right);
    }

    private static StageKey stage(Fields fields) {
        return new StageKey(fields.text("pest"), fields.text("stage"));
    }

    private static Map<String, String> typed(Context http) {
        Map<String, String> typed = new TreeMap<>();
        http.formParamMap().forEach((name, values) -> typed.put(name, values.get(0)));
        return typed;
    }

    private static SampleCode code(String text) {
        try {
            return new SampleCode(text);
        } catch (InvalidInput e) {
            NotFoundResponse none = new NotFoundResponse();
            none.initCause(e);
            throw none;
        }
    }

    /** {@return the address of a sample; codes that would cut a path short go in the query} */
    static String address(SampleCode code) {
        String encoded = URLEncoder.encode(code.text(), StandardCharsets.UTF_8).replace("+", "%20");
        boolean plain = code.text().matches("[\\p{L}\\p{N}_~-][\\p{L}\\p{N}._~ -]*");
        return plain ? "samples/" + encoded : "samples?code=" + encoded;
    }

    private static String person(Frame frame) {
        return frame.person().isEmpty() ? NOBODY : frame.person();
    }

    private static String slug(Frame frame) {
        return frame.nursery().orElseThrow(NotFoundResponse::new).slug();
    }
}
