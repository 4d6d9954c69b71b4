package jarwise.web.lan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.site.Device;
import jarwise.store.work.DeviceStore;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.net.HttpCookie;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The doors of the local network, opened by real clients. */
@Tag("slow")
class LanServerTest {

    private static final Pattern CODE = Pattern.compile("devices-code\">([0-9A-Z]{4}-[0-9A-Z]{4})");

    @TempDir Path folder;
    private LanServer server;
    private Phone phone;
    private Phone desk;

    @BeforeEach
    void start() throws Exception {
        server = new LanServer(folder);
        phone = new Phone(server.trust());
        desk = new Phone(server.trust());
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private String page(String page) {
        return LanServer.NURSERY + "/" + page;
    }

    private String shownCode(String nursery) throws Exception {
        String devices = server.desk(nursery + "/devices");
        assertThat(desk.send(devices, devices + "/code", "person", "").statusCode()).isEqualTo(303);
        Matcher code = CODE.matcher(desk.get(devices).body());
        assertThat(code.find()).as("a code on the desk's screen").isTrue();
        return code.group(1);
    }

    private HttpResponse<String> letIn(Phone who, String at, String code) throws Exception {
        return who.send(at, at, "code", code, "name", "Tablet");
    }

    private List<Device> devices() {
        return new DeviceStore(server.database).devices(LanServer.NURSERY);
    }

    @Test
    void aClientThatTrustsTheAuthorityOnlyIsServed() throws Exception {
        assertThat(phone.get(server.secure("let-in")).statusCode()).isEqualTo(200);
        assertThatThrownBy(() -> new Phone(SSLContext.getDefault()).get(server.secure("let-in")))
                .isInstanceOf(SSLHandshakeException.class);
    }

    @Test
    void theDeskIsServedAsBefore() throws Exception {
        assertThat(desk.get(server.desk(page("today"))).statusCode()).isEqualTo(200);
        assertThat(devices()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "quillback/today",
                "quillback/settings",
                "quillback/samples",
                "quillback/devices",
                "quillback/walk",
                "quillback/nothing",
                "nowhere/today",
                "assets/x/all.css",
                "quillback%2Ftoday",
                "let-in/../quillback/today",
                "//quillback/today"
            })
    void whoIsNotLetInSeesNoPageAndNoName(String path) throws Exception {
        for (String address : List.of(server.secure(path), server.plain(path))) {
            HttpResponse<String> answer = phone.get(address);

            assertThat(answer.statusCode()).as(address).isIn(400, 403);
            assertThat(answer.body()).as(address).doesNotContain("Quillback", "Larch");
        }
    }

    @Test
    void theFirstPageLeadsWhereANewPhoneBegins() throws Exception {
        assertThat(phone.get(server.secure("")).headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/let-in"));
        assertThat(phone.get(server.plain("")).headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/trust"));
        String trust = phone.get(server.plain("trust")).body();
        assertThat(trust)
                .contains(server.reach.fingerprint().substring(0, 23), server.secure("let-in"))
                .doesNotContain("Quillback", "Larch");
    }

    @Test
    void aCodeOpensTheNurseryItWasShownForOnce() throws Exception {
        String code = shownCode(LanServer.NURSERY);
        HttpResponse<String> in = letIn(phone, server.secure("let-in"), code);

        assertThat(in.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/quillback/today"));
        assertThat(phone.get(server.secure(page("today"))).body()).contains("Quillback Lane");
        assertThat(phone.get(server.secure("larch-row/today")).statusCode()).isEqualTo(403);
        assertThat(phone.get(server.secure(page("devices"))).statusCode()).isEqualTo(403);
        Phone second = new Phone(server.trust());
        assertThat(letIn(second, server.secure("let-in"), code).statusCode()).isEqualTo(422);
        assertThat(second.get(server.secure(page("today"))).statusCode()).isEqualTo(403);
        assertThat(devices()).extracting(Device::name).containsExactly("Tablet");
    }

    @Test
    void theSecretIsKeptFromScriptsAndFromPlainHttpAndOnlyItsHashIsStored() throws Exception {
        letIn(phone, server.secure("let-in"), shownCode(LanServer.NURSERY));

        HttpCookie secret =
                phone.cookies().stream()
                        .filter(cookie -> cookie.getName().equals("__Host-jarwise-quillback"))
                        .findFirst()
                        .orElseThrow();
        assertThat(secret.isHttpOnly()).isTrue();
        assertThat(secret.getSecure()).isTrue();
        String stored =
                server.database.read(
                        handle ->
                                handle.createQuery("select * from device")
                                        .mapToMap()
                                        .one()
                                        .toString());
        assertThat(stored).contains("Tablet").doesNotContain(secret.getValue());
    }

    @Test
    void aCodeThatRanOutAndTooManyTriesAreTold() throws Exception {
        String code = shownCode(LanServer.NURSERY);
        server.now = server.now.plus(Duration.ofMinutes(11));
        HttpResponse<String> late = letIn(phone, server.secure("let-in"), code);
        assertThat(late.statusCode()).isEqualTo(422);
        assertThat(late.body()).contains("run out after ten minutes");

        for (int i = 0; i < 5; i++) {
            letIn(phone, server.secure("let-in"), "0000-0000");
        }
        HttpResponse<String> fresh =
                letIn(phone, server.secure("let-in"), shownCode(LanServer.NURSERY));
        assertThat(fresh.statusCode()).isEqualTo(422);
        assertThat(fresh.body()).contains("Wait ten minutes");
        assertThat(devices()).isEmpty();
    }

    @Test
    void aDeviceThatWasShutOutIsRefusedAtOnce() throws Exception {
        letIn(phone, server.secure("let-in"), shownCode(LanServer.NURSERY));
        assertThat(phone.get(server.secure(page("today"))).statusCode()).isEqualTo(200);
        String devices = server.desk(page("devices"));
        desk.send(devices, devices + "/revoke", "device", devices().get(0).id());

        assertThat(phone.get(server.secure(page("today"))).statusCode()).isEqualTo(403);
        assertThat(devices().get(0).revokedAt()).contains(server.now);
    }

    @Test
    void whenItWasLastSeenIsNotedToFiveMinutes() throws Exception {
        letIn(phone, server.secure("let-in"), shownCode(LanServer.NURSERY));
        server.now = server.now.plus(Duration.ofHours(3));
        phone.get(server.secure(page("today")));

        assertThat(devices().get(0).lastSeen()).isEqualTo(server.now);
    }

    @Test
    void overPlainHttpADeviceOpensTheRoundSheetOnlyAndItsSecretNothingElse() throws Exception {
        letIn(phone, server.plain("let-in"), shownCode(LanServer.NURSERY));

        assertThat(devices()).extracting(Device::plain).containsExactly(true);
        assertThat(phone.get(server.plain(page("today"))).body()).contains("only the round sheet");
        assertThat(phone.get(server.plain(page("samples"))).statusCode()).isEqualTo(403);
        assertThat(phone.get(server.plain(page("walk"))).statusCode()).isNotEqualTo(403);
        assertThat(phone.get(server.secure(page("today"))).statusCode()).isEqualTo(403);
    }

    @Test
    void aSecretOfHttpsOpensNothingOverPlainHttp() throws Exception {
        letIn(phone, server.secure("let-in"), shownCode(LanServer.NURSERY));

        assertThat(phone.get(server.plain(page("walk"))).statusCode()).isEqualTo(403);
    }

    @ParameterizedTest
    @ValueSource(strings = {"evil.example", "127.0.0.1", "localhost", "127.0.0.3", "[::1]", ""})
    void onlyAddressesThatAreShownAreAnswered(String host) throws Exception {
        try (Socket socket =
                server.trust()
                        .getSocketFactory()
                        .createSocket(LanServer.HOST, server.reach.port())) {
            assertThat(statusFor(socket, host)).isIn(400, 403);
        }
        try (Socket socket = new Socket(LanServer.HOST, server.reach.plainPort())) {
            assertThat(statusFor(socket, host)).isIn(400, 403);
        }
    }

    @Test
    void theShownAddressIsAnsweredByTheSameAsking() throws Exception {
        try (Socket socket = new Socket(LanServer.HOST, server.reach.plainPort())) {
            assertThat(statusFor(socket, LanServer.HOST)).isEqualTo(200);
        }
    }

    private static int statusFor(Socket socket, String host) throws Exception {
        String request = "GET /trust HTTP/1.1\r\nHost: %s\r\nConnection: close\r\n\r\n";
        socket.getOutputStream().write(request.formatted(host).getBytes(StandardCharsets.US_ASCII));
        BufferedReader answer =
                new BufferedReader(
                        new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII));
        return Integer.parseInt(answer.readLine().replaceFirst("\\S+ (\\d+).*", "$1"));
    }

    @Test
    void theDeskAnswersToItsOwnNamesOnly() throws Exception {
        int port = Integer.parseInt(server.desk("").replaceAll(".*:(\\d+)/", "$1"));
        try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            assertThat(statusFor(socket, LanServer.HOST)).isEqualTo(403);
        }
    }

    @Test
    void whatPhonesInstallIsTheAuthority() throws Exception {
        assertThat(
                        phone.get(server.plain("trust/authority.crt"))
                                .headers()
                                .firstValue("Content-Type"))
                .hasValue("application/x-x509-ca-cert");
        String profile = phone.get(server.plain("trust/authority.mobileconfig")).body();
        String encoded = java.util.Base64.getEncoder().encodeToString(server.authority.encoded());
        assertThat(profile).contains("<data>" + encoded + "</data>", "com.apple.security.root");
    }

    @Test
    void aFormFromElsewhereLetsNobodyIn() throws Exception {
        String code = shownCode(LanServer.NURSERY);
        String at = server.secure("let-in");
        HttpResponse<String> answer = phone.send(at, at, "form_token", "00", "code", code);

        assertThat(answer.statusCode()).isIn(403, 422);
        assertThat(devices().stream().max(Comparator.comparing(Device::letInAt))).isEmpty();
    }
}
