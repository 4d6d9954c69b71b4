package jarwise.tally;

import jarwise.sample.SampleCode;

/**
 * What one row of a sheet said, so that a longer copy of the sheet is known again.
 *
 * @param place place of the row below the header, from 1
 * @param part which of the row's counts, from 1
 * @param key what the row is known by: its sample code, or its sheet and place
 * @param text the whole row
 * @param sample the sample it is about
 * @param stage what was counted
 */
public record ImportRow(
        int place, int part, String key, String text, SampleCode sample, StageKey stage) {}
