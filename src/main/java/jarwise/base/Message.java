package jarwise.base;

import java.util.List;

/**
 * A sentence not yet in any language: its key in the message files and what goes into it.
 *
 * @param key key in the message files
 * @param arguments values for {0}, {1}, … already written out
 */
public record Message(String key, List<String> arguments) {

    public Message {
        arguments = List.copyOf(arguments);
    }

    /** {@return the message {@code key} with {@code arguments}} */
    public static Message of(String key, String... arguments) {
        return new Message(key, List.of(arguments));
    }
}
