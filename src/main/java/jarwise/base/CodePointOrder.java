package jarwise.base;

import java.util.Comparator;
import java.util.List;

/** Order of texts by Unicode code point, the same on every machine and in every language. */
public final class CodePointOrder {

    /** Order of single texts. */
    public static final Comparator<String> OF_TEXT = CodePointOrder::compare;

    /** Order of lists of texts: the first that differs decides. */
    public static final Comparator<List<String>> OF_TEXTS = CodePointOrder::compareLists;

    private CodePointOrder() {}

    /** {@code String.compareTo} goes by UTF-16 units, which puts rare characters too early. */
    private static int compare(String a, String b) {
        int i = 0;
        while (i < a.length() && i < b.length()) {
            int left = a.codePointAt(i);
            int right = b.codePointAt(i);
            if (left != right) {
                return Integer.compare(left, right);
            }
            i += Character.charCount(left);
        }
        return Integer.compare(a.length(), b.length());
    }

    private static int compareLists(List<String> a, List<String> b) {
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
            int difference = compare(a.get(i), b.get(i));
            if (difference != 0) {
                return difference;
            }
        }
        return Integer.compare(a.size(), b.size());
    }
}
