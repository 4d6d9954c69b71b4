package jarwise.render.words;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAccessor;

/**
 * Days and times as they are said in one language.
 *
 * @param words the language, with the patterns of its dates
 */
public record Days(Words words) {

    /** {@return the days of one language} */
    public static Days of(Language language) {
        return new Days(Words.of(language));
    }

    /** {@return "Thursday 7 May 2026"} */
    public String full(LocalDate day) {
        return written("day.full", day);
    }

    /** {@return "7 May 2026"} */
    public String dated(LocalDate day) {
        return written("day.dated", day);
    }

    /** {@return "7 May", with the month whole: "4 April"} */
    public String dayMonth(LocalDate day) {
        return written("day.month", day);
    }

    /** {@return "6 May" with the month short, for pictures: "8 Apr"} */
    public String brief(LocalDate day) {
        return written("day.brief", day);
    }

    /** {@return "Mon 11 May"} */
    public String weekday(LocalDate day) {
        return written("day.weekday", day);
    }

    /** {@return "May", the month short} */
    public String month(LocalDate day) {
        return written("day.month-only", day);
    }

    /** {@return "19:30"} */
    public String time(LocalTime time) {
        return written("day.time", time);
    }

    private String written(String key, TemporalAccessor moment) {
        String text =
                DateTimeFormatter.ofPattern(words.say(key), words.language().locale())
                        .format(moment);
        // CLDR writes "avr." and "sept."; on an axis the dot is only noise.
        return key.equals("day.brief") || key.equals("day.month-only")
                ? text.replace(".", "")
                : text;
    }
}
