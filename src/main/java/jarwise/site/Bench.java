package jarwise.site;

import jarwise.base.Require;

/**
 * A raised growing table, the smallest mapped place. Its code, such as P1-B3, is unique in a
 * nursery.
 *
 * @param code as painted on the bench
 * @param house the greenhouse it stands in
 * @param bay section of the house
 * @param position place in the walk, from 0
 */
public record Bench(String code, String house, String bay, int position) {

    public Bench {
        Require.notBlank("bench", code);
        Require.notBlank("house", house);
    }
}
