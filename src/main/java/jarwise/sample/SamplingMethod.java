package jarwise.sample;

/** How insects were brought to the eye. Methods are never added up or averaged. */
public enum SamplingMethod {
    WASH,
    TAP,
    CARD,
    VISUAL
}
