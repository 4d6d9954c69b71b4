package jarwise.render.label;

import jarwise.plan.PlannedJar;
import jarwise.plan.RoundPlan;
import jarwise.plan.Spot;
import jarwise.render.report.Paper;
import jarwise.render.words.Words;
import java.util.List;

/** The round on paper, for when no phone will do: one row a jar, to fill in with a pencil. */
public final class RoundSheet {

    private static final double MARGIN = 11;
    private static final double TOP = 34;
    private static final double ROW = 10;
    private static final double HEAD = 9;
    private static final double FOOT = 17;
    private static final double BOX = 3.4;

    private final Words words;
    private final double width;
    private final double height;
    private final List<Column> columns;

    /** A column from {@code left} on. */
    private record Column(String key, double left, double width) {

        double middle() {
            return left + width / 2;
        }
    }

    private RoundSheet(Paper paper, Words words) {
        this.words = words;
        // Lying on its long side.
        this.width = paper.heightMm();
        this.height = paper.widthMm();
        this.columns = columns(width);
    }

    private static List<Column> columns(double width) {
        String[] keys = {
            "walk", "code", "place", "planned", "cut", "pair", "fluid", "shake", "washed", "frozen",
            "remarks"
        };
        double[] widths = {8, 34, 46, 17, 19, 17, 25, 17, 21, 21, 0};
        double left = MARGIN;
        Column[] columns = new Column[keys.length];
        for (int i = 0; i < keys.length; i++) {
            double wide = widths[i] > 0 ? widths[i] : width - MARGIN - left;
            columns[i] = new Column("sheet.round." + keys[i], left, wide);
            left += wide;
        }
        return List.of(columns);
    }

    /**
     * Prints a round.
     *
     * @param plan the round
     * @param head its name and day
     * @param cautions what stands at the foot of each page
     * @return a PDF, lying on its long side
     */
    public static byte[] pdf(
            RoundPlan plan, String head, List<String> cautions, Paper paper, Words words) {
        RoundSheet sheet = new RoundSheet(paper, words);
        int rows = (int) ((sheet.height - TOP - HEAD - FOOT) / ROW);
        int pages = (plan.jars().size() + rows - 1) / rows;
        try (Pdf pdf = new Pdf(head)) {
            for (int i = 0; i < pages; i++) {
                int to = Math.min((i + 1) * rows, plan.jars().size());
                try (Drawing page = pdf.page(sheet.width, sheet.height)) {
                    sheet.head(page, head, words.say("sheet.page", i + 1, pages));
                    sheet.table(page, plan.jars().subList(i * rows, to));
                    sheet.foot(page, cautions);
                }
            }
            return pdf.bytes();
        }
    }

    private void head(Drawing page, String head, String number) {
        page.fitted(new Box(MARGIN, 16, width - 2 * MARGIN - 30, 0), Type.bold(14), head);
        page.textTo(width - MARGIN, 16, Type.plain(9), number);
        page.pen(0.2);
        double x = MARGIN;
        for (String key :
                List.of("sheet.round.cutter", "sheet.round.washer", "sheet.round.start")) {
            Type type = Type.plain(9);
            page.text(x, 27, type, words.say(key));
            double from = x + page.width(words.say(key), type) + 1.5;
            page.line(from, 27.6, from + 42, 27.6);
            x = from + 52;
        }
    }

    private void table(Drawing page, List<PlannedJar> jars) {
        double bottom = TOP + HEAD + jars.size() * ROW;
        page.pen(0.5);
        page.line(MARGIN, TOP, width - MARGIN, TOP);
        page.line(MARGIN, TOP + HEAD, width - MARGIN, TOP + HEAD);
        for (Column column : columns) {
            Box box = new Box(column.left + 1, TOP + 3.6, column.width - 1.5, 3.6);
            page.paragraph(box, Type.bold(7.5), words.say(column.key));
        }
        page.pen(0.15);
        page.ink(0.4);
        for (int i = 0; i < jars.size(); i++) {
            double y = TOP + HEAD + i * ROW;
            row(page, jars.get(i), y);
            page.line(MARGIN, y + ROW, width - MARGIN, y + ROW);
        }
        for (Column column : columns.subList(1, columns.size())) {
            page.line(column.left, TOP, column.left, bottom);
        }
        page.ink(0);
    }

    private void row(Drawing page, PlannedJar jar, double y) {
        double baseline = y + 6.4;
        JarLabel label = JarLabel.of(jar, words);
        page.textTo(columns.get(0).left + 6, baseline, Type.plain(9), String.valueOf(jar.walk()));
        Column code = columns.get(1);
        page.fitted(line(code, y + 6.8), Type.bold(15), jar.code().text());
        Column place = columns.get(2);
        page.fitted(line(place, y + 4.2), Type.bold(10), label.place() + "  " + label.variety());
        page.fitted(line(place, y + 8.2), Type.plain(8), where(jar));
        if (jar.growingPoints() > 0) {
            String number = String.valueOf(jar.growingPoints());
            page.textAt(columns.get(3).middle(), baseline, Type.plain(11), number);
        }
        page.frame(box(columns.get(5).middle() - BOX / 2, y + (ROW - BOX) / 2));
        Column fluid = columns.get(6);
        tick(page, fluid.left + 1.5, y + 1.2, "sheet.round.soap");
        tick(page, fluid.left + 1.5, y + 5.4, "sheet.round.alcohol");
    }

    private static Box line(Column column, double baseline) {
        return new Box(column.left + 1.2, baseline, column.width - 2, 0);
    }

    private static Box box(double x, double y) {
        return new Box(x, y, BOX, BOX);
    }

    private void tick(Drawing page, double x, double y, String key) {
        page.frame(box(x, y));
        page.text(x + BOX + 1.2, y + 2.8, Type.plain(8), words.say(key));
    }

    private String where(PlannedJar jar) {
        if (!jar.isOfCrop()) {
            return words.say("sheet.round.at-wash");
        }
        return jar.spot().map(this::where).orElseGet(() -> words.say("sheet.round.targeted"));
    }

    private String where(Spot spot) {
        return words.say(
                "sheet.round.spot",
                Math.round(spot.along() * 100),
                Math.round(spot.across() * 100));
    }

    private void foot(Drawing page, List<String> cautions) {
        double y = height - FOOT + 6;
        for (String caution : cautions) {
            Box line = new Box(MARGIN, y, width - 2 * MARGIN, 0);
            page.fitted(line, Type.plain(8), caution);
            y += 3.6;
        }
    }
}
