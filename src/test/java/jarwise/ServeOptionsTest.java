package jarwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ServeOptionsTest {

    @Test
    void takesTheUsualPlaceAndPortWhenNothingIsSaid() {
        assertThat(ServeOptions.of(List.of(), "/usual"))
                .isEqualTo(new ServeOptions("/usual", 7007, false, Optional.empty()));
    }

    @Test
    void takesWhatIsSaid() {
        assertThat(ServeOptions.of(List.of("--port", "0", "--data", "/x"), "/usual"))
                .isEqualTo(new ServeOptions("/x", 0, true, Optional.empty()));
    }

    @Test
    void takesAnOptionAndItsValueAsOneWord() {
        assertThat(ServeOptions.of(List.of("--port=7010", "--data=/a=b", "--lan"), "/usual"))
                .isEqualTo(
                        ServeOptions.of(List.of("--port", "7010", "--data", "/a=b", "--lan"), ""));
    }

    @Test
    void servesTheLocalNetworkWhenAskedTo() {
        assertThat(ServeOptions.of(List.of("--lan"), "/usual").lan())
                .contains(new ServeOptions.LanOptions(7443, false, Optional.empty()));
        List<String> all =
                List.of("--lan", "--lan-port", "8443", "--certificate", "c.pem", "--key", "k.pem");
        assertThat(ServeOptions.of(all, "/usual").lan())
                .contains(
                        new ServeOptions.LanOptions(
                                8443,
                                true,
                                Optional.of(
                                        new ServeOptions.OwnFiles(
                                                Path.of("c.pem"), Path.of("k.pem")))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--port",
                "--prt 5",
                "--port 70000",
                "--port -1",
                "--port x",
                "--port=",
                "--port=x",
                "--lan=yes",
                "--data",
                "--lan-port 8443",
                "--certificate c.pem --key k.pem",
                "--lan --certificate c.pem",
                "--lan --key k.pem",
                "--lan --lan-port 65535",
                "--lan --lan-port"
            })
    void refusesWhatItCannotUse(String words) {
        assertThatThrownBy(() -> ServeOptions.of(List.of(words.split(" ")), "/usual"))
                .isInstanceOf(InvalidInput.class);
    }
}
