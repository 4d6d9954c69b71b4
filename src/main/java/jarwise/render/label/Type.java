package jarwise.render.label;

/**
 * How a text is set.
 *
 * @param points size; 1 point is 1/72 inch
 * @param bold whether in the heavy weight
 */
record Type(double points, boolean bold) {

    static Type plain(double points) {
        return new Type(points, false);
    }

    static Type bold(double points) {
        return new Type(points, true);
    }

    Type times(double factor) {
        return new Type(points * factor, bold);
    }
}
