package jarwise.site.floor;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads how a house is laid out from a few words: "6 benches × 4 bays", "4 bays x 6 benches", "2
 * bays of 6 benches, 1 bay of 8", "4 naves de 6 mesas", "4 travées × 6 tables". Upper case and
 * accents make no difference.
 */
public final class LayoutSentence {

    private static final Set<String> BAYS =
            Set.of(
                    ("bay bays section sections span spans bahia bahias nave naves seccion"
                                    + " secciones tramo tramos travee travees chapelle chapelles"
                                    + " baie baies")
                            .split(" "));
    private static final Set<String> BENCHES =
            Set.of(
                    ("bench benches bed beds table tables mesa mesas banco bancos bancada bancadas"
                                    + " bancal bancales banc bancs tablette tablettes planche"
                                    + " planches")
                            .split(" "));
    private static final Set<String> EACH =
            Set.of("each", "per", "cada", "una", "uno", "chacun", "chacune", "chaque");
    private static final Set<String> JOINED =
            Set.of(
                    "x", "×", "*", "by", "of", "with", "in", "por", "de", "con", "en", "par",
                    "avec", "a", "every", "to", "the", "each", "per", "cada", "chacun", "chacune",
                    "chaque", "una", "uno", "d", "'", "’", ".", ":", "las", "los");
    private static final Set<String> APART =
            Set.of(",", ";", "+", "and", "y", "et", "plus", "then", "luego", "puis", "mas");
    private static final Map<String, Integer> NUMBERS =
            Map.ofEntries(
                    Map.entry("one", 1),
                    Map.entry("two", 2),
                    Map.entry("three", 3),
                    Map.entry("four", 4),
                    Map.entry("five", 5),
                    Map.entry("six", 6),
                    Map.entry("seven", 7),
                    Map.entry("eight", 8),
                    Map.entry("nine", 9),
                    Map.entry("ten", 10),
                    Map.entry("dos", 2),
                    Map.entry("tres", 3),
                    Map.entry("cuatro", 4),
                    Map.entry("cinco", 5),
                    Map.entry("seis", 6),
                    Map.entry("siete", 7),
                    Map.entry("ocho", 8),
                    Map.entry("nueve", 9),
                    Map.entry("diez", 10),
                    Map.entry("deux", 2),
                    Map.entry("trois", 3),
                    Map.entry("quatre", 4),
                    Map.entry("cinq", 5),
                    Map.entry("sept", 7),
                    Map.entry("huit", 8),
                    Map.entry("neuf", 9),
                    Map.entry("dix", 10));

    private static final Pattern TOKEN = Pattern.compile("[0-9]+|\\p{L}+|[^\\s0-9\\p{L}]");
    private static final int LONGEST = 200;

    private final String typed;
    private final List<Item> items = new ArrayList<>();
    private boolean each;

    private LayoutSentence(String typed) {
        this.typed = typed;
    }

    private enum Kind {
        BAY,
        BENCH
    }

    /** A number with its noun, and whether a comma or an "and" stands before it. */
    private record Item(int number, Optional<Kind> kind, boolean apart) {

        Item of(Kind noun) {
            return new Item(number, Optional.of(noun), apart);
        }

        boolean is(Kind noun) {
            return kind.equals(Optional.of(noun));
        }
    }

    /**
     * Reads a layout.
     *
     * @param typed in English, Spanish or French
     * @return bays and benches
     * @throws LayoutRefused with what is not understood, if anything is
     */
    public static BenchGrid read(String typed) {
        LayoutSentence sentence = new LayoutSentence(typed.strip());
        if (typed.isBlank()) {
            throw new LayoutRefused(Message.of("form.needed"));
        }
        if (typed.length() > LONGEST) {
            throw new LayoutRefused(Message.of("form.too-long", String.valueOf(LONGEST)));
        }
        sentence.readItems();
        return sentence.grid();
    }

    private void readItems() {
        String plain =
                Normalizer.normalize(typed, Normalizer.Form.NFD)
                        .replaceAll("\\p{M}", "")
                        .toLowerCase(Locale.ROOT);
        // "6x4" is two numbers with a sign between, not a number with a unit.
        Matcher tokens = TOKEN.matcher(plain);
        boolean apart = false;
        while (tokens.find()) {
            String token = tokens.group();
            Optional<Integer> number = number(token);
            each |= EACH.contains(token);
            if (number.isPresent()) {
                items.add(new Item(number.get(), Optional.empty(), apart));
                apart = false;
            } else if (BAYS.contains(token) || BENCHES.contains(token)) {
                noun(token, BAYS.contains(token) ? Kind.BAY : Kind.BENCH);
            } else if (APART.contains(token)) {
                apart = true;
            } else if (!JOINED.contains(token)) {
                throw new LayoutRefused(Message.of("map.layout.word", token));
            }
        }
    }

    /** A noun belongs to the number before it; "6 in each bay" repeats what is known. */
    private void noun(String token, Kind kind) {
        int last = items.size() - 1;
        if (last < 0) {
            throw new LayoutRefused(Message.of("map.layout.number", token));
        }
        if (items.get(last).kind().isEmpty()) {
            items.set(last, items.get(last).of(kind));
        } else if (!each) {
            throw new LayoutRefused(Message.of("map.layout.number", token));
        }
    }

    private static Optional<Integer> number(String token) {
        if (token.matches("[0-9]{1,4}")) {
            return Optional.of(Integer.parseInt(token));
        }
        if (token.matches("[0-9]+")) {
            return Optional.of(Integer.MAX_VALUE);
        }
        return Optional.ofNullable(NUMBERS.get(token));
    }

    private BenchGrid grid() {
        List<Integer> bays = new ArrayList<>();
        int next = 0;
        while (next < items.size()) {
            boolean paired =
                    next + 1 < items.size() && belong(items.get(next), items.get(next + 1));
            Item first = items.get(next);
            if (paired) {
                add(bays, first, items.get(next + 1));
            } else if (first.is(Kind.BENCH)) {
                add(bays, new Item(1, Optional.of(Kind.BAY), false), first);
            } else {
                throw new LayoutRefused(
                        Message.of("map.layout.benches", String.valueOf(first.number())));
            }
            next += paired ? 2 : 1;
        }
        try {
            return new BenchGrid(bays);
        } catch (InvalidInput e) {
            throw new LayoutRefused(tooMany());
        }
    }

    private boolean belong(Item first, Item second) {
        if (second.apart() && !(first.is(Kind.BAY) && each)) {
            return false;
        }
        if (first.kind().isEmpty() && second.kind().isEmpty()) {
            throw new LayoutRefused(
                    Message.of(
                            "map.layout.two-ways",
                            typed,
                            String.valueOf(first.number()),
                            String.valueOf(second.number())));
        }
        if (first.kind().equals(second.kind())) {
            throw new LayoutRefused(Message.of("map.layout.twice", typed));
        }
        return true;
    }

    private static void add(List<Integer> bays, Item one, Item other) {
        boolean bayFirst = one.is(Kind.BAY) || other.is(Kind.BENCH);
        int number = bayFirst ? one.number() : other.number();
        int benches = bayFirst ? other.number() : one.number();
        if (number > BenchGrid.MOST_BENCHES || number < 1 || benches < 1) {
            throw new LayoutRefused(tooMany());
        }
        for (int i = 0; i < number; i++) {
            bays.add(benches);
        }
    }

    private static Message tooMany() {
        return Message.of("map.layout.many", String.valueOf(BenchGrid.MOST_BENCHES));
    }
}
