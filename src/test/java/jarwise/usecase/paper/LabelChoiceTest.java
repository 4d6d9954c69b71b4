package jarwise.usecase.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jarwise.base.InvalidInput;
import jarwise.site.Nursery;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class LabelChoiceTest {

    @Test
    void the_usual_sheet_goes_by_the_paper_of_the_country() {
        assertThat(LabelChoice.usual(nursery("America/Toronto")).sheet()).isEqualTo("letter-30");
        assertThat(LabelChoice.usual(nursery("Europe/Amsterdam")).sheet()).isEqualTo("a4-21");
    }

    private static Nursery nursery(String zone) {
        return new Nursery("lane", "Lane", ZoneId.of(zone), "en");
    }

    @Test
    void a_choice_is_read_back_as_it_was_kept() {
        LabelChoice choice = new LabelChoice("a4-65", -0.46, 1.25);
        assertThat(choice.text()).isEqualTo("a4-65 -0.5 1.3");
        assertThat(LabelChoice.of(choice.text())).isEqualTo(choice);
    }

    @Test
    void what_cannot_be_is_refused() {
        assertThatThrownBy(() -> new LabelChoice("a4-1", 0, 0)).isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> new LabelChoice("a4-21", 10, 0))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("less than 10 mm");
        assertThatThrownBy(() -> new LabelChoice("a4-21", 0, Double.NaN))
                .isInstanceOf(InvalidInput.class);
    }
}
