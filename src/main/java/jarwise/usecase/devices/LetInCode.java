package jarwise.usecase.devices;

import java.time.Instant;

/**
 * A code that lets one device in, once.
 *
 * @param symbols eight symbols, without the hyphen between them
 * @param nursery whose pages it opens
 * @param person role code of who will use the device; empty where nobody in particular will
 * @param until when it runs out
 */
public record LetInCode(String symbols, String nursery, String person, Instant until) {

    /** {@return as it is shown and read out, such as 7K4M-9QXD} */
    public String shown() {
        return symbols.substring(0, 4) + "-" + symbols.substring(4);
    }
}
