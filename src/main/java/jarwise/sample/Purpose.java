package jarwise.sample;

/** Random samples estimate density; targeted samples find pests and never enter a mean. */
public enum Purpose {
    RANDOM,
    TARGETED
}
