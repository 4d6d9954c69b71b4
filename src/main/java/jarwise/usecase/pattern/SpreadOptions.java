package jarwise.usecase.pattern;

import jarwise.base.InvalidInput;
import jarwise.stats.space.Permutations;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a sheet is read as a map.
 *
 * @param position the two columns of a bench's place
 * @param reach distance up to which benches are neighbours, in the unit of the places
 * @param round column that tells the rounds apart; the date if empty and the sheet has one
 * @param effort sampling units per bench for which the share is said; their mean if empty
 * @param k dispersion of bench totals; estimated if empty
 * @param permutations how tests are drawn
 */
public record SpreadOptions(
        List<String> position,
        double reach,
        Optional<String> round,
        OptionalDouble effort,
        OptionalDouble k,
        Permutations permutations) {

    /** Checks that there are two columns of a place. */
    public SpreadOptions {
        position = List.copyOf(position);
        if (position.size() != 2) {
            throw new InvalidInput(
                    "--position names %d columns; 2 are needed. Maybe: --position x,y"
                            .formatted(position.size()));
        }
    }
}
