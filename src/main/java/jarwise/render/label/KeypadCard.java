package jarwise.render.label;

import jarwise.render.report.Paper;
import jarwise.render.words.Words;
import java.util.List;

/** The keys of the microscope page as a card to lay under the lamp: a keypad drawn as it is. */
public final class KeypadCard {

    private static final double KEY_WIDTH = 43;
    private static final double KEY_HEIGHT = 31;
    private static final double GAP = 2;
    private static final double TOP = 40;

    private final Drawing page;
    private final Words words;
    private final double left;

    /** A key at a column and row of the keypad, so many of them wide and high. */
    private record Key(String sign, String name, int column, int row, int wide, int high) {

        Key(String sign, String name, int column, int row) {
            this(sign, name, column, row, 1, 1);
        }
    }

    private static final List<Key> KEYS =
            List.of(
                    new Key("/", "before", 1, 0),
                    new Key("*", "after", 2, 0),
                    new Key("-", "undo", 3, 0),
                    new Key("7", "pupal", 0, 1),
                    new Key("8", "egg", 1, 1),
                    new Key("9", "male", 2, 1),
                    new Key("+", "voucher", 3, 1, 1, 2),
                    new Key("4", "larva-1", 0, 2),
                    new Key("5", "larva-2", 1, 2),
                    new Key("6", "adult", 2, 2),
                    new Key("1", "predator", 0, 3),
                    new Key("2", "other", 1, 3),
                    new Key("3", "unsure", 2, 3),
                    new Key("Enter", "filter-done", 3, 3, 1, 2),
                    new Key("0", "cell-done", 0, 4, 2, 1),
                    new Key(".", "obscured", 2, 4));

    private KeypadCard(Drawing page, Words words, double left) {
        this.page = page;
        this.words = words;
        this.left = left;
    }

    /** {@return one page} */
    public static byte[] pdf(Paper paper, Words words) {
        double width = paper.widthMm();
        double left = (width - 4 * KEY_WIDTH - 3 * GAP) / 2;
        String title = words.say("card.title");
        try (Pdf pdf = new Pdf(title)) {
            try (Drawing page = pdf.page(width, paper.heightMm())) {
                KeypadCard card = new KeypadCard(page, words, left);
                page.text(left, 22, Type.bold(20), title);
                page.text(left, 31, Type.plain(11), words.say("card.sub"));
                new FilterGrid(page).emblem(width - left - 9, 22, 8.5);
                KEYS.forEach(card::key);
                card.rules(TOP + 5 * (KEY_HEIGHT + GAP) + 8);
            }
            return pdf.bytes();
        }
    }

    private void key(Key key) {
        Box box =
                new Box(
                        left + key.column * (KEY_WIDTH + GAP),
                        TOP + key.row * (KEY_HEIGHT + GAP),
                        key.wide * (KEY_WIDTH + GAP) - GAP,
                        key.high * (KEY_HEIGHT + GAP) - GAP);
        boolean home = key.sign.equals("5");
        page.ink(0);
        page.fillInk(0);
        page.pen(home ? 1 : 0.4);
        page.frame(box);
        if (home) {
            page.pen(1.2);
            page.line(box.x() + 17, box.bottom() - 2.4, box.x() + 26, box.bottom() - 2.4);
        }
        page.text(box.x() + 3, box.y() + 10, Type.bold(24), key.sign);
        new StageSign(page).draw(key.name, box.right() - 11, box.y() + 10);
        Box name = new Box(box.x() + 3, box.y() + 18, box.width() - 5, 4.9);
        page.paragraph(name, Type.plain(12.5), words.say("card." + key.name));
    }

    private void rules(double top) {
        double y = top;
        for (String key : List.of("card.rule.walk", "card.rule.edge", "card.rule.rest")) {
            Box line = new Box(left, y, 4 * KEY_WIDTH + 3 * GAP, 5.4);
            y = page.paragraph(line, Type.plain(11.5), words.say(key)) + 1.2;
        }
    }
}
