package jarwise.usecase.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FieldsTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 5, 7);

    @ParameterizedTest
    @CsvSource({"'0,125', 0.125", "'1,5', 1.5", "1.5, 1.5", "12.125, 12.125", "1000, 1000"})
    void takesAPointOrACommaForTheFraction(String typed, double value) {
        Fields fields = Fields.of(Map.of("units", typed));

        assertThat(fields.number("units", 0, 100_000)).hasValue(value);
        fields.refuseIfAny();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1,000", "12,500", "1.000", "12.500", "1,125"})
    void refusesANumberThatMayBeAThousand(String typed) {
        Fields fields = Fields.of(Map.of("units", typed));

        assertThat(fields.number("units", 0, 100_000)).isEmpty();
        assertThatThrownBy(fields::refuseIfAny).isInstanceOf(FormRefused.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-05-08", "2062-05-04", "0206-05-04", "1899-12-31"})
    void refusesADayThatCannotHaveBeen(String typed) {
        Fields fields = Fields.of(Map.of("cut", typed));
        fields.pastDay("cut", TODAY);

        assertThatThrownBy(fields::refuseIfAny).isInstanceOf(FormRefused.class);
    }

    @Test
    void aTextThatIsTooLongIsRefusedEvenWhenItIsReadLast() {
        Fields fields = Fields.of(Map.of("name", "x".repeat(3_000)));
        fields.refuseIfAny();

        assertThatThrownBy(() -> fields.text("name")).isInstanceOf(FormRefused.class);
    }
}
