package jarwise.render.markdown;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * A Markdown document as HTML. HTML inside the document is shown as text, never run.
 *
 * @param title its first heading; empty if it has none
 * @param html everything below the title
 * @param headings its second- and third-level headings, for a table of contents
 */
public record MarkdownPage(String title, String html, List<Entry> headings) {

    private static final Pattern OWN_ID = Pattern.compile("\\s*\\{#([a-z0-9-]+)}\\s*$");
    private static final List<TablesExtension> TABLES =
            List.of((TablesExtension) TablesExtension.create());

    public MarkdownPage {
        headings = List.copyOf(headings);
    }

    /**
     * A heading that can be linked to.
     *
     * @param level 2 or 3
     * @param id its place in the address, after #
     * @param text what it says
     */
    public record Entry(int level, String id, String text) {}

    /** {@return the document; a heading may carry its own id as in "Density {#density}"} */
    public static MarkdownPage of(String markdown) {
        Node document = Parser.builder().extensions(TABLES).build().parse(markdown);
        Contents contents = new Contents();
        document.accept(contents);
        contents.first.ifPresent(Node::unlink);
        HtmlRenderer renderer =
                HtmlRenderer.builder()
                        .extensions(TABLES)
                        .escapeHtml(true)
                        .sanitizeUrls(true)
                        .attributeProviderFactory(
                                context ->
                                        (node, tag, attributes) ->
                                                decorate(contents, node, attributes))
                        .build();
        return new MarkdownPage(contents.title, renderer.render(document), contents.headings);
    }

    private static void decorate(Contents contents, Node node, Map<String, String> attributes) {
        String id = contents.ids.get(node);
        if (id != null) {
            attributes.put("id", id);
        }
        if (node instanceof org.commonmark.ext.gfm.tables.TableBlock) {
            attributes.put("class", "table");
        }
    }

    /** Reads the headings off a document and gives each an id of its own. */
    private static final class Contents extends AbstractVisitor {

        private final List<Entry> headings = new ArrayList<>();
        private final Map<Node, String> ids = new HashMap<>();
        private final Map<String, Integer> used = new HashMap<>();
        private Optional<Heading> first = Optional.empty();
        private String title = "";

        @Override
        public void visit(Heading heading) {
            Optional<String> own = takeOwnId(heading);
            String text = textOf(heading).strip();
            if (heading.getLevel() == 1 && first.isEmpty()) {
                first = Optional.of(heading);
                title = text;
                return;
            }
            String id = unique(own.orElseGet(() -> slug(text)));
            ids.put(heading, id);
            if (heading.getLevel() == 2 || heading.getLevel() == 3) {
                headings.add(new Entry(heading.getLevel(), id, text));
            }
        }

        private static Optional<String> takeOwnId(Heading heading) {
            if (!(heading.getLastChild() instanceof Text last)) {
                return Optional.empty();
            }
            Matcher own = OWN_ID.matcher(last.getLiteral());
            if (!own.find()) {
                return Optional.empty();
            }
            last.setLiteral(last.getLiteral().substring(0, own.start()));
            return Optional.of(own.group(1));
        }

        private String unique(String id) {
            int before = used.merge(id, 1, Integer::sum) - 1;
            return before == 0 ? id : id + "-" + before;
        }

        /** The rule most Markdown readers follow, so that links in the file work there, too. */
        private static String slug(String text) {
            return text.toLowerCase(Locale.ROOT)
                    .replaceAll("[^\\p{L}\\p{N} _-]", "")
                    .replace(' ', '-');
        }

        private static String textOf(Node node) {
            StringBuilder text = new StringBuilder();
            node.accept(
                    new AbstractVisitor() {
                        @Override
                        public void visit(Text part) {
                            text.append(part.getLiteral());
                        }

                        @Override
                        public void visit(Code part) {
                            text.append(part.getLiteral());
                        }
                    });
            return text.toString();
        }
    }
}
