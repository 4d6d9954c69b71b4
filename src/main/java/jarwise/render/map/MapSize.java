package jarwise.render.map;

/**
 * Measures of a map, px.
 *
 * @param width of the whole picture
 * @param font size of the words on a bench
 * @param leastBenchWidth narrower ones have no room for words
 * @param leastBenchHeight flatter ones have no room for words
 * @param mostHouseHeight no house that is stretched grows taller
 * @param mostPxPerMetre largest scale of a whole nursery; 0 where none is drawn to scale
 */
public record MapSize(
        double width,
        double font,
        double leastBenchWidth,
        double leastBenchHeight,
        double mostHouseHeight,
        double mostPxPerMetre) {

    /** Beside the table at the desk. */
    public static final MapSize DESK = new MapSize(664, 13, 62, 38, 620, 13);

    /** The width of a phone. */
    public static final MapSize PHONE = new MapSize(326, 14, 44, 72, 900, 0);
}
