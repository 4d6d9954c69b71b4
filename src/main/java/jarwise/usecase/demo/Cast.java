package jarwise.usecase.demo;

import jarwise.sample.Reader;
import java.util.List;

/** People of the demo nursery, by role code, and the devices they carry. */
public final class Cast {

    public static final String READER_A = "SC-1";
    public static final String READER_B = "SC-2";
    public static final String SPECIALIST = "ES-1";
    public static final String HEAD_GROWER = "HG-1";
    public static final String APPLICATOR = "AP-1";

    public static final String PHONE_A = "demo-phone-1";
    public static final String PHONE_B = "demo-phone-2";
    public static final String DESK = "demo-desk";
    public static final String MICROSCOPE_A = "demo-microscope-1";
    public static final String MICROSCOPE_B = "demo-microscope-2";

    private Cast() {}

    public static List<Reader> people() {
        return List.of(
                new Reader(READER_A, "scout", "en", true),
                new Reader(READER_B, "seasonal scout", "es", true),
                new Reader(SPECIALIST, "extension specialist", "en", true),
                new Reader(HEAD_GROWER, "head grower", "en", true),
                new Reader(APPLICATOR, "applicator, licence DEMO-000", "en", true),
                new Reader("PL-1", "propagation", "en", true));
    }

    public static String microscopeOf(String reader) {
        return reader.equals(READER_B) ? MICROSCOPE_B : MICROSCOPE_A;
    }
}
