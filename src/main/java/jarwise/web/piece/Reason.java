package jarwise.web.piece;

import java.util.List;

/**
 * One of the folded reasons at the foot of a page.
 *
 * @param title what it is about
 * @param brief the reason in one line, seen while it is folded
 * @param paragraphs the rest
 * @param method name of the method's place on the Methods page
 */
public record Reason(String title, String brief, List<String> paragraphs, String method) {

    public Reason {
        paragraphs = List.copyOf(paragraphs);
    }
}
