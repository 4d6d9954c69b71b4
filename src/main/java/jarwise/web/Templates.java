package jarwise.web;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.Map;

/** Turns a page's records into HTML with templates that were compiled and type-checked at build. */
public final class Templates {

    private final TemplateEngine engine = TemplateEngine.createPrecompiled(ContentType.Html);

    /** Answers with a page; it may not be stored, since it shows a site's data. */
    public void answer(Context http, String template, Map<String, Object> parameters) {
        StringOutput html = new StringOutput(32_000);
        engine.render(template, parameters, html);
        http.header("Cache-Control", "no-store");
        http.html(html.toString());
    }
}
