package jarwise.render.label;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlacesTest {

    static List<LabelGeometry> all() {
        return LabelGeometry.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void lid_and_base_of_a_jar_share_a_row_from_wherever_the_sheet_begins(LabelGeometry sheet) {
        for (int start = 1; start <= sheet.size(); start++) {
            int first = start - 1;
            List<Places.Placed> placed = Places.of(Sheets.jars(7), sheet, start);
            assertThat(placed).hasSize(21).allMatch(one -> one.cell() >= first);
            assertThat(placed.stream().map(Places.Placed::cell).distinct()).hasSize(21);
            assertThat(rowsOf(placed, sheet)).allMatch(rows -> rows == 1);
        }
    }

    private static List<Long> rowsOf(List<Places.Placed> placed, LabelGeometry sheet) {
        return placed.stream()
                .filter(one -> one.part() != Part.VOUCHER || sheet.columns() > 2)
                .collect(
                        Collectors.groupingBy(
                                one -> one.jar().code(),
                                Collectors.mapping(
                                        one -> one.cell() / sheet.columns(),
                                        Collectors.collectingAndThen(
                                                Collectors.toSet(), rows -> (long) rows.size()))))
                .values()
                .stream()
                .toList();
    }

    @Test
    void on_two_columns_the_vouchers_of_two_jars_share_a_row() {
        List<Places.Placed> placed = Places.of(Sheets.jars(3), LabelGeometry.named("letter-10"), 1);
        assertThat(placed.stream().map(one -> one.jar().walk() + " " + one.part() + one.cell()))
                .containsExactly(
                        "1 LID0",
                        "1 BASE1",
                        "2 LID2",
                        "2 BASE3",
                        "1 VOUCHER4",
                        "2 VOUCHER5",
                        "3 LID6",
                        "3 BASE7",
                        "3 VOUCHER8");
    }

    @Test
    void a_half_used_sheet_goes_on_in_the_next_full_row() {
        List<Places.Placed> placed = Places.of(Sheets.jars(2), LabelGeometry.named("a4-21"), 20);
        assertThat(placed.stream().map(Places.Placed::cell))
                .containsExactly(21, 22, 23, 24, 25, 26);
    }
}
