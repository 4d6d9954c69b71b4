package jarwise.usecase.planning;

import jarwise.plan.Spot;
import jarwise.sample.Purpose;
import jarwise.sample.SampleRole;
import java.util.Optional;

/**
 * One jar before it has a code.
 *
 * @param stand where it is cut; empty for a check of the work
 * @param purpose random or targeted
 * @param role crop or check
 * @param spot where on the bench; empty for targeted jars and checks
 */
public record JarPlace(
        Optional<StandThere> stand, Purpose purpose, SampleRole role, Optional<Spot> spot) {}
