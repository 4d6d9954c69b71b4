package jarwise.usecase.quality;

import jarwise.usecase.findings.SiteRules;
import java.util.List;

/**
 * How far the counts of a site can be trusted.
 *
 * @param shares what readers find and fluids bring off, the animals with a line first
 * @param agreements readers against each other, by pest and stages
 * @param recounts every filter counted again, the newest first
 * @param blanks jars washed with nothing in them
 * @param leftOut known filters and spikes that say nothing: in part read, or not noted what was put
 *     there
 * @param rules what the site has chosen, adopted values among it
 */
public record Quality(
        List<MeasuredShare> shares,
        List<ReaderAgreement> agreements,
        List<Recount> recounts,
        Blanks blanks,
        int leftOut,
        SiteRules rules) {

    public Quality {
        shares = List.copyOf(shares);
        agreements = List.copyOf(agreements);
        recounts = List.copyOf(recounts);
    }
}
