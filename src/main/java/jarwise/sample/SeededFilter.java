package jarwise.sample;

import jarwise.base.Require;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A filter on which insects were placed, so that it is known what is there to be found.
 *
 * @param code on its label, like that of any other filter
 * @param name what those who make it call it
 * @param placed what lies where, at least one
 * @param madeOn day it was made
 * @param madeBy role code
 * @param retiredOn day from which it is no longer read
 */
public record SeededFilter(
        SampleCode code,
        String name,
        List<Placed> placed,
        LocalDate madeOn,
        String madeBy,
        Optional<LocalDate> retiredOn) {

    public SeededFilter {
        Require.notBlank("name", name);
        Require.atLeast("insects on the filter", placed.size(), 1);
        placed = List.copyOf(placed);
    }

    /**
     * One insect.
     *
     * @param filterCell cell in which it lies, such as A5
     * @param pest pest code
     * @param lifeStage stage code of that pest
     */
    public record Placed(String filterCell, String pest, String lifeStage) {}
}
