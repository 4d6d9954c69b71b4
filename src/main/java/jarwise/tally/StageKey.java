package jarwise.tally;

/**
 * A life stage of a pest.
 *
 * @param pest pest code
 * @param lifeStage stage code of that pest
 */
public record StageKey(String pest, String lifeStage) implements Comparable<StageKey> {

    @Override
    public int compareTo(StageKey other) {
        int byPest = pest.compareTo(other.pest);
        return byPest != 0 ? byPest : lifeStage.compareTo(other.lifeStage);
    }
}
