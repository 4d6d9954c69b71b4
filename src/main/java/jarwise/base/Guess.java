package jarwise.base;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/** Guesses which of some names was meant, for the "Maybe …" of a refusal. */
public final class Guess {

    private Guess() {}

    /** {@return the name closest to a mistyped one; the names themselves if none is close} */
    public static String among(Collection<String> names, String typed) {
        String lower = typed.toLowerCase(Locale.ROOT);
        int near = Math.min(2, lower.length() / 2);
        return names.stream()
                .filter(name -> distance(name.toLowerCase(Locale.ROOT), lower) <= near)
                .min(Comparator.comparingInt(n -> distance(n.toLowerCase(Locale.ROOT), lower)))
                .orElseGet(() -> String.join(", ", names.stream().limit(20).toList()));
    }

    /** Edits that turn one word into the other: letters put in, left out or changed. */
    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
