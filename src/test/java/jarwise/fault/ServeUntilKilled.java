package jarwise.fault;

import jarwise.Program;
import java.time.InstantSource;
import java.util.concurrent.CountDownLatch;

/** A server in a process of its own, until somebody kills it. It prints its port. */
final class ServeUntilKilled {

    private ServeUntilKilled() {}

    /** Starts with the address of the data. */
    public static void main(String[] args) throws InterruptedException {
        try (Program program = Program.open(args[0], InstantSource.system())) {
            System.out.println(program.serve(0));
            System.out.flush();
            new CountDownLatch(1).await();
        }
    }
}
