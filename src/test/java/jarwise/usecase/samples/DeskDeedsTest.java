package jarwise.usecase.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.sample.SampleCode;
import jarwise.sample.Step;
import jarwise.site.Nursery;
import jarwise.store.Database;
import jarwise.store.EventStore;
import jarwise.store.PestStore;
import jarwise.store.SiteStore;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the desk refuses, because it cannot have been so. */
class DeskDeedsTest {

    private static final String SLUG = "lane";
    private static final Instant NOW = Instant.parse("2026-05-07T05:40:00Z");
    private static final SampleCode JAR = new SampleCode("J-1");

    @TempDir Path folder;
    private Database database;
    private SampleLog log;

    @BeforeEach
    void open() {
        database = Database.open(folder.resolve("jarwise.db").toString());
        new SiteStore(database).save(new Nursery(SLUG, "Lane", ZoneOffset.UTC, "en"));
        log = new SampleLog(database, () -> NOW);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @ParameterizedTest
    @CsvSource({
        "collected_on, 2027-01-01",
        "collected_on, 0026-05-04",
        "sampling_units, '1,000'",
        "reader, SC-1",
        "cells_read, 41",
        "count:FRANOC:adult, -1"
    })
    void aSampleThatCannotBeSoIsRefusedAndNothingIsWritten(String field, String typed) {
        assertThatThrownBy(() -> recorded(Map.of(field, typed))).isInstanceOf(FormRefused.class);
        assertThat(log.knows(SLUG, JAR)).isFalse();
    }

    @Test
    void aLostSampleTakesNoMoreCounts() {
        recorded(Map.of());
        new EndSample(log).run(SLUG, "SC-1", JAR, typed(Map.of("how", "lost", "reason", "lid")));
        EnterCounts enter = new EnterCounts(log, new PestStore(database), FirstCounts.UNWATCHED);

        assertThatThrownBy(
                        () ->
                                enter.run(
                                        SLUG,
                                        "SC-1",
                                        JAR,
                                        typed(Map.of("count:FRANOC:adult", "3"))))
                .isInstanceOf(FormRefused.class);
        assertThat(new EventStore(database).fold(SLUG, JAR).orElseThrow().tally().individuals())
                .isEmpty();
    }

    @Test
    void aFilterIsNotReadBeforeItsJarWasCut() {
        recorded(Map.of());
        CorrectSample correct = new CorrectSample(log);

        assertThatThrownBy(() -> readAt(correct, "2026-05-05T23:59"))
                .isInstanceOf(FormRefused.class);
        readAt(correct, "2026-05-06T00:00");
    }

    private void readAt(CorrectSample correct, String at) {
        correct.timeOfStep(SLUG, "SC-1", JAR, Step.READ, ZoneOffset.UTC, typed(Map.of("at", at)));
    }

    private void recorded(Map<String, String> more) {
        Map<String, String> fields = new HashMap<>();
        fields.put("code", JAR.text());
        fields.put("collected_on", "2026-05-06");
        fields.put("sampling_units", "10");
        fields.putAll(more);
        new RecordSample(log, new SiteStore(database), new PestStore(database))
                .run(SLUG, "SC-1", typed(fields));
    }

    private static Fields typed(Map<String, String> fields) {
        return Fields.of(fields);
    }
}
