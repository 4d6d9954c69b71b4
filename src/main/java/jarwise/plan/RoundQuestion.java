package jarwise.plan;

/** What a round is to be able to say. */
public enum RoundQuestion {
    /** "It is here", or "it is below so many". */
    DETECT,
    /** "There are about so many." */
    ESTIMATE,
    /** "The treatment worked." */
    COMPARE,
    /** "Act", or "wait". */
    DECIDE,
    /** "It stops here." */
    DELIMIT
}
