package jarwise.cli;

import jarwise.base.Guess;
import jarwise.base.InvalidInput;
import jarwise.base.Refused;
import jarwise.cli.climate.ClimateCommands;
import jarwise.cli.laboratory.AgreementCommand;
import jarwise.cli.laboratory.PartialCommand;
import jarwise.cli.laboratory.RemovalCommand;
import jarwise.cli.laboratory.SensitivityCommand;
import jarwise.cli.model.ModelCommands;
import jarwise.cli.option.CommandEntry;
import jarwise.cli.pattern.PatternCommands;
import jarwise.cli.plan.PlanCommands;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.wire.table.SheetRefused;
import java.io.PrintStream;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Every command by its name. Nothing is built but the command that is asked for, so a long list
 * costs nothing at the start.
 *
 * @param entries the commands
 * @param trace whether a fault of ours shows its stack trace
 */
public record Commands(List<CommandEntry> entries, boolean trace) {

    /** Done. */
    public static final int DONE = 0;

    /** Our fault. */
    public static final int OUR_FAULT = 1;

    /** Wrong input or options. */
    public static final int WRONG_INPUT = 2;

    public Commands {
        entries = List.copyOf(entries);
    }

    /** {@return the commands that compute from sheets and need no data of the site} */
    public static Commands computing(boolean trace) {
        return new Commands(
                        List.of(
                                new CommandEntry(
                                        "estimate",
                                        "mean density per sampling unit, with an honest interval",
                                        EstimateCommand::new),
                                new CommandEntry(
                                        "sensitivity",
                                        "what share is found again, of a known number",
                                        SensitivityCommand::new),
                                new CommandEntry(
                                        "agreement",
                                        "how far two counts of the same things differ",
                                        AgreementCommand::new),
                                new CommandEntry(
                                        "removal",
                                        "how many were there, from repeat washes",
                                        RemovalCommand::new),
                                new CommandEntry(
                                        "partial",
                                        "how many are on a filter of which a part was read",
                                        PartialCommand::new)),
                        trace)
                .and(ModelCommands.entries())
                .and(PatternCommands.entries())
                .and(PlanCommands.entries())
                .and(ClimateCommands.entries());
    }

    /** {@return these commands and more} */
    public Commands and(List<CommandEntry> more) {
        List<CommandEntry> all = new ArrayList<>(entries);
        all.addAll(more);
        return new Commands(all, trace);
    }

    /**
     * Runs the command named by the first one or two arguments.
     *
     * @param args command and options
     * @param out where answers go, and nothing else
     * @param err where refusals go
     * @return the exit code: 0 done, 1 our fault, 2 wrong input or options
     */
    public int run(String[] args, PrintStream out, PrintStream err) {
        try {
            return runUnguarded(args, out, err);
        } catch (SheetRefused e) {
            err.print(sentences(e));
            return WRONG_INPUT;
        } catch (Refused e) {
            err.println(Words.of(Language.ENGLISH).say(e.reason()));
            return WRONG_INPUT;
        } catch (InvalidInput e) {
            err.println(e.getMessage());
            return WRONG_INPUT;
        } catch (Exception | StackOverflowError | OutOfMemoryError e) {
            String what = e.toString().replaceAll("\\s+", " ");
            err.println(
                    ("Jarwise failed, and that is its own fault: %s. Set JARWISE_TRACE=1 in the"
                                    + " environment, run it again, and report what it prints.")
                            .formatted(what));
            if (trace) {
                e.printStackTrace(err);
            }
            return OUR_FAULT;
        } finally {
            out.flush();
            err.flush();
        }
    }

    private int runUnguarded(String[] args, PrintStream out, PrintStream err) throws Exception {
        String first = args.length == 0 ? "help" : args[0];
        return switch (first) {
            case "help", "--help", "-h" -> help(args, out, err);
            case "--version", "-V" -> {
                out.println("jarwise " + version());
                yield DONE;
            }
            default -> runCommand(args, out, err);
        };
    }

    private int runCommand(String[] args, PrintStream out, PrintStream err) throws Exception {
        Optional<CommandEntry> entry = entry(args);
        if (entry.isEmpty()) {
            return unknown(args, err);
        }
        String name = entry.get().name();
        Callable<Integer> command = entry.get().made().apply(out);
        CommandLine parser = parser(name, command);
        try {
            parser.parseArgs(Arrays.copyOfRange(args, name.split(" ").length, args.length));
        } catch (ParameterException e) {
            err.println(sentence(name, e));
            return WRONG_INPUT;
        }
        if (parser.isUsageHelpRequested()) {
            parser.usage(out);
            return DONE;
        }
        return command.call();
    }

    private static CommandLine parser(String name, Callable<Integer> command) {
        return new CommandLine(command)
                .setCommandName("jarwise " + name)
                .addMixin("help", new HelpOption())
                .registerConverter(LocalDate.class, Commands::day)
                .setExpandAtFiles(false)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setColorScheme(Help.defaultColorScheme(Help.Ansi.OFF));
    }

    private static LocalDate day(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException(
                    "\"%s\" is no day; days are written 2026-05-04".formatted(text));
        }
    }

    private int help(String[] args, PrintStream out, PrintStream err) {
        if (args.length > 1) {
            String[] asked = Arrays.copyOfRange(args, 1, args.length);
            Optional<CommandEntry> entry = entry(asked);
            if (entry.isEmpty()) {
                return unknown(asked, err);
            }
            parser(entry.get().name(), entry.get().made().apply(out)).usage(out);
            return DONE;
        }
        out.println("jarwise COMMAND [options]");
        out.println();
        int width = entries.stream().mapToInt(e -> e.name().length()).max().orElse(0);
        for (CommandEntry entry : entries) {
            String gap = " ".repeat(width - entry.name().length() + 2);
            out.println("  " + entry.name() + gap + entry.summary());
        }
        out.println();
        out.println("jarwise help COMMAND tells the options of one command.");
        out.println("Exit codes: 0 done, 1 fault of the program, 2 wrong input or options.");
        return DONE;
    }

    private int unknown(String[] args, PrintStream err) {
        List<String> names = entries.stream().map(CommandEntry::name).toList();
        boolean begins = names.stream().anyMatch(name -> name.startsWith(args[0] + " "));
        String asked = begins && args.length > 1 ? args[0] + " " + args[1] : args[0];
        List<String> near =
                begins
                        ? names.stream().filter(name -> name.startsWith(args[0] + " ")).toList()
                        : names;
        String maybe =
                begins && args.length == 1 ? String.join(", ", near) : Guess.among(near, asked);
        err.printf(
                "There is no command \"%s\". Maybe: %s. All commands: jarwise help%n",
                asked, maybe);
        return WRONG_INPUT;
    }

    /** A command's name is one word, or two: "plan detect". */
    private Optional<CommandEntry> entry(String[] args) {
        String said = String.join(" ", args) + " ";
        return entries.stream().filter(entry -> said.startsWith(entry.name() + " ")).findFirst();
    }

    private static String sentence(String command, ParameterException e) {
        String maybe = "Maybe look at: jarwise help " + command;
        if (e instanceof UnmatchedArgumentException unmatched && unmatched.isUnknownOption()) {
            Set<String> options = e.getCommandLine().getCommandSpec().optionsMap().keySet();
            maybe = "Maybe: " + Guess.among(options, unmatched.getUnmatched().get(0));
        }
        String message = String.valueOf(e.getMessage()).strip();
        String stop = message.endsWith(".") ? " " : ". ";
        return message.contains("Maybe") ? message : message + stop + maybe;
    }

    private static String sentences(SheetRefused refusal) {
        Words words = Words.of(Language.ENGLISH);
        StringBuilder text = new StringBuilder();
        if (refusal.number() > 1) {
            text.append(words.say("sheet.refused", refusal.number())).append('\n');
        }
        refusal.faults().forEach(f -> text.append(words.say(f.message())).append('\n'));
        int more = refusal.number() - refusal.faults().size();
        if (more > 0) {
            text.append(words.say("sheet.refused.more", String.valueOf(more))).append('\n');
        }
        return text.toString();
    }

    private static String version() {
        String version = Commands.class.getPackage().getImplementationVersion();
        return version == null ? "(not built as a jar)" : version;
    }
}
