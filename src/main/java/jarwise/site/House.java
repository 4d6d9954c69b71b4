package jarwise.site;

import jarwise.base.Require;
import java.util.OptionalDouble;

/**
 * One greenhouse.
 *
 * @param code short name, unique in the nursery
 * @param name what it is used for
 * @param areaM2 floor area in square metres, where known
 */
public record House(String code, String name, OptionalDouble areaM2) {

    public House {
        Require.notBlank("house", code);
    }
}
