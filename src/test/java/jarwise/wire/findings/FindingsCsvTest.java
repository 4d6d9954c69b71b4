package jarwise.wire.findings;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.decision.Evidence;
import jarwise.decision.Finding;
import jarwise.decision.Stand;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FindingsCsvTest {

    @Test
    void writesABlankWhereNothingWasRead() {
        List<String> lines = FindingsCsv.write(List.of(unread("P1-B3"))).lines().toList();

        assertThat(lines.get(0)).startsWith("bench,variety,date,pest,stage,sample_size");
        assertThat(lines.get(1)).startsWith("P1-B3,Rubia Tarn,2026-03-02,FRANOC,larva,0,,,,,,,");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@now", "\tcmd"})
    void givesASpreadsheetNoFormula(String bench) {
        assertThat(FindingsCsv.harmless(bench)).isEqualTo("'" + bench);
    }

    private static Finding unread(String bench) {
        return new Finding(
                new Finding.Subject("FRANOC", "larva"),
                new Stand(Optional.of(bench), Optional.of("Rubia Tarn")),
                LocalDate.of(2026, 3, 2),
                new Evidence(0, 0, 0, 3, Map.of(), Map.of()),
                Optional.empty(),
                Optional.empty());
    }
}
