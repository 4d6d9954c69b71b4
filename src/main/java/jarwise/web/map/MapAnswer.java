package jarwise.web.map;

import jarwise.render.finding.FindingWords;
import jarwise.render.words.Days;
import jarwise.render.words.Words;
import jarwise.usecase.findings.Findings;
import jarwise.usecase.map.CropMap;
import jarwise.usecase.map.CropMap.Status;
import jarwise.web.findings.Answer;
import java.util.ArrayList;
import java.util.List;

/** The answer of the map: how many benches are above the line, cannot be told, were not sampled. */
final class MapAnswer {

    private final CropMap map;
    private final FindingWords say;
    private final Words words;

    MapAnswer(CropMap map, FindingWords say) {
        this.map = map;
        this.say = say;
        this.words = say.words();
    }

    MapView.Answer answer() {
        return new MapView.Answer(when(), sentence(), lead());
    }

    private String when() {
        if (map.findings().isEmpty() || map.stops().isEmpty()) {
            return "";
        }
        Findings round = map.findings().get();
        String key = round.rounds().weeks() ? "map.when.week" : "map.when";
        return words.say(
                key,
                say.start(say.subject(round.scope().subject())),
                new Days(words).dated(map.day()));
    }

    private String sentence() {
        if (map.plan().houses().isEmpty()) {
            return words.say("map.answer.no-house");
        }
        if (map.stops().isEmpty()) {
            return words.say("map.answer.no-round");
        }
        if (!map.walked()) {
            return words.say("map.answer.planned");
        }
        return counts();
    }

    /** "2 benches are above the line; 7 cannot be told; 3 were not sampled." */
    private String counts() {
        List<String> parts = new ArrayList<>();
        int judged =
                map.count(Status.ABOVE) + map.count(Status.BELOW) + map.count(Status.CANNOT_TELL);
        if (judged > 0) {
            parts.add(say.figures().counted("map.answer.above", map.count(Status.ABOVE)));
        }
        add(parts, "map.answer.below", Status.BELOW);
        add(parts, "map.answer.open", Status.CANNOT_TELL);
        add(parts, "map.answer.no-line", Status.NO_LINE);
        add(parts, "map.answer.not-read", Status.NOT_READ);
        add(parts, "map.answer.not-sampled", Status.NOT_SAMPLED);
        return say.start(String.join("; ", parts)) + ".";
    }

    private void add(List<String> parts, String key, Status status) {
        int count = map.count(status);
        if (count > 0) {
            parts.add(say.figures().counted(key, count));
        }
    }

    private String lead() {
        return map.findings()
                .filter(Findings::sampled)
                .map(round -> new Answer(round, say).lead())
                .orElse("");
    }
}
