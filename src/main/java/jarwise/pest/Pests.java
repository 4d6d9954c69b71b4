package jarwise.pest;

import java.util.List;
import java.util.Optional;

/**
 * Every pest and natural enemy that a site can count.
 *
 * @param all in the order of lists
 */
public record Pests(List<Pest> all) {

    public Pests {
        all = List.copyOf(all);
    }

    /** {@return the pest with this code} */
    public Optional<Pest> find(String code) {
        return all.stream().filter(pest -> pest.code().equals(code)).findAny();
    }
}
