package jarwise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ServeOptionsTest {

    @Test
    void takesTheUsualPlaceAndPortWhenNothingIsSaid() {
        assertThat(ServeOptions.of(List.of(), "/usual"))
                .isEqualTo(new ServeOptions("/usual", 7007, false));
    }

    @Test
    void takesWhatIsSaid() {
        assertThat(ServeOptions.of(List.of("--port", "0", "--data", "/x"), "/usual"))
                .isEqualTo(new ServeOptions("/x", 0, true));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--port", "--prt 5", "--port 70000", "--port -1", "--port x", "--data"})
    void refusesWhatItCannotUse(String words) {
        assertThatThrownBy(() -> ServeOptions.of(List.of(words.split(" ")), "/usual"))
                .isInstanceOf(InvalidInput.class);
    }
}
