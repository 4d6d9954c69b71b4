package jarwise.usecase.microscope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.usecase.findings.TestSite;
import jarwise.usecase.form.Fields;
import jarwise.usecase.form.FormRefused;
import jarwise.usecase.settings.ChooseValue;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingRulesTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();
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

    @Test
    void areFourPassesAndNoWishWhereNothingWasChosen() {
        assertThat(on(DAY)).isEqualTo(new ReadingRules(4, NONE, NONE));
    }

    @Test
    void areWhatWasChosenFromItsDayOn() {
        choose("reading-passes", "5", DAY);
        choose("filter-precision", "0,25", DAY);
        choose("filter-minutes", "12.5", DAY.plusDays(3));

        assertThat(on(DAY.minusDays(1))).isEqualTo(new ReadingRules(4, NONE, NONE));
        assertThat(on(DAY)).isEqualTo(new ReadingRules(5, OptionalDouble.of(0.25), NONE));
        assertThat(on(DAY.plusDays(3)))
                .isEqualTo(new ReadingRules(5, OptionalDouble.of(0.25), OptionalDouble.of(12.5)));
    }

    @Test
    void aWishIsTakenBackByNought() {
        choose("filter-precision", "0.25", DAY);
        choose("filter-minutes", "12", DAY);
        choose("filter-precision", "0", DAY.plusDays(1));
        choose("filter-minutes", "0", DAY.plusDays(1));

        assertThat(on(DAY.plusDays(1))).isEqualTo(new ReadingRules(4, NONE, NONE));
    }

    @ParameterizedTest
    @CsvSource({
        "reading-passes,0",
        "reading-passes,2.5",
        "reading-passes,21",
        "reading-passes,many",
        "filter-precision,1.5",
        "filter-precision,-0.1",
        "filter-precision,NaN",
        "filter-minutes,-1",
        "filter-minutes,601"
    })
    void whatCannotBeIsRefusedBesideItsField(String name, String value) {
        assertThatThrownBy(() -> choose(name, value, DAY))
                .isInstanceOfSatisfying(
                        FormRefused.class,
                        refused -> assertThat(refused.faults()).containsOnlyKeys("value"));
        assertThat(on(DAY)).isEqualTo(new ReadingRules(4, NONE, NONE));
    }

    @Test
    void noPassIsNoWayToRead() {
        assertThatThrownBy(() -> new ReadingRules(0, NONE, NONE)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new ReadingRules(4, OptionalDouble.of(0), NONE))
                .isInstanceOf(InvalidInput.class);
    }

    private ReadingRules on(LocalDate day) {
        return ReadingRules.on(site.settings, TestSite.SLUG, day);
    }

    private void choose(String name, String value, LocalDate from) {
        new ChooseValue(site.settings)
                .run(
                        TestSite.SLUG,
                        "HG-1",
                        Fields.of(
                                Map.of(
                                        "name",
                                        name,
                                        "value",
                                        value,
                                        "from",
                                        from.toString(),
                                        "reason",
                                        "tried")),
                        from.atTime(12, 0).toInstant(ZoneOffset.UTC));
    }
}
