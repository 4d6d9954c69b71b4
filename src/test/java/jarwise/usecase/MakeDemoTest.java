package jarwise.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.SamplingMethod;
import jarwise.store.CountQuery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.SampleStore;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MakeDemoTest {

    @TempDir Path folder;

    @Test
    void makesTheDemoOnceAndUsesItAgain() {
        List<String> progress = new ArrayList<>();
        assertThat(MakeDemo.inFolder(folder, progress::add)).isTrue();
        assertThat(progress).isNotEmpty();
        assertThat(MakeDemo.inFolder(folder, progress::add)).isFalse();

        try (Database database = Database.open(folder.toString())) {
            var counts =
                    new SampleStore(database)
                            .counts(
                                    CountQuery.random(
                                            "quillback-lane",
                                            SamplingMethod.WASH,
                                            "FRANOC",
                                            List.of("larva1", "larva2"),
                                            LocalDate.of(2026, 4, 6),
                                            LocalDate.of(2026, 4, 6)));
            assertThat(counts).as("jars of 6 April in which all larvae were read").isNotEmpty();
            assertThat(new EventStore(database).firstBrokenLink()).isEmpty();
            assertThat(new EventStore(database).staleSamples("quillback-lane")).isEmpty();
        }
    }
}
