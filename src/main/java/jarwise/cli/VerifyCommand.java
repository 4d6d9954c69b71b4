package jarwise.cli;

import jarwise.cli.option.DataOptions;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.usecase.VerifyData;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code jarwise verify}: are the data whole and unaltered? */
@Command(
        name = "verify",
        description = "Looks whether the data are whole and no event was altered.")
public final class VerifyCommand implements Callable<Integer> {

    private final PrintStream out;

    @Mixin private final DataOptions data;

    /**
     * Makes the command.
     *
     * @param out where the answer goes
     * @param usualAddress where the data lie when no option says
     */
    public VerifyCommand(PrintStream out, String usualAddress) {
        this.out = out;
        this.data = new DataOptions(usualAddress);
    }

    @Override
    public Integer call() {
        VerifyData.Report report = new VerifyData().run(data.address);
        if (report.isWhole()) {
            out.printf("All is well: %d events, the chain is unbroken.%n", report.events());
            return Commands.DONE;
        }
        Words words = Words.of(Language.ENGLISH);
        report.faults().forEach(fault -> out.println(words.say(fault)));
        return Commands.WRONG_INPUT;
    }
}
