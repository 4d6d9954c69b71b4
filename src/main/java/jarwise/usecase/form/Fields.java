package jarwise.usecase.form;

import jarwise.base.InvalidInput;
import jarwise.base.Message;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** Reads typed texts field by field and gathers what is wrong with them. */
public final class Fields {

    private static final int LONGEST = 2_000;

    /** A thousand and a decimal fraction look alike here; nothing else ends in such a zero. */
    private static final Pattern THOUSANDS =
            Pattern.compile("[1-9][0-9]{0,2}(,[0-9]{3}|\\.[0-9]{2}0)");

    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);

    private final Map<String, String> typed;
    private final Map<String, Message> faults = new LinkedHashMap<>();
    private boolean ended;

    private Fields(Map<String, String> typed) {
        this.typed = Map.copyOf(typed);
    }

    /** {@return a reader of what was typed, by the names of the fields} */
    public static Fields of(Map<String, String> typed) {
        return new Fields(typed);
    }

    /** {@return everything that was typed} */
    public Map<String, String> typed() {
        return typed;
    }

    /** {@return a text without white space around it; empty where nothing was typed} */
    public String text(String name) {
        String text = typed.getOrDefault(name, "").strip();
        if (text.length() > LONGEST) {
            fault(name, Message.of("form.too-long", String.valueOf(LONGEST)));
            return "";
        }
        return text;
    }

    /** {@return a text; a fault where nothing was typed} */
    public String needed(String name) {
        String text = text(name);
        if (text.isEmpty()) {
            fault(name, Message.of("form.needed"));
        }
        return text;
    }

    /** {@return a day, written 2026-05-04} */
    public Optional<LocalDate> day(String name) {
        String text = text(name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            fault(name, Message.of("form.day", text));
            return Optional.empty();
        }
    }

    /** {@return a day that is not still to come, and not before anybody kept such records} */
    public Optional<LocalDate> pastDay(String name, LocalDate today) {
        Optional<LocalDate> day = day(name);
        day.filter(on -> on.isAfter(today))
                .ifPresent(on -> fault(name, Message.of("form.day.future", on.toString())));
        day.filter(on -> on.isBefore(EARLIEST))
                .ifPresent(on -> fault(name, Message.of("form.day.early", on.toString())));
        return day;
    }

    /** {@return a moment, written 2026-05-04T07:40 by the clocks of {@code zone}} */
    public Optional<Instant> moment(String name, ZoneId zone) {
        String text = text(name).replace(' ', 'T');
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDateTime.parse(text).atZone(zone).toInstant());
        } catch (DateTimeException e) {
            fault(name, Message.of("form.moment", text));
            return Optional.empty();
        }
    }

    /** {@return a whole number within bounds; empty where nothing was typed} */
    public OptionalLong whole(String name, long least, long most) {
        String text = text(name);
        if (text.isEmpty()) {
            return OptionalLong.empty();
        }
        if (text.matches("[0-9]{1,12}")) {
            long value = Long.parseLong(text);
            if (value >= least && value <= most) {
                return OptionalLong.of(value);
            }
        }
        fault(name, Message.of("form.whole", text, String.valueOf(least), String.valueOf(most)));
        return OptionalLong.empty();
    }

    /** {@return a number above {@code above} and at most {@code most}; a comma may be its point} */
    public OptionalDouble number(String name, double above, double most) {
        String text = text(name);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        if (THOUSANDS.matcher(text).matches()) {
            String grouped = text.replaceAll("[.,]", "");
            String broken = plain(Double.parseDouble(text.replace(',', '.')));
            fault(name, Message.of("form.number.two-ways", text, grouped, broken));
            return OptionalDouble.empty();
        }
        if (text.matches("[0-9]{1,12}([.,][0-9]{1,12})?")) {
            double value = Double.parseDouble(text.replace(',', '.'));
            if (value > above && value <= most) {
                return OptionalDouble.of(value);
            }
        }
        fault(name, Message.of("form.number", text, plain(above), plain(most)));
        return OptionalDouble.empty();
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }

    /** {@return one of the words of an enum, in lower case; empty where nothing was chosen} */
    public <E extends Enum<E>> Optional<E> word(String name, Class<E> type) {
        String text = text(name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        List<E> all = Arrays.asList(type.getEnumConstants());
        Optional<E> found = all.stream().filter(one -> wordOf(one).equals(text)).findFirst();
        if (found.isEmpty()) {
            String allowed = String.join(", ", all.stream().map(Fields::wordOf).toList());
            fault(name, Message.of("form.word", text, allowed));
        }
        return found;
    }

    /** {@return an enum constant as it is written in forms and facts} */
    public static String wordOf(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** {@return what {@code made} gives; its refusal becomes the fault of this field} */
    public <T> Optional<T> checked(String name, Supplier<T> made) {
        if (faults.containsKey(name)) {
            return Optional.empty();
        }
        try {
            return Optional.of(made.get());
        } catch (InvalidInput e) {
            fault(name, Message.of("form.refused", String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    /**
     * Notes a fault of a field; the first one stands.
     *
     * @throws FormRefused if the reading was ended before, so that no late fault is overlooked
     */
    public void fault(String name, Message message) {
        faults.putIfAbsent(name, message);
        if (ended) {
            throw new FormRefused(faults);
        }
    }

    /**
     * Ends the reading.
     *
     * @throws FormRefused if anything was wrong
     */
    public void refuseIfAny() {
        ended = true;
        if (!faults.isEmpty()) {
            throw new FormRefused(faults);
        }
    }
}
