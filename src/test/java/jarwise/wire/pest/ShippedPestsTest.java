package jarwise.wire.pest;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.pest.LifeStage;
import jarwise.pest.Pest;
import jarwise.pest.StageMark;
import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class ShippedPestsTest {

    private static final Path RESOURCES = Path.of("src/main/resources");
    private final List<Pest> pests = ShippedPests.read();

    /**
     * EPPO codes as read on pages of the EPPO Global Database and in EPPO's own data sheets. Codes
     * that nobody looked up are marked so in the file and are not in this list.
     */
    private static final Set<String> LOOKED_UP =
            Set.of("FRANOC", "THRIPV", "ECHTAM", "SCITDO", "MYZUPE", "1APHIF", "BEMITA", "TRIAVA");

    @Test
    void everyRowSaysWhereItsCodeIsFrom() throws IOException {
        for (String line : Files.readAllLines(RESOURCES.resolve("pests/pests.csv"))) {
            if (line.contains(",read,")) {
                assertThat(LOOKED_UP).contains(line.split(",", -1)[1]);
            } else if (!line.startsWith("pest,") && !line.contains(",none,")) {
                assertThat(line).contains(",memory,code from memory");
            }
            assertThat(line.split(",", -1)[line.split(",", -1).length - 1]).isNotBlank();
        }
    }

    @Test
    void codesAreUniqueAndEppoCodesLookLikeOnes() {
        Set<String> codes = new HashSet<>();
        for (Pest pest : pests) {
            assertThat(codes.add(pest.code())).as(pest.code()).isTrue();
            pest.eppoCode().ifPresent(code -> assertThat(code).matches("1?[A-Z]{5,6}"));
            Set<String> stages =
                    pest.lifeStages().stream().map(LifeStage::code).collect(Collectors.toSet());
            assertThat(stages).hasSameSizeAs(pest.lifeStages());
        }
    }

    @Test
    void bothInstarsOfAThripsAreLarvaeAndToldApart() {
        Pest thrips = pests.get(0);

        assertThat(thrips.code()).isEqualTo("FRANOC");
        assertThat(thrips.stageGroups()).containsExactly("larva", "pupal", "adult");
        assertThat(thrips.stagesIn("larva"))
                .extracting(LifeStage::mark)
                .containsExactly(StageMark.LARVA1, StageMark.LARVA);
    }

    @Test
    void othersAndUnsureOnesHaveAPlace() {
        assertThat(pests).extracting(Pest::code).contains("other", "unsure");
    }

    @Test
    void naturalEnemiesHaveTheirOwnMark() {
        assertThat(pests).anyMatch(Pest::naturalEnemy);
        for (Pest pest : pests) {
            boolean marked =
                    pest.lifeStages().stream().allMatch(stage -> stage.mark() == StageMark.ENEMY);
            assertThat(marked).as(pest.code()).isEqualTo(pest.naturalEnemy());
        }
    }

    @Test
    void everyShippedNameIsInTheMessageFiles() throws IOException {
        Properties words = new Properties();
        try (Reader reader =
                Files.newBufferedReader(
                        RESOURCES.resolve("words/en.properties"), StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        for (Pest pest : pests) {
            assertThat(words).containsKey("pest." + pest.code().toLowerCase(Locale.ROOT));
            for (LifeStage stage : pest.lifeStages()) {
                assertThat(words).containsKey("stage." + stage.code());
                assertThat(words).containsKey("stage-group." + stage.group());
            }
        }
    }
}
