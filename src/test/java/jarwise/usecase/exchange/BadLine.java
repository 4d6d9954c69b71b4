package jarwise.usecase.exchange;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import jarwise.base.Refused;
import jarwise.tally.SampleEvent;
import jarwise.wire.exchange.ExchangeJson;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * The line from one device to the server, on which everything goes wrong that can: requests and
 * answers are lost, requests are cut off, come late and come again, the device starts anew.
 */
final class BadLine {

    private static final int MOST_AT_ONCE = 25;

    private final ReadingDevice device;
    private final Server server;
    private final Random random;
    private final List<String> underWay = new ArrayList<>();
    private int recorded;
    private long upTo;

    /** Takes the text of a request. */
    interface Server {
        long take(String request);
    }

    BadLine(ReadingDevice device, Server server, Random random) {
        this.device = device;
        this.server = server;
        this.random = random;
    }

    /** {@return whether everything is recorded, and the device has heard that all arrived} */
    boolean isDone() {
        return upTo == device.log().size();
    }

    /** Records some more and tries to send. */
    void goOn() {
        recorded = Math.min(device.log().size(), recorded + random.nextInt(12));
        String request = request();
        switch (random.nextInt(10)) {
            case 0 -> underWay.add(request);
            case 1 -> server.take(request);
            case 2 -> cut(request);
            case 3 -> upTo = random.nextInt((int) upTo + 1);
            case 4 -> late();
            case 5 -> {}
            default -> upTo = server.take(request);
        }
    }

    /** What is still under way arrives; nobody waits for the answers any more. */
    void late() {
        Collections.shuffle(underWay, random);
        underWay.forEach(server::take);
        underWay.clear();
    }

    private void cut(String request) {
        String part = request.substring(0, random.nextInt(request.length()));
        assertThatThrownBy(() -> server.take(part)).isInstanceOf(Refused.class);
    }

    /** Mostly what comes after the last number heard of, in order; now and then with a gap. */
    private String request() {
        int from = (int) upTo;
        if (random.nextInt(8) == 0) {
            from += random.nextInt(Math.max(1, recorded - from));
        }
        int to = Math.min(Math.max(from, recorded), from + 1 + random.nextInt(MOST_AT_ONCE));
        List<SampleEvent> events = new ArrayList<>(device.log().subList(from, to));
        if (random.nextInt(4) == 0) {
            Collections.shuffle(events, random);
        }
        ObjectNode request = JsonNodeFactory.instance.objectNode().put("device", device.name());
        events.forEach(event -> request.withArray("/events").add(ExchangeJson.write(event)));
        request.withArray("/events");
        return request.toString();
    }
}
