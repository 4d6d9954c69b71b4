package jarwise.stats.filter;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The walks in testdata/tally-walk; the microscope page of the browser is held to the same files.
 */
class WalkOfCellsFilesTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    static Stream<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("testdata/tally-walk"))) {
            return files.sorted().toList().stream();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void walksAsTheFileSays(Path file) throws IOException {
        JsonNode given = JSON.readTree(file.toFile());

        FilterLayout layout = FilterLayout.ofCells(given.path("cells").asInt());
        CellWalk walk =
                CellWalk.from(layout, given.path("passes").asInt(), given.path("start").asInt());

        List<Integer> rows = new ArrayList<>();
        given.path("rows").forEach(row -> rows.add(row.asInt()));
        assertThat(layout.rowLengths()).as(given.path("why").asText()).isEqualTo(rows);
        assertThat(walk.passes().stream().map(WalkOfCellsFilesTest::names))
                .isEqualTo(passes(given.path("walk")));
    }

    private static List<String> names(List<FilterCell> pass) {
        return pass.stream().map(FilterCell::name).toList();
    }

    private static List<List<String>> passes(JsonNode array) {
        List<List<String>> passes = new ArrayList<>();
        for (JsonNode pass : array) {
            List<String> names = new ArrayList<>();
            pass.forEach(name -> names.add(name.asText()));
            passes.add(names);
        }
        return passes;
    }
}
