package jarwise.phenology;

import java.time.LocalDateTime;
import java.util.List;

/** What a logger wrote down: readings, or each day's lowest and highest. */
public sealed interface TemperatureLog permits ReadingLog, DailyLog {

    /** {@return the method that suits this log} */
    DegreeDayMethod usualMethod();

    /**
     * {@return the course of the temperature}
     *
     * @param method how it is drawn
     * @throws jarwise.base.InvalidInput if the log does not tell enough for the method
     */
    TemperatureCourse course(DegreeDayMethod method);

    /** {@return what looks like a fault of the sensor} */
    List<SensorDoubt> doubts();

    /** {@return how many days have any reading} */
    int daysRead();

    /** {@return highest temperature in °C} */
    double highest();

    /**
     * Something that a sound sensor hardly shows.
     *
     * @param kind what it is
     * @param from when it began
     * @param to when it ended
     * @param celsius how many degrees it jumped, or the value at which it stood still
     */
    record SensorDoubt(Kind kind, LocalDateTime from, LocalDateTime to, double celsius) {

        /** What it is. */
        public enum Kind {
            /** The same value for more than a day. */
            STUCK,
            /** More than 15 °C in an hour. */
            JUMP
        }
    }
}
