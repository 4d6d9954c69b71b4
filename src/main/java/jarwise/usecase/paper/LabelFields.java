package jarwise.usecase.paper;

import jarwise.base.Message;
import jarwise.render.label.LabelGeometry;
import jarwise.render.label.LabelJob;
import jarwise.usecase.form.Fields;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/**
 * What was chosen before labels are printed.
 *
 * @param choice sheet and nudge
 * @param start first label still on the sheet, from 1
 */
public record LabelFields(LabelChoice choice, int start) {

    /**
     * Reads the form.
     *
     * @param fields {@code sheet}, {@code across}, {@code down}, {@code start}
     * @throws jarwise.usecase.form.FormRefused with every fault, by field
     */
    public static LabelFields of(Fields fields) {
        String name = fields.needed("sheet");
        Optional<LabelGeometry> sheet =
                LabelGeometry.all().stream().filter(one -> one.name().equals(name)).findAny();
        if (sheet.isEmpty()) {
            fields.fault("sheet", Message.of("labels.sheet.unknown"));
        }
        double across = millimetres(fields, "across");
        double down = millimetres(fields, "down");
        OptionalLong start =
                fields.whole("start", 1, sheet.map(LabelGeometry::size).orElse(Integer.MAX_VALUE));
        fields.refuseIfAny();
        return new LabelFields(new LabelChoice(name, across, down), (int) start.orElse(1));
    }

    private static double millimetres(Fields fields, String name) {
        String text = fields.text(name).replace(',', '.').replace('−', '-');
        if (text.isEmpty()) {
            return 0;
        }
        if (text.matches("[-+]?[0-9]{1,2}(\\.[0-9]{1,3})?")) {
            double value = Double.parseDouble(text);
            if (Math.abs(value) < LabelJob.MOST_NUDGE_MM) {
                return value;
            }
        }
        fields.fault(name, Message.of("labels.nudge.wrong", text));
        return 0;
    }

    /** {@return the first label named in an address; 1 where it is none of the sheet's} */
    public static int start(@Nullable String text, LabelChoice choice) {
        int most = LabelGeometry.named(choice.sheet()).size();
        int start = text != null && text.matches("[0-9]{1,3}") ? Integer.parseInt(text) : 1;
        return start >= 1 && start <= most ? start : 1;
    }
}
