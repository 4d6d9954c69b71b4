package jarwise.usecase.quality;

import jarwise.decision.Finding.Subject;
import jarwise.sample.SampleCode;

/**
 * One reading of what was known to be there.
 *
 * @param sample code of the filter or jar
 * @param whose the reader of a seeded filter, or the fluid of a spike
 * @param reader who counted
 * @param subject which animals were there
 * @param finds what was found of them
 */
record KnownReading(
        SampleCode sample, String whose, String reader, Subject subject, KnownFinds finds) {}
