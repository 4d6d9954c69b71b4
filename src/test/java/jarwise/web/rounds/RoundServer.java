package jarwise.web.rounds;

import jarwise.Program;
import jarwise.store.Database;
import jarwise.usecase.planning.PlanSite;
import java.io.IOException;
import java.net.CookieManager;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A real server on a free port over a {@link PlanSite}. */
final class RoundServer implements AutoCloseable {

    private static final Pattern TOKEN = Pattern.compile("name=\"form_token\" value=\"([^\"]*)\"");

    final Database database;
    final PlanSite site;
    private final Program program;
    private final int port;
    private final HttpClient client =
            HttpClient.newBuilder().cookieHandler(new CookieManager()).build();

    RoundServer(Path folder) {
        database = Database.open(folder.toString());
        site = new PlanSite(database);
        program = Program.open(folder.toString(), InstantSource.fixed(PlanSite.NOW.toInstant()));
        port = program.serve(0);
    }

    String address(String page) {
        return "http://127.0.0.1:%d/%s/%s".formatted(port, PlanSite.SLUG, page);
    }

    HttpResponse<String> get(String page) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(URI.create(address(page))).build(),
                HttpResponse.BodyHandlers.ofString());
    }

    /** Sends a form with the token of a page. */
    HttpResponse<String> post(String page, String body, String tokenFrom)
            throws IOException, InterruptedException {
        Matcher token = TOKEN.matcher(get(tokenFrom).body());
        String text = token.find() ? body + "&form_token=" + token.group(1) : body;
        return client.send(
                HttpRequest.newBuilder(URI.create(address(page)))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(text))
                        .build(),
                HttpResponse.BodyHandlers.ofString());
    }

    @Override
    public void close() {
        program.close();
        database.close();
    }
}
