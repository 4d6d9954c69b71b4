package jarwise.render.label;

import jarwise.render.words.Words;

/**
 * Draws one sticker: the QR code at the left, the code in clear, which part it belongs on, and as
 * much of the rest as the label has room for. From 25 mm of height on there are lines for a pencil.
 */
record LabelFace(Drawing page, Words words) {

    private static final double MODULE = 0.6;
    private static final double EDGE = 0.5;
    private static final double ROOM = 1.5;
    private static final double FULL_SIZE = 30;
    private static final double WITH_PENCIL_LINE = 24;
    private static final double TWO_LINES_OF_CODE = 16;

    void draw(Box label, JarLabel jar, Part part) {
        QrCode code = QrCode.of(jar.code().text());
        int modules = code.size() + 2 * QrCode.QUIET;
        double side = Math.min(modules * MODULE, Math.floor((label.height() - EDGE) * 10) / 10);
        boolean tall = label.height() >= WITH_PENCIL_LINE;
        double y = tall ? label.y() + EDGE : label.y() + (label.height() - side) / 2;
        page.fillInk(0);
        page.fillAll(code.boxes(label.x() + EDGE, y, side / modules));
        double x = label.x() + EDGE + side;
        Box text = new Box(x, label.y(), label.right() - ROOM - x, label.height());
        if (label.height() >= FULL_SIZE) {
            full(label, text, jar, part);
        } else if (tall) {
            flat(label, text, jar, part);
        } else if (label.height() >= TWO_LINES_OF_CODE) {
            small(text, jar, part);
        } else {
            smallest(text, jar, part);
        }
    }

    private void full(Box label, Box text, JarLabel jar, Part part) {
        double spare = (label.height() - 34) / 3;
        boolean wide = text.width() > 60;
        double small = wide ? 13 : 9.5;
        tag(new Box(text.x(), text.y() + 2, 0, 5), part);
        new FilterGrid(page).emblem(label.right() - 5.4, label.y() + 5, 3.4);
        double y = text.y() + 13.6 + spare;
        page.fitted(line(text, y), Type.bold(wide ? 30 : 20), jar.code().text());
        y += 4.4 + spare / 2;
        page.fitted(line(text, y), Type.bold(small), number(jar, "label.place-points"));
        y += small * 0.42;
        page.fitted(line(text, y), Type.plain(small), jar.variety());
        Box below = new Box(label.x() + 3, 0, label.width() - 3 - ROOM - EDGE, 0);
        double bottom = label.bottom() - 2.6;
        pencil(line(below, bottom - 5.6), "label.date", "label.really-cut");
        pencil(line(below, bottom), "label.washed", "label.frozen");
    }

    private void flat(Box label, Box text, JarLabel jar, Part part) {
        tag(new Box(text.x(), text.y() + 1.6, 0, 4.4), part);
        page.textTo(text.right(), text.y() + 5, Type.plain(8), points(jar));
        page.fitted(line(text, text.y() + 12.4), Type.bold(19), jar.code().text());
        page.fitted(line(text, text.y() + 16.8), Type.plain(9.5), place(jar));
        Box below = new Box(label.x() + 3, 0, label.width() - 3 - ROOM, 0);
        pencil(line(below, label.bottom() - 2), "label.date", "label.really-cut");
    }

    private void small(Box text, JarLabel jar, Part part) {
        String number = number(jar, "label.place-points-short");
        String code = jar.code().text();
        int half = code.indexOf('-') + 1;
        tag(new Box(text.x(), text.y() + 1.1, 0, 3.7), part);
        page.fitted(line(text, text.y() + 9.4), Type.bold(13), code.substring(0, half));
        page.fitted(line(text, text.y() + 14), Type.bold(13), code.substring(half));
        page.fitted(line(text, text.y() + 17.2), Type.bold(7), number);
        page.fitted(line(text, text.y() + 20), Type.plain(6.5), jar.variety());
    }

    private void smallest(Box text, JarLabel jar, Part part) {
        String number = number(jar, "label.place-points-short");
        page.fitted(line(text, text.y() + 5.2), Type.bold(13), jar.code().text());
        tag(new Box(text.x(), text.y() + 6.5, 0, 3.1), part);
        double x = text.x() + tagWidth(part, 3.1) + 1;
        Box rest = new Box(x, 0, text.right() - x, 0);
        page.fitted(line(rest, text.y() + 9), Type.bold(7), number);
        page.fitted(line(text, text.y() + 11.9), Type.plain(6.5), jar.variety());
    }

    private static Box line(Box text, double baseline) {
        return new Box(text.x(), baseline, text.width(), 0);
    }

    private static String place(JarLabel jar) {
        return jar.variety().isEmpty() ? jar.place() : jar.place() + "  " + jar.variety();
    }

    private String points(JarLabel jar) {
        return jar.growingPoints() == 0 ? "" : words.say("label.points", jar.growingPoints());
    }

    private String number(JarLabel jar, String key) {
        return jar.growingPoints() == 0
                ? jar.place()
                : words.say(key, jar.place(), jar.growingPoints());
    }

    /** The part as a word in a form of its own: full for the lid, a frame, a broken frame. */
    private void tag(Box at, Part part) {
        Box tag = new Box(at.x(), at.y(), tagWidth(part, at.height()), at.height());
        page.ink(0);
        page.pen(0.35);
        if (part == Part.LID) {
            page.fill(tag);
            page.fillInk(1);
        } else if (part == Part.VOUCHER) {
            page.dashed(0.9, 0.6);
        }
        if (part != Part.LID) {
            page.frame(tag);
            page.dashed();
        }
        double baseline = tag.bottom() - at.height() * 0.27;
        page.textAt(tag.x() + tag.width() / 2, baseline, tagType(at.height()), word(part));
        page.fillInk(0);
    }

    private double tagWidth(Part part, double height) {
        return page.width(word(part), tagType(height)) + height * 0.7;
    }

    private static Type tagType(double height) {
        return Type.bold(height * 0.64 * Pdf.POINTS_PER_MM);
    }

    private String word(Part part) {
        return words.say(part.key()).toUpperCase(words.language().locale());
    }

    /** Two lines to write on, side by side, each behind its word. */
    private void pencil(Box at, String left, String right) {
        double half = at.width() / 2;
        pencil(at.x(), at.y(), half - 2, words.say(left));
        pencil(at.x() + half, at.y(), half, words.say(right));
    }

    private void pencil(double x, double baseline, double width, String word) {
        Type type = Type.plain(7);
        page.text(x, baseline, type, word);
        page.pen(0.15);
        page.ink(0.25);
        page.line(x + page.width(word, type) + 1, baseline + 0.4, x + width, baseline + 0.4);
    }
}
