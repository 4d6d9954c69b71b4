package jarwise.render.label;

import jarwise.render.report.Paper;
import jarwise.render.words.Words;

/** Four grids for filters, true to scale: to lay under a filter and draw through with a pencil. */
public final class FilterTemplate {

    private static final double TOP = 88;
    private static final double BETWEEN = 97;
    private static final double BELOW = 102;

    private FilterTemplate() {}

    /** {@return one page} */
    public static byte[] pdf(Paper paper, Words words) {
        double width = paper.widthMm();
        double left = (width - BETWEEN) / 2;
        String title = words.say("sheet.filter.title");
        try (Pdf pdf = new Pdf(title)) {
            try (Drawing page = pdf.page(width, paper.heightMm())) {
                double margin = left - FilterGrid.RADIUS;
                page.text(margin, 18, Type.bold(14), title);
                Box text = new Box(margin, 24.5, width - 2 * margin, 4.4);
                page.paragraph(text, Type.plain(9.5), words.say("sheet.filter.how"));
                FilterGrid grid = new FilterGrid(page);
                for (int i = 0; i < 4; i++) {
                    grid.template(left + i % 2 * BETWEEN, TOP + Math.floorDiv(i, 2) * BELOW);
                }
                double ruler = paper.heightMm() - 20;
                TestPage.ruler(page, (width - 100) / 2, ruler);
                page.textAt(width / 2, ruler + 5, Type.plain(8), words.say("label.test.ruler"));
            }
            return pdf.bytes();
        }
    }
}
