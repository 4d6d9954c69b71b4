package jarwise.phenology.window;

/**
 * Share of the degree-days from egg to adult that a stage takes: an assumption.
 *
 * @param pest code of the pest
 * @param stage the stage
 * @param share above 0 and below 1
 */
public record StageShare(String pest, String stage, double share) {}
