package jarwise.web.rounds;

import jarwise.plan.Spot;
import jarwise.web.Frame;

/** A place on a bench in words. */
record SpotWords(Frame frame) {

    /** {@return "35 % along, near the aisle"} */
    String brief(Spot spot) {
        String across =
                spot.across() < 1.0 / 3 ? "near" : spot.across() > 2.0 / 3 ? "far" : "middle";
        return frame.say(
                "spot.along",
                String.valueOf(Math.round(100 * spot.along())),
                frame.say("spot." + across));
    }
}
