package jarwise.render.label;

import java.util.Locale;

/** Where a sticker goes. Lid and base carry one code, so that a swapped lid shows. */
public enum Part {
    LID,
    BASE,
    VOUCHER;

    /** {@return the key of its name} */
    String key() {
        return "label." + name().toLowerCase(Locale.ROOT);
    }
}
