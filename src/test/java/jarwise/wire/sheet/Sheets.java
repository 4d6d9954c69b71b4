package jarwise.wire.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import jarwise.wire.table.Fault;
import jarwise.wire.table.SheetRefused;
import jarwise.wire.table.Table;
import jarwise.wire.table.TableReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Sheets written in the tests themselves. */
public final class Sheets {

    private Sheets() {}

    public static Table table(byte[] bytes) {
        try {
            return TableReader.read(new ByteArrayInputStream(bytes), Optional.empty());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static Table csv(String... lines) {
        return table(String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
    }

    public static CountSheet counts(Table table) {
        return counts(table, ColumnMapping.exact(table.header()));
    }

    public static CountSheet counts(Table table, ColumnMapping mapping) {
        return SheetReader.counts(table, mapping, List.of());
    }

    public static CountSheet counts(String... lines) {
        return counts(csv(lines));
    }

    public static Table reference(String name) {
        try (InputStream in =
                Objects.requireNonNull(
                        Sheets.class.getResourceAsStream("/reference/data/" + name))) {
            return TableReader.read(in, Optional.empty());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static List<Fault> faultsOf(ThrowingCallable reading) {
        Throwable thrown = catchThrowable(reading);
        assertThat(thrown).isInstanceOf(SheetRefused.class);
        return ((SheetRefused) thrown).faults();
    }
}
