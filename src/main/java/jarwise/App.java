package jarwise;

import jarwise.base.InvalidInput;
import jarwise.base.Refused;
import jarwise.cli.BackupCommand;
import jarwise.cli.Commands;
import jarwise.cli.ImportCommand;
import jarwise.cli.LabelsCommand;
import jarwise.cli.ReportCommand;
import jarwise.cli.RestoreCommand;
import jarwise.cli.ServeUsage;
import jarwise.cli.VerifyCommand;
import jarwise.cli.option.CommandEntry;
import jarwise.render.words.Language;
import jarwise.render.words.Words;
import jarwise.usecase.DataPlace;
import jarwise.usecase.MakeDemo;
import jarwise.usecase.demo.DemoClock;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.net.InetAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Where the program starts: {@code serve}, or one of the commands. */
public final class App {

    private static final Logger QUIET = Logger.getLogger("");

    /** Warns of base fonts that no letter uses. */
    private static final Logger PDF = Logger.getLogger("org.apache.pdfbox");

    private App() {}

    /**
     * Starts the command named by the first argument.
     *
     * @param args command and options
     */
    public static void main(String[] args) {
        QUIET.setLevel(Level.WARNING);
        PDF.setLevel(Level.SEVERE);
        PrintStream out = stream(FileDescriptor.out);
        PrintStream err = stream(FileDescriptor.err);
        boolean serves = serves(Arrays.asList(args));
        int code = serves ? serve(Arrays.asList(args), out, err) : commands().run(args, out, err);
        if (code != Commands.DONE) {
            System.exit(code);
        }
    }

    private static boolean serves(List<String> words) {
        return !words.isEmpty()
                && List.of("serve", "demo").contains(words.get(0))
                && !words.contains("--help")
                && !words.contains("-h");
    }

    /** {@return every command; the options of serve and demo are read apart, for a quick start} */
    public static Commands commands() {
        InstantSource clock = InstantSource.system();
        String usual = DataPlace.here("jarwise").toString();
        return Commands.computing("1".equals(System.getenv("JARWISE_TRACE")))
                .and(
                        List.of(
                                new CommandEntry(
                                        "import",
                                        "put the counts of a sheet on record",
                                        out -> new ImportCommand(out, usual, clock)),
                                new CommandEntry(
                                        "serve",
                                        "show the pages in the browser of this computer",
                                        out -> new ServeUsage()),
                                new CommandEntry(
                                        "demo",
                                        "make the invented nursery and show it; options of serve",
                                        out -> new ServeUsage()),
                                new CommandEntry(
                                        "report",
                                        "the grower's letter, one page, as .html or .pdf",
                                        out -> new ReportCommand(out, usual, clock)),
                                new CommandEntry(
                                        "labels",
                                        "lid, base and voucher labels of a round, as .pdf",
                                        out -> new LabelsCommand(out, usual, clock)),
                                new CommandEntry(
                                        "backup",
                                        "copy all data into one file, and check the copy",
                                        out -> new BackupCommand(out, usual, clock)),
                                new CommandEntry(
                                        "restore",
                                        "put a copy in the place of the data",
                                        out -> new RestoreCommand(out, usual, clock)),
                                new CommandEntry(
                                        "verify",
                                        "are the data whole and unaltered?",
                                        out -> new VerifyCommand(out, usual))));
    }

    private static int serve(List<String> words, PrintStream out, PrintStream err) {
        boolean demo = words.get(0).equals("demo");
        try {
            String usual = DataPlace.here(demo ? "jarwise-demo" : "jarwise").toString();
            ServeOptions options = ServeOptions.of(words.subList(1, words.size()), usual);
            InstantSource clock = demo ? madeDemo(options, out) : InstantSource.system();
            Program program = Program.open(options.address(), clock);
            // Worked out while the server starts: the first page asks for the same.
            CompletableFuture<List<String>> greetings =
                    CompletableFuture.supplyAsync(program::greetings);
            int port = start(program, options);
            Runtime.getRuntime().addShutdownHook(new Thread(program::close, "close"));
            out.printf("Jarwise is at http://127.0.0.1:%d/%n", port);
            program.reach().ifPresent(reach -> OpenLan.tell(reach, out));
            out.printf("Its data are at %s. Stop it with Ctrl+C.%n", options.address());
            out.flush();
            greetings.join().forEach(out::println);
            out.flush();
            return Commands.DONE;
        } catch (Refused refused) {
            err.println(Words.of(Language.ENGLISH).say(refused.reason()));
        } catch (InvalidInput fault) {
            err.println(fault.getMessage());
        }
        err.flush();
        return Commands.WRONG_INPUT;
    }

    private static int start(Program program, ServeOptions options) {
        try {
            List<InetAddress> here = List.of(InetAddress.getLoopbackAddress());
            int port = Ports.free(options.port(), options.portGiven(), 1, here);
            return options.lan()
                    .map(lan -> OpenLan.of(lan, options.address(), Instant.now()))
                    .map(lan -> program.serve(port, lan))
                    .orElseGet(() -> program.serve(port));
        } catch (InvalidInput fault) {
            program.close();
            throw fault;
        }
    }

    /** Makes the demo nursery where it is not there yet, and sets its clock. */
    private static InstantSource madeDemo(ServeOptions options, PrintStream out) {
        java.util.function.Consumer<String> progress =
                step -> {
                    out.println("  " + step);
                    out.flush();
                };
        if (options.address().contains("postgresql://")) {
            MakeDemo.inDatabase(options.address(), progress);
        } else {
            MakeDemo.inFolder(Path.of(options.address()), progress);
        }
        return DemoClock.startingNow(InstantSource.system());
    }

    /** UTF-8 whatever the platform thinks. */
    private static PrintStream stream(FileDescriptor to) {
        return new PrintStream(new FileOutputStream(to), false, StandardCharsets.UTF_8);
    }
}
