package jarwise.web.lan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.CookieManager;
import java.net.HttpCookie;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.net.ssl.SSLContext;

/** A browser with cookies of its own. */
final class Phone {

    private static final Pattern TOKEN =
            Pattern.compile("name=\"form_token\" value=\"([0-9a-f]+)\"");

    private final CookieManager cookies = new CookieManager();
    private final HttpClient browser;

    Phone(SSLContext trust) {
        this.browser =
                HttpClient.newBuilder()
                        .sslContext(trust)
                        .cookieHandler(cookies)
                        .followRedirects(HttpClient.Redirect.NEVER)
                        .build();
    }

    HttpResponse<String> get(String address) throws IOException, InterruptedException {
        return browser.send(
                HttpRequest.newBuilder(URI.create(address)).build(), BodyHandlers.ofString());
    }

    /** Sends a form with the token of the page that it stands on. */
    HttpResponse<String> send(String page, String address, String... fields)
            throws IOException, InterruptedException {
        Matcher token = TOKEN.matcher(get(page).body());
        assertThat(token.find()).as("a form on " + page).isTrue();
        StringBuilder form = new StringBuilder("form_token=" + token.group(1));
        for (int i = 0; i < fields.length; i += 2) {
            form.append('&').append(fields[i]).append('=');
            form.append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
        }
        return browser.send(
                HttpRequest.newBuilder(URI.create(address))
                        .header("Content-Type", "application/x-www-form-urlencoded")
                        .POST(HttpRequest.BodyPublishers.ofString(form.toString()))
                        .build(),
                BodyHandlers.ofString());
    }

    List<HttpCookie> cookies() {
        return cookies.getCookieStore().getCookies();
    }
}
