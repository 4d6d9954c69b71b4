package jarwise.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataPlaceTest {

    private static final Path HOME = Path.of("/home/scout");

    @Test
    void liesInTheUsualPlaceOfEachPlatform() {
        assertThat(DataPlace.folder("jarwise", "Linux", Map.of(), HOME))
                .isEqualTo(HOME.resolve(".local/share/jarwise"));
        assertThat(DataPlace.folder("jarwise", "Mac OS X", Map.of(), HOME))
                .isEqualTo(HOME.resolve("Library/Application Support/jarwise"));
        assertThat(DataPlace.folder("jarwise", "Windows 11", Map.of("APPDATA", "/r"), HOME))
                .isEqualTo(Path.of("/r/jarwise"));
    }

    @Test
    void followsTheDataHomeOnlyWhenItIsAWholePath() {
        assertThat(DataPlace.folder("jarwise", "Linux", Map.of("XDG_DATA_HOME", "/d"), HOME))
                .isEqualTo(Path.of("/d/jarwise"));
        assertThat(DataPlace.folder("jarwise", "Linux", Map.of("XDG_DATA_HOME", "d"), HOME))
                .isEqualTo(HOME.resolve(".local/share/jarwise"));
    }
}
