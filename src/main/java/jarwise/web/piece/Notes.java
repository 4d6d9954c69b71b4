package jarwise.web.piece;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Margin notes: beside the content at the desk, one row that opens on the phone.
 *
 * @param label what they are about, for the row and for screen readers
 * @param notes in order
 */
public record Notes(String label, List<Note> notes) {

    public Notes {
        notes = List.copyOf(notes);
    }

    /**
     * One note.
     *
     * @param title a few words
     * @param paragraphs short sentences
     */
    public record Note(String title, List<String> paragraphs) {
        public Note {
            paragraphs = List.copyOf(paragraphs);
        }

        /** {@return a note of one paragraph} */
        public static Note of(String title, String paragraph) {
            return new Note(title, List.of(paragraph));
        }
    }

    /** {@return notes named after their titles} */
    public static Notes of(List<Note> notes) {
        return new Notes(notes.stream().map(Note::title).collect(Collectors.joining(", ")), notes);
    }
}
