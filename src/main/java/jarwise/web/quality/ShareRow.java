package jarwise.web.quality;

import jarwise.web.piece.Picture;
import jarwise.web.piece.StripRow.Lines;

/**
 * One measured share as a row, in words.
 *
 * @param key its name in forms
 * @param id its name on the page
 * @param name who or what, and which animals
 * @param found found of known, and in how many readings
 * @param share how many of 100, and the limits
 * @param strip picture, SVG of our own writer
 * @param use what is in use, and since when
 * @param full the name in one line, for buttons
 * @param offered whether the measured value is another than the one in use
 */
public record ShareRow(
        String key,
        String id,
        Lines name,
        Lines found,
        Lines share,
        Picture.Panel strip,
        Lines use,
        String full,
        boolean offered) {}
