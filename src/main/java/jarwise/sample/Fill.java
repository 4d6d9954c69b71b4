package jarwise.sample;

/** How full the jar was: packed material does not tumble and holds insects back. */
public enum Fill {
    LOOSE,
    PACKED
}
