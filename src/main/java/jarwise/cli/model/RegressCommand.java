package jarwise.cli.model;

import jarwise.base.Guess;
import jarwise.base.InvalidInput;
import jarwise.cli.option.AnswerOptions;
import jarwise.cli.option.SheetOptions;
import jarwise.stats.regression.ModelTerms;
import jarwise.stats.regression.NegativeBinomialRegression;
import jarwise.stats.regression.RegressionFit;
import jarwise.usecase.ReadSheet;
import jarwise.usecase.model.ModelSheet;
import jarwise.wire.sheet.GroupedRows;
import java.io.PrintStream;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code jarwise regress SHEET}: what do the counts depend on, and how strongly? */
@Command(name = "regress", description = "What do the counts depend on, and how strongly?")
final class RegressCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final SheetOptions sheet = new SheetOptions();
    @Mixin private final AnswerOptions answer = new AnswerOptions();

    @Option(
            names = "--terms",
            required = true,
            split = ",",
            paramLabel = "TERM",
            description = "columns, and interactions such as treated:after")
    List<String> terms = List.of();

    @Option(
            names = "--factors",
            split = ",",
            paramLabel = "COLUMN",
            description = "columns of numbers that are names, such as a year")
    List<String> factors = List.of();

    RegressCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        ModelTerms model = new ModelTerms(terms, Set.copyOf(factors));
        for (String factor : factors) {
            if (!model.columns().contains(factor)) {
                throw new InvalidInput(
                        ("--factors names \"%s\", which is in no term; a column of --terms is"
                                        + " allowed. Maybe: %s")
                                .formatted(factor, Guess.among(model.columns(), factor)));
            }
        }
        GroupedRows rows = ReadSheet.run(sheet.request(model.columns()));
        RegressionFit fit = NegativeBinomialRegression.fit(model.frame(ModelSheet.rows(rows)));
        new RegressAnswer(fit, rows.notes()).answer().print(out, answer.json);
        return 0;
    }
}
