package jarwise.usecase;

import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.wire.sheet.TemplateSheet;

/** Makes an empty sheet for a person to fill in, its columns explained in their language. */
public final class MakeTemplate {

    private MakeTemplate() {}

    /** {@return a template, to be written as CSV or as a workbook} */
    public static TemplateSheet run(Language language) {
        Words words = Words.of(language);
        return new TemplateSheet(column -> words.say("sheet.template." + column.text()));
    }
}
