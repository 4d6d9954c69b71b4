package jarwise.wire.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.wire.table.Fault;
import jarwise.wire.table.FaultKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FaultSentencesTest {

    @ParameterizedTest
    @EnumSource
    void everyFaultHasASentenceInEveryLanguage(FaultKind kind) {
        Fault fault = Fault.in(12, "count", "x", kind, "one", "two", "three");
        for (Language language : Language.values()) {
            String sentence = Words.of(language).say(fault.message());

            assertThat(sentence).endsWith(".").doesNotContain("{");
        }
    }

    @ParameterizedTest
    @EnumSource
    void namesRowColumnAndValueInEveryLanguageAlike(FaultKind kind) {
        Fault fault = Fault.in(12, "COLUMN", "VALUE", kind, "ONE", "TWO", "THREE");
        String english = Words.of(Language.ENGLISH).say(fault.message());
        for (Language language : Language.values()) {
            String sentence = Words.of(language).say(fault.message());
            for (String part : new String[] {"12", "COLUMN", "VALUE", "ONE", "TWO", "THREE"}) {
                assertThat(sentence.contains(part)).as(part).isEqualTo(english.contains(part));
            }
        }
    }
}
