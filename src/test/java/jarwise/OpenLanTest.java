package jarwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.ServeOptions.LanOptions;
import jarwise.ServeOptions.OwnFiles;
import jarwise.base.InvalidInput;
import jarwise.web.lan.Lan;
import jarwise.web.lan.LanAddresses;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What `serve --lan` refuses, in words for whoever typed it. */
class OpenLanTest {

    private static final Instant NOW = Instant.parse("2026-05-07T05:40:00Z");
    private static final LanOptions USUAL = new LanOptions(7443, false, Optional.empty());

    @TempDir Path folder;

    private static List<InetAddress> here() throws Exception {
        return List.of(InetAddress.getByName("127.0.0.2"));
    }

    private Lan open(LanOptions options) throws Exception {
        return OpenLan.of(options, folder.resolve("data").toString(), here(), NOW);
    }

    @Test
    void keysLieBesideTheDataAndTheCertificateIsForTheAddresses() throws Exception {
        Lan lan = open(USUAL);

        assertThat(folder.resolve("data/certificates/authority.key")).exists();
        assertThat(lan.authority()).isPresent();
        assertThat(lan.plainPort()).isEqualTo(lan.port() + 1);
        assertThat(lan.identity().certificate().getSubjectAlternativeNames().toString())
                .contains("127.0.0.2");
    }

    @Test
    void aComputerWithoutALocalNetworkIsTold() {
        assertThatThrownBy(() -> OpenLan.of(USUAL, folder.toString(), List.of(), NOW))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("Maybe its network is off");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aPortThatWasAskedForAndIsTakenIsTold() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, here().get(0))) {
            int port = taken.getLocalPort();
            assertThatThrownBy(() -> open(new LanOptions(port, true, Optional.empty())))
                    .isInstanceOf(InvalidInput.class)
                    .hasMessageContaining("Port " + port)
                    .hasMessageContaining("maybe Jarwise is running already");
            assertThat(open(new LanOptions(port, false, Optional.empty())).port())
                    .isGreaterThan(port);
        }
    }

    @Test
    void aCertificateOfOnesOwnIsShownUnderItsNames() throws Exception {
        open(USUAL);
        Path made = folder.resolve("data/certificates");
        OwnFiles own = new OwnFiles(made.resolve("server.crt"), made.resolve("server.key"));
        Lan lan = open(new LanOptions(7443, false, Optional.of(own)));

        assertThat(lan.authority()).isEmpty();
        assertThat(lan.names()).contains("127.0.0.2");
        OwnFiles swapped = new OwnFiles(made.resolve("server.crt"), made.resolve("authority.key"));
        assertThatThrownBy(() -> open(new LanOptions(7443, false, Optional.of(swapped))))
                .hasMessageContaining("does not belong");
    }

    @Test
    void aFolderThatCannotBeWrittenIsTold() throws Exception {
        Files.writeString(folder.resolve("data"), "a file in the way");

        assertThatThrownBy(() -> open(USUAL)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void addressesThatAreShownAreOfLocalNetworks() {
        assertThat(LanAddresses.ofThisMachine())
                .allSatisfy(
                        address ->
                                assertThat(LanAddresses.plain(address))
                                        .matches(
                                                "(10|192\\.168|172\\.(1[6-9]|2\\d|3[01]))\\..*|f[cd].*"));
    }
}
