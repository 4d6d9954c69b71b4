package jarwise.wire.sheet;

import static jarwise.wire.table.FaultKind.*;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Table;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class FaultySheetTest {

    static Stream<Arguments> badNumbers() {
        return Stream.of(
                arguments("count\n3\nNaN\n", 3, "count", "NaN", COUNT_NOT_A_NUMBER),
                arguments("count\nInfinity\n", 2, "count", "Infinity", COUNT_NOT_A_NUMBER),
                arguments("count\n-1\n", 2, "count", "-1", COUNT_NEGATIVE),
                arguments("count\n-0\n", 2, "count", "-0", COUNT_NEGATIVE),
                arguments("count\n1.5\n", 2, "count", "1.5", COUNT_NOT_WHOLE),
                arguments("count\n1e3\n", 2, "count", "1e3", COUNT_NOT_A_NUMBER),
                arguments("count\n0x10\n", 2, "count", "0x10", COUNT_NOT_A_NUMBER),
                arguments("count\n+3\n", 2, "count", "+3", COUNT_NOT_A_NUMBER),
                arguments("count\n٣\n", 2, "count", "٣", COUNT_NOT_A_NUMBER),
                arguments("count\nNA\n", 2, "count", "NA", COUNT_NOT_A_NUMBER),
                arguments("count\n1000000001\n", 2, "count", "1000000001", COUNT_TOO_LARGE),
                arguments("count,a\n\"1,000\",b\n", 2, "count", "1,000", NUMBER_GROUPED),
                arguments("count;a\n1.000;b\n", 2, "count", "1.000", NUMBER_GROUPED),
                arguments("count;a\n1,5;b\n", 2, "count", "1,5", COUNT_NOT_WHOLE),
                arguments("count,units\n3,0\n", 2, "units", "0", UNITS_NOT_POSITIVE),
                arguments("count,units\n3,-2\n", 2, "units", "-2", UNITS_NOT_POSITIVE),
                arguments("count,units\n3,1e3\n", 2, "units", "1e3", UNITS_NOT_POSITIVE),
                arguments("count\tunits\n3\t2,5\n", 2, "units", "2,5", UNITS_NOT_POSITIVE));
    }

    static Stream<Arguments> badCells() {
        return Stream.of(
                arguments(
                        "count,cells_read,cells_total\n3,41,40\n",
                        2,
                        "cells_read",
                        "41",
                        CELLS_READ_ABOVE_TOTAL),
                arguments(
                        "count,cells_read,cells_total\n3,0,40\n",
                        2,
                        "cells_read",
                        "0",
                        CELLS_NOT_POSITIVE),
                arguments(
                        "count,cells_read,cells_total\n3,20,\n",
                        2,
                        "cells_read",
                        "20",
                        CELLS_HALF_GIVEN),
                arguments(
                        "count,cells_total\n3,40\n",
                        1,
                        "cells_total",
                        "cells_total",
                        CELLS_HALF_GIVEN));
    }

    static Stream<Arguments> badShapes() {
        return Stream.of(
                arguments("count,bench\n3\n", 2, "bench", "", CELLS_MISSING),
                arguments("count,bench\n3,a,b\n", 2, "C", "b", CELLS_EXTRA),
                arguments("count,bench\n3,\"a\n4,b\n", 2, "", "", QUOTE_UNCLOSED),
                arguments("count,bench\n1,x\n3,\"a\"b\n", 3, "", "", QUOTE_UNCLOSED),
                arguments("count,bench\n3,a\0b\n", 2, "bench", "a·b", NUL_CHARACTER),
                arguments("count,bench,bench\n3,a,b\n", 1, "C", "bench", HEADER_REPEATED),
                arguments("count,Count\n3,4\n", 1, "Count", "Count", HEADER_REPEATED),
                arguments("count,,bench\n3,a,b\n", 1, "B", "", HEADER_BLANK),
                arguments("count,bench\n", 1, "", "", NO_DATA_ROW),
                arguments("count,bench\n,a\n,b\n", 1, "count", "", COUNT_NOWHERE),
                arguments("TICKS,bench\n3,a\n", 1, "", "", COUNT_COLUMN_MISSING),
                arguments("", 0, "", "", FILE_EMPTY),
                arguments("\uFEFF\n\n  \n", 0, "", "", FILE_EMPTY));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"badNumbers", "badCells", "badShapes"})
    void namesRowColumnAndValue(String text, int row, String column, String value, FaultKind kind) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);

        assertThat(Sheets.faultsOf(() -> Sheets.counts(Sheets.table(bytes))))
                .first()
                .extracting(Fault::row, Fault::column, Fault::value, Fault::kind)
                .containsExactly(row, column, value, kind);
    }

    static Stream<Arguments> foreign() {
        return Stream.of(
                arguments("utf-16 with mark", StandardCharsets.UTF_16, FILE_UTF16),
                arguments("utf-16 little end first", StandardCharsets.UTF_16LE, FILE_UTF16),
                arguments("utf-16 big end first", StandardCharsets.UTF_16BE, FILE_UTF16),
                arguments("windows-1252", Charset.forName("windows-1252"), FILE_NOT_UTF8));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("foreign")
    void readsNoOtherEncodingThanUtf8(String name, Charset charset, FaultKind kind) {
        byte[] bytes = "count,house\n3,Vivero Ñandú\n".getBytes(charset);

        assertThat(Sheets.faultsOf(() -> Sheets.table(bytes)))
                .extracting(Fault::kind)
                .containsExactly(kind);
    }

    @Test
    void refusesAPictureAsNoSheet() {
        byte[] bytes = new byte[500];
        bytes[0] = (byte) 0x89;
        bytes[1] = 'P';

        assertThat(Sheets.faultsOf(() -> Sheets.table(bytes)))
                .extracting(Fault::kind)
                .containsExactly(FILE_NOT_A_SHEET);
    }

    @Test
    void showsTwentyFaultsAndTheNumberOfAll() {
        String text = "count\n" + "x\n".repeat(57);

        assertThat(Sheets.faultsOf(() -> Sheets.counts(text.split("\n", -1)))).hasSize(20);
    }

    @Test
    void findsFaultsInEveryRowBeforeItRefuses() {
        assertThat(Sheets.faultsOf(() -> Sheets.counts("count,units", "x,1", "3,0", "y,-1")))
                .extracting(Fault::row, Fault::kind)
                .containsExactly(
                        tuple(2, COUNT_NOT_A_NUMBER),
                        tuple(3, UNITS_NOT_POSITIVE),
                        tuple(4, UNITS_NOT_POSITIVE),
                        tuple(4, COUNT_NOT_A_NUMBER));
    }

    @Test
    void countsRowsAsTheSpreadsheetShowsThem() {
        assertThat(
                        Sheets.faultsOf(
                                () ->
                                        Sheets.counts(
                                                "",
                                                "count,house",
                                                "1,\"two",
                                                "lines\"",
                                                "",
                                                "x,a")))
                .extracting(Fault::row)
                .containsExactly(5);
    }

    @Test
    void findsFaultsOfShapeAndOfCellsAtOnce() {
        Table table = Sheets.csv("count,house,house", "1,a,b", "x,a,b", "2,a", "3,,b");

        assertThat(
                        Sheets.faultsOf(
                                () ->
                                        SheetReader.counts(
                                                table,
                                                ColumnMapping.exact(table.header()),
                                                List.of("house", "hous"))))
                .extracting(Fault::row, Fault::kind)
                .containsExactly(
                        tuple(1, HEADER_REPEATED),
                        tuple(1, COLUMN_UNKNOWN),
                        tuple(3, COUNT_NOT_A_NUMBER),
                        tuple(4, CELLS_MISSING),
                        tuple(5, GROUP_BLANK));
    }

    @Test
    void showsTheFirstFaultsOfTheSheetWhicheverWereFoundFirst() {
        String text = "count,v\n" + "x,a\n".repeat(30) + "1\n".repeat(30);

        assertThat(Sheets.faultsOf(() -> Sheets.counts(text.split("\n", -1))))
                .extracting(Fault::row)
                .startsWith(2, 3, 4)
                .endsWith(21);
    }
}
