package jarwise.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class HostileSheetTest {

    @TempDir Path folder = Path.of("");

    static Stream<Arguments> hostile() {
        return Stream.of(
                arguments("count,v\n1,a\nNaN,b\n", "Row 3, column count: \"NaN\""),
                arguments("count,v\n-1,a\n", "\"-1\" is below 0"),
                arguments("count,v\n1.5,a\n", "\"1.5\" is not a count"),
                arguments("count,v\n1e3,a\n", "\"1e3\" is not a count"),
                arguments("count,v\n1000000001,a\n", "whole numbers from 0 to 1,000,000,000"),
                arguments("count,v,units\n1,a,0\n", "a number above 0"),
                arguments("count,v,cells_read,cells_total\n1,a,41,40\n", "at most the 40 cells"),
                arguments("count,v\n1,a\n2,\n", "Row 3, column v: the cell is blank"),
                arguments("count,v\n1,a\n2\n", "the row has 1 cells, the header 2"),
                arguments("count,v\n1,\"a\n2,b\n", "opened and not closed"),
                arguments("count,v\n1,a\0\n", "NUL character"),
                arguments("count,v,v\n1,a,b\n", "stands over more than one column"),
                arguments("count,v\n", "no row below it"),
                arguments("count,v\n,a\n,b\n", "No row has a count"),
                arguments("", "The file is empty"),
                arguments("count,w\n1,a\n", "There is no column \"v\". Maybe"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("hostile")
    void computesNothingAndSaysWhy(String text, String said) throws IOException {
        Path file = folder.resolve("sheet.csv");
        Files.writeString(file, text);

        CommandRun run = CommandRun.of("estimate", file.toString(), "--by", "v", "--json");

        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(said);
    }

    @Test
    void namesTwentyFaultsAndThenANumber() throws IOException {
        Path file = Files.writeString(folder.resolve("sheet.csv"), "count\n" + "x\n".repeat(57));

        String err = CommandRun.of("estimate", file.toString()).err();

        assertThat(err).startsWith("The sheet has 57 faults").endsWith("… and 37 more.\n");
        assertThat(err.lines().filter(line -> line.startsWith("Row "))).hasSize(20);
    }

    @Test
    void looksAtWhatAFileIsNotAtItsName() throws IOException {
        Path file = Files.writeString(folder.resolve("sheet.xlsx"), "count\n3\n4\n");

        assertThat(CommandRun.of("estimate", file.toString()).code()).isZero();
    }

    @Test
    @Tag("slow")
    void refusesTwoHundredMegabytesAtOnce() throws IOException {
        Path file = folder.resolve("huge.csv");
        byte[] rows = "12345,P1\n".repeat(10_000).getBytes(StandardCharsets.UTF_8);
        try (OutputStream out = Files.newOutputStream(file)) {
            out.write("count,house\n".getBytes(StandardCharsets.UTF_8));
            for (long size = 0; size < 200L * 1024 * 1024; size += rows.length) {
                out.write(rows);
            }
        }
        long before = usedMemory();
        long start = System.nanoTime();

        CommandRun run = CommandRun.of("estimate", file.toString());

        assertThat((System.nanoTime() - start) / 1e9).isLessThan(1);
        assertThat(usedMemory() - before).isLessThan(60L * 1024 * 1024);
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("larger than 50 MB");
    }

    @Test
    @Tag("slow")
    void readsAMillionRowsAndNotOneMore() throws IOException {
        char[] digits = new char[1_000_000];
        Arrays.fill(digits, '1');
        String rows = new String(digits).replace("1", "1,a\n");
        Path most = Files.writeString(folder.resolve("most.csv"), "count,v\n" + rows);
        Path more = Files.writeString(folder.resolve("more.csv"), "count,v\n" + rows + "1,a\n");

        assertThat(CommandRun.of("estimate", most.toString()).code()).isZero();
        assertThat(CommandRun.of("estimate", more.toString()).err())
                .contains("Row 1000002: a sheet may have 1,000,000 rows");
    }

    private static long usedMemory() {
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
