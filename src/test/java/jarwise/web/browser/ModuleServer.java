package jarwise.web.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Serves the page's modules, their tests and the test data as they lie in the folders. */
final class ModuleServer implements AutoCloseable {

    private static final Path MODULES = Path.of("src/main/resources/web/js");
    private static final Path TESTS = Path.of("src/test/resources/js");
    private static final String PAGE =
            """
            <!doctype html><meta charset="utf-8"><link rel="icon" href="data:,">
            <script type="importmap">{"imports":{"#js/":"/js/","#test/":"/test/"}}</script>
            <script type="module">
            import { run } from "#test/check.js"
            try {
              await import("#test/%s")
              globalThis.results = await run()
            } catch (fault) {
              globalThis.results = [{ name: "the file", fault: String(fault?.stack ?? fault) }]
            }
            </script>
            """;

    private final HttpServer server;

    ModuleServer() throws IOException {
        server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 50);
        server.createContext("/js/", http -> file(http, MODULES, "/js/"));
        server.createContext("/test/", http -> file(http, TESTS, "/test/"));
        server.createContext("/testdata/", http -> file(http, Path.of("testdata"), "/testdata/"));
        server.createContext("/run/", ModuleServer::page);
        server.start();
    }

    String page(String test) {
        return "http://127.0.0.1:%d/run/%s".formatted(server.getAddress().getPort(), test);
    }

    private static void page(HttpExchange http) throws IOException {
        String test = http.getRequestURI().getPath().substring("/run/".length());
        answer(http, "text/html", PAGE.formatted(test).getBytes(StandardCharsets.UTF_8));
    }

    private static void file(HttpExchange http, Path folder, String prefix) throws IOException {
        Path file = folder.resolve(http.getRequestURI().getPath().substring(prefix.length()));
        if (Files.isDirectory(file)) {
            answer(http, "application/json", names(file).getBytes(StandardCharsets.UTF_8));
        } else {
            String type = file.toString().endsWith(".js") ? "text/javascript" : "application/json";
            answer(http, type, Files.readAllBytes(file));
        }
    }

    private static String names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> "\"" + file.getFileName() + "\"")
                    .sorted()
                    .collect(Collectors.joining(",", "[", "]"));
        }
    }

    private static void answer(HttpExchange http, String type, byte[] body) throws IOException {
        http.getResponseHeaders().set("Content-Type", type + "; charset=utf-8");
        http.sendResponseHeaders(200, body.length);
        http.getResponseBody().write(body);
        http.close();
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
