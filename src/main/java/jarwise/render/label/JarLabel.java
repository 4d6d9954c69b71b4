package jarwise.render.label;

import jarwise.plan.PlannedJar;
import jarwise.render.words.Words;
import jarwise.sample.SampleCode;

/**
 * What the labels of one jar say.
 *
 * @param code its sample's code
 * @param place bench, or what kind of control it is
 * @param variety cultivar; blank in a control
 * @param growingPoints growing points planned, 0 in a control
 * @param walk place in the walk, from 1
 */
public record JarLabel(SampleCode code, String place, String variety, int growingPoints, int walk) {

    /** {@return the label of a planned jar} */
    public static JarLabel of(PlannedJar jar, Words words) {
        return new JarLabel(
                jar.code(),
                jar.isOfCrop() ? jar.bench() : words.say("label." + role(jar)),
                jar.variety().orElse(""),
                jar.growingPoints(),
                jar.walk());
    }

    private static String role(PlannedJar jar) {
        return switch (jar.role()) {
            case SPIKE -> "spike";
            case BLANK -> "blank";
            default -> "control";
        };
    }
}
