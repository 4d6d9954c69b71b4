package jarwise.wire.climate;

import jarwise.phenology.DailyLog;
import jarwise.phenology.DailyRange;
import jarwise.phenology.LoggedTemperature;
import jarwise.phenology.ReadingLog;
import jarwise.phenology.TemperatureLog;
import jarwise.phenology.TemperatureUnit;
import jarwise.wire.sheet.CellReader;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import jarwise.wire.table.Faults;
import jarwise.wire.table.Table;
import jarwise.wire.table.TableRow;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads a temperature log: all of it, or every fault. Rows may stand in any order. */
public final class ClimateReader {

    private final Table table;
    private final ClimateColumns columns;
    private final DegreeCells cells;
    private final Faults faults;
    private final Map<LocalDateTime, Integer> rowOfTime = new TreeMap<>();
    private Optional<ZoneOffset> offset = Optional.empty();
    private boolean anyTime;
    private int blanks;

    private ClimateReader(Table table, ClimateColumns columns, DegreeCells cells) {
        this.table = table;
        this.columns = columns;
        this.cells = cells;
        this.faults = cells.faults();
    }

    /**
     * Reads a log.
     *
     * @param table with date, min and max, or time and temperature; other columns are passed over
     * @param said unit that the person says, if any
     * @return the log
     * @throws jarwise.wire.table.SheetRefused with every fault found
     */
    public static ReadClimate read(Table table, Optional<TemperatureUnit> said) {
        if (table.header().isEmpty()) {
            throw Faults.refusal(Fault.ofFile(FaultKind.FILE_EMPTY));
        }
        Faults faults = new Faults(table.faults());
        ClimateColumns columns = ClimateColumns.of(table);
        if (said.isPresent() && columns.unit().isPresent() && !said.equals(columns.unit())) {
            faults.add(
                    Fault.in(
                            table.headerRow(),
                            table.header().get(columns.temperatures().get(0)),
                            "--unit " + said.get().name().charAt(0),
                            FaultKind.TEMPERATURE_UNIT_DISAGREES));
        }
        Optional<TemperatureUnit> unit = said.or(columns::unit);
        return new ClimateReader(
                        table, columns, new DegreeCells(table.decimalComma(), unit, faults))
                .read(unit);
    }

    private ReadClimate read(Optional<TemperatureUnit> unit) {
        List<LoggedTemperature> readings = new ArrayList<>();
        List<DailyRange> days = new ArrayList<>();
        for (TableRow row : table.rows()) {
            Optional<LocalDateTime> at = columns.isDaily() ? day(row) : time(row);
            List<Double> degrees = degrees(row);
            if (at.isPresent() && isFirst(row, at.get()) && !degrees.isEmpty()) {
                if (columns.isDaily()) {
                    LocalDate day = at.get().toLocalDate();
                    days.add(new DailyRange(day, degrees.get(0), degrees.get(1)));
                } else {
                    readings.add(new LoggedTemperature(at.get(), degrees.get(0)));
                }
            }
        }
        if (readings.isEmpty() && days.isEmpty() && faults.number() == 0) {
            faults.add(Fault.ofFile(FaultKind.TEMPERATURE_NOWHERE));
        }
        faults.refuseIfAny();
        readings.sort(Comparator.comparing(LoggedTemperature::at));
        days.sort(Comparator.comparing(DailyRange::day));
        TemperatureLog log = columns.isDaily() ? new DailyLog(days) : new ReadingLog(readings);
        return new ReadClimate(
                log, unit.orElse(TemperatureUnit.CELSIUS), unit.isEmpty(), offset, blanks);
    }

    private Optional<LocalDateTime> day(TableRow row) {
        CellReader.Read<LocalDate> read = CellReader.date(row.cells().get(columns.time()));
        read.fault().ifPresent(kind -> fault(row, kind, read.arguments().toArray(String[]::new)));
        return read.value().map(LocalDate::atStartOfDay);
    }

    /** Brings every time to the offset of the first one, so that no hour is there twice. */
    private Optional<LocalDateTime> time(TableRow row) {
        Optional<LogTime> time = LogTime.read(row.cells().get(columns.time()));
        if (time.isEmpty()) {
            fault(row, FaultKind.TIME_UNREADABLE);
            return Optional.empty();
        }
        if (!anyTime) {
            anyTime = true;
            offset = time.get().offset();
        }
        if (time.get().offset().isPresent() != offset.isPresent()) {
            fault(row, FaultKind.TIME_OFFSET_MIXED);
            return Optional.empty();
        }
        return Optional.of(time.get().at(offset));
    }

    private boolean isFirst(TableRow row, LocalDateTime at) {
        Integer earlier = rowOfTime.putIfAbsent(at, row.row());
        if (earlier != null) {
            fault(row, FaultKind.TIME_TWICE, String.valueOf(earlier));
        }
        return earlier == null;
    }

    private void fault(TableRow row, FaultKind kind, String... arguments) {
        faults.add(
                Fault.in(
                        row.row(),
                        table.header().get(columns.time()),
                        row.cells().get(columns.time()),
                        kind,
                        arguments));
    }

    /** {@return the temperatures of a row in °C; none if they are blank or at fault} */
    private List<Double> degrees(TableRow row) {
        List<Double> read = new ArrayList<>();
        int blank = 0;
        int blankPlace = 0;
        for (int place : columns.temperatures()) {
            String text = row.cells().get(place);
            if (text.isEmpty()) {
                blank++;
                blankPlace = place;
            } else {
                cells.celsius(row.row(), table.header().get(place), text).ifPresent(read::add);
            }
        }
        if (blank == columns.temperatures().size()) {
            blanks++;
        } else if (blank > 0) {
            faults.add(
                    Fault.in(
                            row.row(),
                            table.header().get(blankPlace),
                            "",
                            FaultKind.TEMPERATURE_HALF_GIVEN));
        } else if (read.size() == 2 && read.get(1) < read.get(0)) {
            faults.add(swapped(row));
        } else if (read.size() == columns.temperatures().size()) {
            return read;
        }
        return List.of();
    }

    private Fault swapped(TableRow row) {
        int max = columns.temperatures().get(1);
        return Fault.in(
                row.row(),
                table.header().get(max),
                row.cells().get(max),
                FaultKind.TEMPERATURE_MAX_BELOW_MIN,
                row.cells().get(columns.temperatures().get(0)));
    }
}
