package jarwise.wire.sheet;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Columns that mean something to Jarwise, with plain words people write for them. */
public enum KnownColumn {
    SAMPLE("jar", "sample code", "code", "muestra", "frasco", "échantillon", "bocal"),
    DATE("day", "collected on", "fecha", "día", "jour"),
    HOUSE("greenhouse", "invernadero", "nave", "serre"),
    BENCH("table", "mesa", "banco", "tablette"),
    CROP("plant", "cultivo", "culture"),
    VARIETY("cultivar", "variedad", "variété"),
    METHOD("método", "méthode"),
    UNITS(
            "sampling units",
            "growing points",
            "plants",
            "leaves",
            "flowers",
            "brotes",
            "plantas",
            "pousses",
            "plantes"),
    CELLS_READ("cells counted", "celdas leídas", "cases lues"),
    CELLS_TOTAL("cells", "celdas", "celdas en total", "cases", "cases en tout"),
    PEST("species", "taxon", "plaga", "especie", "ravageur", "espèce"),
    STAGE("life stage", "estadio", "estado", "stade"),
    COUNT("number", "individuals", "total", "conteo", "número", "comptage", "nombre"),
    READER("counted by", "lector", "lecteur");

    /** Each between two semicolons. */
    private final String synonyms;

    KnownColumn(String... synonyms) {
        this.synonyms =
                Arrays.stream(synonyms)
                        .map(KnownColumn::plain)
                        .collect(Collectors.joining(";", ";", ";"));
    }

    /** {@return its name in a sheet, such as {@code cells_read}} */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** {@return the column with this name, in any case} */
    public static Optional<KnownColumn> of(String name) {
        return Arrays.stream(values()).filter(c -> c.text().equalsIgnoreCase(name)).findAny();
    }

    /** {@return the column a person most likely means, by name or by a word for it} */
    public static Optional<KnownColumn> meantBy(String name) {
        String plain = plain(name);
        Optional<KnownColumn> exact =
                Arrays.stream(values()).filter(c -> c.text().equals(plain)).findAny();
        return exact.isPresent()
                ? exact
                : Arrays.stream(values())
                        .filter(c -> c.synonyms.contains(";" + plain + ";"))
                        .findAny();
    }

    /** {@return lower case, no accents, one underscore between words} */
    static String plain(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "_")
                .replaceAll("^_|_$", "");
    }
}
