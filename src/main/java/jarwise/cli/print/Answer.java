package jarwise.cli.print;

import jarwise.wire.json.JsonObject;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * What a command answers.
 *
 * @param json the answer for programs, without its warnings
 * @param inside the objects inside it, asked for figures that JSON cannot say
 * @param text the answer for people, without its warnings
 * @param warnings what a person should know; a sentence each, said once
 */
public record Answer(JsonObject json, List<JsonObject> inside, String text, List<String> warnings) {

    public Answer {
        inside = List.copyOf(inside);
        warnings = List.copyOf(new LinkedHashSet<>(warnings));
    }

    /**
     * Prints the answer.
     *
     * @param out where it goes, and nothing else
     * @param asJson for programs, else for people
     */
    public void print(PrintStream out, boolean asJson) {
        out.print(asJson ? forPrograms() : forPeople());
    }

    private String forPrograms() {
        List<String> all = new ArrayList<>(warnings);
        List<JsonObject> objects = new ArrayList<>(inside);
        objects.add(json);
        objects.stream()
                .flatMap(object -> object.unsaid().stream())
                .distinct()
                .map(field -> field + " is beyond all numbers with these options, and left out.")
                .forEach(all::add);
        return json.putTexts("warnings", all).text() + "\n";
    }

    private String forPeople() {
        StringBuilder said = new StringBuilder(text);
        if (!warnings.isEmpty()) {
            said.append("\nTo know:\n");
            warnings.forEach(warning -> said.append("- ").append(warning).append('\n'));
        }
        return said.toString();
    }
}
