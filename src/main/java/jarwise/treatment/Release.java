package jarwise.treatment;

import jarwise.base.Require;
import java.time.LocalDate;

/**
 * Natural enemies let go in the crop.
 *
 * @param releasedOn day, in the nursery's time zone
 * @param organism which, as the user calls it
 * @param place house or bench
 * @param amount how many or how much, as noted
 */
public record Release(LocalDate releasedOn, String organism, String place, String amount) {

    public Release {
        Require.notBlank("organism", organism);
        Require.notBlank("place of release", place);
    }
}
