package jarwise;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Rules of templates, stylesheets and scripts that a strict content policy and a reader want. */
class FrontEndTest {

    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);

    @Test
    void everyStylesheetStandsInALayer() {
        assertThat(stylesheets())
                .filteredOn(file -> !withoutComments(file).stripLeading().startsWith("@layer "))
                .isEmpty();
    }

    @Test
    void stylesheetsForceNothingAndNameNoSingleElement() {
        assertThat(stylesheets())
                .filteredOn(file -> has(withoutComments(file), "!important|^\\s*#[a-z]"))
                .isEmpty();
    }

    @Test
    void templatesHoldNoStyleAndNoScript() {
        // The import map is the one inline script; its hash stands in the content policy.
        String inline =
                "\\sstyle\\s*=|<style|\\son[a-z]+\\s*=\\s*\"|<script(?![^>]*(src=|type=\"importmap\"))";

        // A letter is no page of the server but a document that carries all it needs.
        Path letters = Sources.TEMPLATES.resolve("report");
        assertThat(Sources.files(Sources.TEMPLATES, ".jte"))
                .filteredOn(file -> !file.startsWith(letters))
                .filteredOn(file -> has(Sources.text(file), inline))
                .isEmpty();
    }

    @Test
    void scriptsPutTextInAsTextAndSwallowNoFailure() {
        String faults =
                "innerHTML|outerHTML|insertAdjacentHTML|catch\\s*(\\([^)]*\\))?\\s*\\{\\s*\\}";

        assertThat(scripts()).filteredOn(file -> has(withoutComments(file), faults)).isEmpty();
    }

    @Test
    void scriptsAreImportedByName() {
        assertThat(scripts())
                .filteredOn(
                        file -> has(Sources.text(file), "(from|import)\\s*\\(?\\s*[\"']\\.{1,2}/"))
                .isEmpty();
    }

    private static List<Path> stylesheets() {
        // The letter's sheet is no page's: it goes inside a document that stands alone.
        return Sources.files(Sources.RESOURCES.resolve("web"), ".css");
    }

    private static List<Path> scripts() {
        return Sources.files(Sources.RESOURCES, ".js");
    }

    private static String withoutComments(Path file) {
        return COMMENT.matcher(Sources.text(file)).replaceAll("");
    }

    private static boolean has(String text, String pattern) {
        return Pattern.compile(pattern, Pattern.MULTILINE).matcher(text).find();
    }
}
