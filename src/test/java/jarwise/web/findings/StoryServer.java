package jarwise.web.findings;

import jarwise.Program;
import jarwise.usecase.findings.Story;
import jarwise.usecase.findings.TestSite;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;

/** A real server on a free port, at the moment of {@link Story}. */
public final class StoryServer implements AutoCloseable {

    private final TestSite site;
    private final Program program;
    private final int port;

    /** Starts with the story told, or with a nursery and nothing else. */
    public StoryServer(Path folder, boolean told) {
        site = new TestSite(folder);
        if (told) {
            Story.toldTo(site);
        }
        program = Program.open(folder.toString(), InstantSource.fixed(Story.NOW));
        port = program.serve(0);
    }

    /** {@return the address of a page} */
    public String page(String page) {
        return "http://127.0.0.1:%d/%s/%s".formatted(port, TestSite.SLUG, page);
    }

    /** {@return the answer as it came} */
    public HttpResponse<byte[]> get(String page) throws IOException, InterruptedException {
        return HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create(page(page))).build(),
                        HttpResponse.BodyHandlers.ofByteArray());
    }

    /** The page as sent, but for the marks that keep a code on one line. */
    public String text(String page) throws IOException, InterruptedException {
        return new String(get(page).body(), StandardCharsets.UTF_8)
                .replaceAll("<span class=\"no-break\">([^<]*)</span>", "$1");
    }

    @Override
    public void close() {
        program.close();
        site.close();
    }
}
