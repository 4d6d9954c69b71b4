package jarwise.site.floor;

/** The unit in which a site writes lengths; they are kept in metres. */
public enum LengthUnit {
    METRE("m", 1, 0.5),
    FOOT("ft", 0.3048, 1);

    private final String symbol;
    private final double metres;
    private final double step;

    LengthUnit(String symbol, double metres, double step) {
        this.symbol = symbol;
        this.metres = metres;
        this.step = step;
    }

    /** {@return m or ft} */
    public String symbol() {
        return symbol;
    }

    /** {@return how far one key press carries a bench, in this unit} */
    public double step() {
        return step;
    }

    /** {@return a length of this unit in metres} */
    public double toMetres(double length) {
        return length * metres;
    }

    /** {@return a length in metres in this unit} */
    public double fromMetres(double length) {
        return length / metres;
    }

    /** {@return the unit with this symbol; metres for anything else} */
    public static LengthUnit of(String symbol) {
        return symbol.equals(FOOT.symbol) ? FOOT : METRE;
    }
}
