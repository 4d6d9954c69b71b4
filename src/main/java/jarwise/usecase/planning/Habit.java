package jarwise.usecase.planning;

import jarwise.base.Message;

/**
 * A number that is taken while nobody types another one.
 *
 * @param value as it would be typed
 * @param source where it comes from
 */
public record Habit(String value, Message source) {

    static Habit of(String value, String key, String... arguments) {
        return new Habit(value, Message.of(key, arguments));
    }
}
