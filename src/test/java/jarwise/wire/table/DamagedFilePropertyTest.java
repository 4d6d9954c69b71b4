package jarwise.wire.table;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.wire.sheet.Sheets;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A damaged file is read or refused; it never makes the program fail. */
class DamagedFilePropertyTest {

    private static final String CSV =
            "sample,house,units,count\r\nj1,\"P1, north\",8,3\r\nj2,\"say \"\"P2\"\"\",6,\r\n";

    static long[] seeds() {
        return LongStream.rangeClosed(1, 200).toArray();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void damagedTextIsReadOrRefused(long seed) {
        assertReadOrRefused(damaged(CSV.getBytes(StandardCharsets.UTF_8), new Random(seed)));
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void damagedWorkbooksAreReadOrRefused(long seed) throws IOException {
        assertReadOrRefused(damaged(workbook(), new Random(seed)));
    }

    private static void assertReadOrRefused(byte[] bytes) {
        boolean read = false;
        boolean refused = false;
        try {
            Sheets.counts(Sheets.table(bytes));
            read = true;
        } catch (SheetRefused e) {
            refused = !e.faults().isEmpty();
        }
        assertThat(read || refused).isTrue();
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        byte[] damaged = bytes.clone();
        int places = 1 + random.nextInt(8);
        for (int i = 0; i < places; i++) {
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
        }
        int length = random.nextInt(4) == 0 ? 1 + random.nextInt(bytes.length) : bytes.length;
        return Arrays.copyOf(damaged, length);
    }

    private static byte[] workbook() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "test", "1.0")) {
            // Stored, not packed, so that damage reaches the XML inside.
            workbook.setCompressionLevel(0);
            Worksheet sheet = workbook.newWorksheet("counts");
            sheet.value(0, 0, "sample");
            sheet.value(0, 1, "count");
            for (int i = 1; i < 5; i++) {
                sheet.value(i, 0, "j" + i);
                sheet.value(i, 1, i);
            }
        }
        return out.toByteArray();
    }
}
