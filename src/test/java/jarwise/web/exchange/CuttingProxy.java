package jarwise.web.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Stands between a device and the server and loses answers: the server has committed and answered,
 * and the device never hears of it.
 */
public final class CuttingProxy implements AutoCloseable {

    private final ServerSocket entrance;
    private final int server;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    private volatile boolean unplugged;
    private final AtomicInteger answersToLose = new AtomicInteger();
    private final ExecutorService threads = Executors.newCachedThreadPool();

    /** Opens a proxy before the server at a port of this machine. */
    public CuttingProxy(int server) {
        this.server = server;
        try {
            entrance = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        threads.execute(this::accept);
    }

    public int port() {
        return entrance.getLocalPort();
    }

    /** Loses the next answers. */
    public void lose(int answers) {
        answersToLose.set(answers);
    }

    /** {@return how many answers are still to be lost} */
    public int toLose() {
        return answersToLose.get();
    }

    /** Takes the cable out: what runs breaks off, and nothing gets through any more. */
    public void unplug() {
        unplugged = true;
        open.forEach(CuttingProxy::hangUp);
    }

    /** Puts the cable back. */
    public void plug() {
        unplugged = false;
    }

    private static void hangUp(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void accept() {
        while (!entrance.isClosed()) {
            try {
                Socket device = entrance.accept();
                open.add(device);
                if (unplugged) {
                    hangUp(device);
                    continue;
                }
                Socket behind = new Socket(InetAddress.getLoopbackAddress(), server);
                threads.execute(() -> pass(device, behind, false));
                threads.execute(() -> pass(behind, device, true));
            } catch (IOException closed) {
                return;
            }
        }
    }

    private void pass(Socket from, Socket to, boolean answers) {
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            byte[] buffer = new byte[8192];
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                if (answers && answersToLose.getAndUpdate(left -> Math.max(0, left - 1)) > 0) {
                    return;
                }
                out.write(buffer, 0, n);
                out.flush();
            }
        } catch (IOException ended) {
            // The other side hung up first: nothing is left to pass on.
            return;
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
        try {
            entrance.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
