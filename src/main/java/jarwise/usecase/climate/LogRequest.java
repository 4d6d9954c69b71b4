package jarwise.usecase.climate;

import jarwise.phenology.TemperatureUnit;
import jarwise.wire.climate.ClimateReader;
import jarwise.wire.climate.ReadClimate;
import jarwise.wire.table.TableReader;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A temperature log to read.
 *
 * @param file CSV or xlsx
 * @param worksheet name of the worksheet; the first one if empty
 * @param unit unit that the person says; that of the header if empty
 */
public record LogRequest(Path file, Optional<String> worksheet, Optional<TemperatureUnit> unit) {

    /**
     * {@return the log}
     *
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    ReadClimate read() {
        return ClimateReader.read(TableReader.read(file, worksheet), unit);
    }
}
