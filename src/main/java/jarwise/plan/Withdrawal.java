package jarwise.plan;

import jarwise.base.Require;
import java.time.Instant;

/**
 * That a round is not walked, or not to its end.
 *
 * @param at when that was said
 * @param by role code
 * @param reason why
 */
public record Withdrawal(Instant at, String by, String reason) {

    public Withdrawal {
        Require.notBlank("reason", reason);
    }
}
