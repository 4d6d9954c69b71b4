package jarwise.render.label;

import static org.assertj.core.api.Assertions.assertThat;

import jarwise.sample.LabelCode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class QrCodeTest {

    @Test
    void a_label_code_takes_the_smallest_version() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 100; i++) {
            String code = LabelCode.next(random::nextInt).toString();
            assertThat(QrCode.of(code).size()).as(code).isEqualTo(21);
        }
    }

    @Test
    void the_path_has_as_many_dark_modules_as_the_code() {
        QrCode code = QrCode.of("7K4-M9QS");
        double area =
                code.boxes(0, 0, 1).stream().mapToDouble(box -> box.width() * box.height()).sum();
        assertThat(code.svgPath()).startsWith("M0 0h7v1h-7z").doesNotContain("NaN");
        long runs = code.svgPath().chars().filter(c -> c == 'M').count();
        assertThat(runs).isEqualTo(code.boxes(0, 0, 1).size());
        // Three corner marks alone have 33 dark modules each.
        assertThat(area).isBetween(150.0, 291.0);
    }
}
