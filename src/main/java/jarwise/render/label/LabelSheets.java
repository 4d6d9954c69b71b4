package jarwise.render.label;

import java.util.List;

/** Prints labels: three stickers for each jar, on sheets of one geometry. */
public final class LabelSheets {

    private static final double MARGIN = 9;
    private static final double LINE = 2.9;

    private LabelSheets() {}

    /**
     * Prints labels.
     *
     * @param jars in the order of the walk
     * @param job how
     * @return a PDF, true to scale
     */
    public static byte[] pdf(List<JarLabel> jars, LabelJob job) {
        List<Places.Placed> placed = Places.of(jars, job.geometry(), job.start());
        int size = job.geometry().size();
        int sheets = sheets(jars, job.geometry(), job.start());
        try (Pdf pdf = new Pdf(job.head())) {
            for (int sheet = 0; sheet < sheets; sheet++) {
                final int number = sheet;
                List<Places.Placed> here =
                        placed.stream().filter(one -> one.cell() / size == number).toList();
                sheet(pdf, here, job, job.words().say("label.sheet", sheet + 1, sheets));
            }
            return pdf.bytes();
        }
    }

    /** {@return sheets that the labels take, the half-used one counted} */
    public static int sheets(List<JarLabel> jars, LabelGeometry geometry, int start) {
        List<Places.Placed> placed = Places.of(jars, geometry, start);
        return placed.isEmpty() ? 0 : placed.get(placed.size() - 1).cell() / geometry.size() + 1;
    }

    private static void sheet(Pdf pdf, List<Places.Placed> here, LabelJob job, String number) {
        LabelGeometry geometry = job.geometry();
        double width = geometry.paper().widthMm();
        double height = geometry.paper().heightMm();
        try (Drawing page = pdf.page(width, height)) {
            margins(page, job, number);
            LabelFace face = new LabelFace(page, job.words());
            for (Places.Placed one : here) {
                face.draw(job.cell(one.cell() % geometry.size()), one.jar(), one.part());
            }
        }
    }

    private static void margins(Drawing page, LabelJob job, String number) {
        LabelGeometry geometry = job.geometry();
        double right = geometry.paper().widthMm() - MARGIN;
        double above = geometry.first().y() - 3;
        page.text(MARGIN, above, Type.bold(7.5), job.head());
        page.textTo(right, above, Type.plain(7.5), number);
        double y = geometry.cell(geometry.size() - 1).bottom() + 3.4;
        for (String caution : job.cautions()) {
            page.fitted(new Box(MARGIN, y, right - MARGIN, 0), Type.plain(7), caution);
            y += LINE;
        }
    }
}
