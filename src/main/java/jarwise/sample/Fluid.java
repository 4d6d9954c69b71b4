package jarwise.sample;

/** Wash fluid. Plain water is recorded as not to protocol: nearly everything stays on the plant. */
public enum Fluid {
    SOAP,
    ALCOHOL,
    WATER
}
