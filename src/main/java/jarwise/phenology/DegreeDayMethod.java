package jarwise.phenology;

import java.util.Locale;

/** How a log becomes degree-days. */
public enum DegreeDayMethod {
    /** One sine wave a day between its lowest and highest temperature. */
    SINGLE_SINE,
    /** A line from reading to reading. */
    HOURLY,
    /** The mean of the lowest and highest temperature, all day. */
    AVERAGE;

    /** {@return the name on the command line} */
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
