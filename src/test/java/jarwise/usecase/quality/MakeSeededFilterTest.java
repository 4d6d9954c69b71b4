package jarwise.usecase.quality;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.Refused;
import jarwise.sample.LabelCode;
import jarwise.sample.SampleCode;
import jarwise.sample.SeededFilter.Placed;
import jarwise.store.PestStore;
import jarwise.store.SettingsStore;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MakeSeededFilterTest {

    private static final LocalDate TODAY = TestSite.START;
    private static final Instant NOW = Instant.parse("2026-05-07T05:40:00Z");

    @TempDir Path folder;
    private TestSite site;

    @BeforeEach
    void open() {
        site = new TestSite(folder);
    }

    @AfterEach
    void close() {
        site.close();
    }

    private MakeSeededFilter use(IntUnaryOperator below) {
        return new MakeSeededFilter(
                site.seeded,
                site.events,
                new SettingsStore(site.database),
                new PestStore(site.database),
                below);
    }

    private SampleCode make(IntUnaryOperator below, Map<String, String> changes) {
        Map<String, String> typed = new HashMap<>();
        typed.put("name", "set A");
        typed.put("made_on", TODAY.toString());
        typed.put("placed:FRANOC:larva2", "b3, c4 C4");
        typed.putAll(changes);
        return use(below).run(TestSite.SLUG, "SC-1", Fields.of(typed), TODAY, NOW);
    }

    @Test
    void whatLiesWhereIsOnRecordUnderACodeOfALabel() {
        SampleCode code = make(new Random(1)::nextInt, Map.of("placed:FRANOC:adult", "B3"));

        assertThat(LabelCode.parse(code.text()).sampleCode()).isEqualTo(code);
        assertThat(site.seeded.find(TestSite.SLUG, code).orElseThrow().placed())
                .containsExactlyInAnyOrder(
                        new Placed("B3", "FRANOC", "larva2"),
                        new Placed("C4", "FRANOC", "larva2"),
                        new Placed("C4", "FRANOC", "larva2"),
                        new Placed("B3", "FRANOC", "adult"));
    }

    @Test
    void aCodeIsGivenOutOnce() {
        assertThat(make(new Random(1)::nextInt, Map.of()))
                .isNotEqualTo(make(new Random(1)::nextInt, Map.of()));
        assertThat(use(new Random(1)::nextInt).all(TestSite.SLUG)).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({
        "name, ''",
        "made_on, ''",
        "made_on, 2031-01-01",
        "placed:FRANOC:larva2, B3 Z9",
        "placed:FRANOC:larva2, B3B4",
        "placed, -"
    })
    void aFormWithAFaultIsRefusedWholeAndNamesTheField(String field, String value) {
        Map<String, String> changes =
                field.equals("placed") ? Map.of("placed:FRANOC:larva2", "") : Map.of(field, value);
        assertThatThrownBy(() -> make(new Random(1)::nextInt, changes))
                .isInstanceOfSatisfying(
                        FormRefused.class,
                        refused -> assertThat(refused.faults()).containsOnlyKeys(field));
        assertThat(use(new Random(1)::nextInt).all(TestSite.SLUG)).isEmpty();
    }

    @Test
    void aRetiredFilterStaysOnRecordAndIsRetiredOnce() {
        SampleCode code = make(new Random(1)::nextInt, Map.of());
        Fields fields = Fields.of(Map.of("code", code.text()));
        use(new Random(1)::nextInt).retire(TestSite.SLUG, fields, TODAY);

        assertThat(site.seeded.find(TestSite.SLUG, code).orElseThrow().retiredOn()).contains(TODAY);
        assertThatThrownBy(() -> use(new Random(1)::nextInt).retire(TestSite.SLUG, fields, TODAY))
                .isInstanceOf(Refused.class);
        assertThatThrownBy(
                        () ->
                                use(new Random(1)::nextInt)
                                        .retire(TestSite.SLUG, Fields.of(Map.of()), TODAY))
                .isInstanceOf(Refused.class);
    }
}
