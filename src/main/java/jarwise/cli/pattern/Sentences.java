package jarwise.cli.pattern;

import jarwise.base.Message;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Warnings in the order in which they come; what is true of several groups is said once. */
final class Sentences {

    private final Map<String, List<String>> groupsBySentence = new LinkedHashMap<>();
    private final int groups;

    /** Begins; there are so many groups in all. */
    Sentences(int groups) {
        this.groups = groups;
    }

    /** Adds what was noted when the sheet was read. */
    Sentences addNotes(List<Message> notes) {
        notes.forEach(note -> add("", Words.of(Language.ENGLISH).say(note)));
        return this;
    }

    /** Adds a sentence about a group; an empty name stands for the whole sheet. */
    Sentences add(String group, String sentence) {
        List<String> names = groupsBySentence.computeIfAbsent(sentence, s -> new ArrayList<>());
        if (!group.isEmpty()) {
            names.add(group);
        }
        return this;
    }

    /** {@return every sentence once, after the groups that it is about} */
    List<String> all() {
        List<String> all = new ArrayList<>();
        groupsBySentence.forEach((sentence, names) -> all.add(about(names) + sentence));
        return all;
    }

    private String about(List<String> names) {
        if (names.isEmpty()) {
            return "";
        }
        return (names.size() == groups && groups > 1 ? "Every group" : String.join("; ", names))
                + ": ";
    }
}
