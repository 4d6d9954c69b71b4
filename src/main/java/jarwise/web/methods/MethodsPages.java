package jarwise.web.methods;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import jarwise.render.markdown.MarkdownPage;
import jarwise.web.Frame;
import jarwise.web.Pages;
import jarwise.web.Server;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;

/** Shows docs/methods.md. Figures on other pages link to its headings. */
public final class MethodsPages implements Pages {

    private final Server.Kit kit;

    /** Makes the page. */
    public MethodsPages(Server.Kit kit) {
        this.kit = kit;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/{nursery}/methods", this::show);
    }

    private void show(Context http) {
        Frame frame = kit.frames().ofSite(http, "methods");
        kit.templates()
                .answer(http, "methods.jte", Map.of("frame", frame, "methods", Document.METHODS));
    }

    private static MarkdownPage read() {
        try (InputStream in = MethodsPages.class.getResourceAsStream("/docs/methods.md")) {
            byte[] bytes = Objects.requireNonNull(in, "docs/methods.md").readAllBytes();
            return MarkdownPage.of(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Read when it is first asked for: starting the program must not wait for it. */
    private static final class Document {
        static final MarkdownPage METHODS = read();
    }
}
