package jarwise.render.label;

/** A page that shows whether the printer keeps to scale and where the labels lie. */
public final class TestPage {

    private static final int LONG = 100;

    private TestPage() {}

    /** {@return outlines of all labels and a ruler of 100 mm, moved by the job's nudge} */
    public static byte[] pdf(LabelJob job) {
        LabelGeometry geometry = job.geometry();
        double width = geometry.paper().widthMm();
        double height = geometry.paper().heightMm();
        try (Pdf pdf = new Pdf(job.head())) {
            try (Drawing page = pdf.page(width, height)) {
                page.pen(0.2);
                page.ink(0.45);
                for (int i = 0; i < geometry.size(); i++) {
                    Box cell = job.cell(i);
                    page.frame(cell);
                    page.fillInk(0.35);
                    page.text(cell.x() + 1.5, cell.y() + 4, Type.plain(8), Integer.toString(i + 1));
                }
                text(page, job, width, height);
            }
            return pdf.bytes();
        }
    }

    private static void text(Drawing page, LabelJob job, double width, double height) {
        double x = (width - LONG) / 2;
        double y = height / 2;
        Box card = new Box(x - 8, y - 27, LONG + 16, 50);
        page.fillInk(1);
        page.fill(card);
        page.fillInk(0);
        page.ink(0);
        page.pen(0.3);
        page.frame(card);
        String head = job.words().say("label.test.head", job.geometry().name());
        page.text(x, y - 19, Type.bold(13), head);
        page.paragraph(new Box(x, y - 13, LONG, 4), Type.plain(9), job.words().say("label.test"));
        ruler(page, x, y + 14);
        page.textAt(width / 2, y + 19.5, Type.plain(8), job.words().say("label.test.ruler"));
    }

    /** A ruler from {@code x} on with a mark each mm, and a number each 10 mm. */
    static void ruler(Drawing page, double x, double y) {
        page.ink(0);
        page.pen(0.2);
        page.line(x, y, x + LONG, y);
        for (int mm = 0; mm <= LONG; mm++) {
            double length = mm % 10 == 0 ? 4 : mm % 5 == 0 ? 3 : 1.8;
            page.pen(mm % 10 == 0 ? 0.25 : 0.12);
            page.line(x + mm, y, x + mm, y - length);
            if (mm % 10 == 0) {
                page.textAt(x + mm, y - 4.8, Type.plain(7), Integer.toString(mm));
            }
        }
    }
}
