package jarwise.usecase.microscope;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.tally.Facts;
import jarwise.usecase.findings.Jar;
import jarwise.usecase.findings.TestSite;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReadingSpeedTest {

    private static final LocalDate DAY = TestSite.START;

    @TempDir private Path folder;
    private TestSite site;

    @BeforeEach
    void openSite() {
        site = new TestSite(folder);
    }

    @AfterEach
    void closeSite() {
        site.close();
    }

    /** 4 minutes for 10 cells, 10 for 40, 6 for 40: 24, 15 and 9 seconds a cell. */
    @Test
    void isTheMedianOverFiltersOfTheTimeForACell() {
        site.with(read("a", 0, "SC-1", 4, 10), read("b", 1, "SC-1", 10, 40));
        site.with(read("c", 2, "SC-1", 6, 40), read("d", 3, "SC-2", 6, 40));

        assertThat(speeds())
                .isEqualTo(Map.of("SC-1", new ReadingSpeed(15, 3), "SC-2", ReadingSpeed.USUAL));
        assertThat(ReadingSpeed.USUAL.isMeasured()).isFalse();
        assertThat(new ReadingSpeed(15, 3).isMeasured()).isTrue();
    }

    @Test
    void isOfTheLastTwentyFilters() {
        for (int i = 0; i < 30; i++) {
            site.with(read("slow-" + i, i, "SC-1", 40, 40));
        }
        for (int i = 0; i < 20; i++) {
            site.with(read("a-quick-" + i, 30 + i, "SC-1", i < 10 ? 4 : 8, 40));
        }

        // ten of 6 s and ten of 12 s
        assertThat(speeds()).isEqualTo(Map.of("SC-1", new ReadingSpeed(9, 20)));
    }

    @Test
    void filtersWithoutMinutesOrCellsSayNothing() {
        site.with(read("a", 0, "SC-1", 4, 10), read("b", 1, "SC-1", 10, 40));
        site.with(read("c", 2, "SC-1", 0, 40), read("d", 3, "SC-1", 5, 0));
        site.with(Jar.of("e", DAY).counted("larva1", 3), Jar.of("f", DAY));

        assertThat(speeds()).isEqualTo(Map.of("SC-1", ReadingSpeed.USUAL));
    }

    private Map<String, ReadingSpeed> speeds() {
        return ReadingSpeed.byReader(site.samples.between(TestSite.SLUG, DAY, DAY.plusDays(100)));
    }

    private static Jar read(String code, int day, String reader, int minutes, int cells) {
        return Jar.of(code, DAY.plusDays(day))
                .with(Facts.READER, reader)
                .with(Facts.MINUTES, String.valueOf(minutes))
                .with(Facts.CELLS_READ, String.valueOf(cells))
                .with(Facts.CELLS_READABLE, "40")
                .counted("larva1", 1);
    }
}
