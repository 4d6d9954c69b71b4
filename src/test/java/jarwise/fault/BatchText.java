package jarwise.fault;

/** Requests of a device as text, so that faults can be done to them. */
final class BatchText {

    private BatchText() {}

    static String of(String device, String... events) {
        return "{\"device\":\"%s\",\"events\":[%s]}".formatted(device, String.join(",", events));
    }

    /** {@return one adult thrips in a cell of jar J-1} */
    static String adult(long sequence) {
        return event(sequence, "2026-05-11T09:00:00Z", deed("counted"));
    }

    static String event(long sequence, String at, String deed) {
        return ("{\"sequence\":%d,\"sample\":\"J-1\",\"at\":\"%s\",\"person\":\"SC-1\","
                        + "\"deed\":%s}")
                .formatted(sequence, at, deed);
    }

    /** {@return what a press says, under the name of any deed} */
    static String deed(String name) {
        return ("{\"deed\":\"%s\",\"pest\":\"FRANOC\",\"life_stage\":\"adult\","
                        + "\"individuals\":1,\"filter_cell\":\"A1\"}")
                .formatted(name);
    }
}
