package jarwise.web.samples;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.render.chart.StageMarks;
import jarwise.sample.CollectedSample;
import jarwise.sample.SampleFilter;
import jarwise.sample.SampleState;
import jarwise.tally.StageKey;
import jarwise.usecase.form.Fields;
import jarwise.usecase.samples.ListSamples;
import jarwise.web.Frame;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What the list of samples shows.
 *
 * @param frame the reader's language and clocks
 * @param filter what was asked for
 * @param listed the page
 * @param offers names of what was counted
 */
public record ListView(
        Frame frame, SampleFilter filter, ListSamples.Listed listed, ListSamples.Offers offers) {

    /** A find: how many of a stage, with its mark. */
    public record Find(String mark, String number, String stage) {}

    /** {@return how many samples there are, as a sentence} */
    public String answer() {
        boolean all = filter.equals(SampleFilter.ALL);
        return frame.say(all ? "samples.answer" : "samples.answer.some", listed.found());
    }

    /** {@return the address of a sample's page} */
    public String address(CollectedSample sample) {
        return frame.to(SamplePages.address(sample.code()));
    }

    /** {@return where it was cut, in short} */
    public String place(CollectedSample sample) {
        List<String> parts = new ArrayList<>();
        sample.place().bench().or(() -> sample.place().house()).ifPresent(parts::add);
        sample.place().variety().ifPresent(parts::add);
        return String.join(", ", parts);
    }

    /** {@return the state in words} */
    public String state(CollectedSample sample) {
        return frame.say("state." + Fields.wordOf(sample.state()));
    }

    /** {@return what was found, stage by stage; empty where nothing was or nothing was read} */
    public List<Find> finds(ListSamples.Row row) {
        List<Find> finds = new ArrayList<>();
        for (Pest pest : offers.pests().all()) {
            for (LifeStage stage : pest.lifeStages()) {
                Long number = row.counts().get(new StageKey(pest.code(), stage.code()));
                if (number != null && number > 0) {
                    String name = frame.stageName(stage.code()) + ", " + frame.pestName(pest);
                    String mark = StageMarks.draw(stage.mark());
                    finds.add(new Find(mark, String.valueOf(number), name));
                }
            }
        }
        return finds;
    }

    /** {@return all states, for the filter} */
    public List<SampleState> states() {
        return List.of(SampleState.values());
    }

    /** {@return the word of a state} */
    public String word(SampleState state) {
        return Fields.wordOf(state);
    }

    /** {@return whether a state is the one asked for} */
    public boolean isAsked(SampleState state) {
        return filter.state().filter(state::equals).isPresent();
    }

    /** {@return whether a day is the one asked for} */
    public boolean isAsked(LocalDate day) {
        return filter.day().filter(day::equals).isPresent();
    }

    /** {@return the address of another page of the same list} */
    public String page(int page) {
        StringBuilder address = new StringBuilder(frame.to("samples") + "?page=" + page);
        if (!filter.part().isEmpty()) {
            address.append("&part=")
                    .append(URLEncoder.encode(filter.part(), StandardCharsets.UTF_8));
        }
        filter.state().ifPresent(state -> address.append("&state=").append(word(state)));
        filter.day().ifPresent(day -> address.append("&day=").append(day));
        return address.toString();
    }
}
