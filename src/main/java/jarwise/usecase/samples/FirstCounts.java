package jarwise.usecase.samples;

import jarwise.sample.SampleCode;
import java.util.Collection;

/** Whoever acts on it when filters are counted for the first time. */
public interface FirstCounts {

    /** Nobody does. */
    FirstCounts UNWATCHED = (nursery, codes, writing) -> writing.run();

    /**
     * Writes, and acts on what was counted by it for the first time, in the transaction that runs.
     *
     * @param nursery slug of the site
     * @param codes samples that are written to
     * @param writing puts events on record
     */
    void around(String nursery, Collection<SampleCode> codes, Runnable writing);
}
