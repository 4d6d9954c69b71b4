package jarwise.pest;

/** Shapes that tell stages apart without colour; the colour only repeats what the shape says. */
public enum StageMark {
    EGG,
    LARVA1,
    LARVA,
    PUPAL,
    ADULT,
    MALE,
    ENEMY,
    OTHER,
    UNSURE
}
