package jarwise.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files under {@code web/}: served as they are, each under an address with its fingerprint, so
 * that a browser may keep it for ever. Stylesheets are joined in one answer, layers first.
 */
final class Assets {

    private static final String ROOT = "web/";
    private static final Map<String, String> TYPES =
            Map.of(
                    "css", "text/css; charset=utf-8",
                    "js", "text/javascript; charset=utf-8",
                    "svg", "image/svg+xml",
                    "png", "image/png",
                    "woff2", "font/woff2");

    private final Map<String, byte[]> files = new TreeMap<>();
    private final String importMap;

    Assets() {
        for (String name : names()) {
            files.put(name, read(name));
        }
        files.put("all.css", joinedStyles());
        this.importMap = writeImportMap();
    }

    /** {@return the address of a file, with its fingerprint} */
    String address(String name) {
        byte[] content = files.get(name);
        if (content == null) {
            throw new IllegalArgumentException("No asset " + name);
        }
        return "/assets/" + fingerprint(content) + "/" + name;
    }

    /** {@return a file as text} */
    String text(String name) {
        return new String(Objects.requireNonNull(files.get(name)), UTF_8);
    }

    /** {@return addresses of everything that a page may load, in order} */
    List<String> addressesOfPages() {
        return files.keySet().stream()
                .filter(
                        name ->
                                name.startsWith("js/")
                                        || name.startsWith("icons/")
                                        || name.equals("all.css"))
                .map(this::address)
                .toList();
    }

    /** {@return the import map, the only inline script of a page} */
    String importMap() {
        return importMap;
    }

    /** {@return the source expression that lets the import map through the content policy} */
    String importMapHash() {
        return "'sha256-"
                + Base64.getEncoder().encodeToString(digest(importMap.getBytes(UTF_8)))
                + "'";
    }

    void addTo(RoutesConfig routes) {
        routes.get("/assets/{fingerprint}/<name>", this::serve);
    }

    private static final java.nio.charset.Charset UTF_8 = StandardCharsets.UTF_8;

    private void serve(Context http) {
        String name = http.pathParam("name");
        byte[] content = files.get(name);
        if (content == null || !fingerprint(content).equals(http.pathParam("fingerprint"))) {
            throw new NotFoundResponse();
        }
        String suffix = name.substring(name.lastIndexOf('.') + 1);
        http.contentType(TYPES.getOrDefault(suffix, "application/octet-stream"));
        http.header("Cache-Control", "public, max-age=31536000, immutable");
        http.result(content);
    }

    private byte[] joinedStyles() {
        return Stream.concat(
                        Stream.of("css/layers.css"),
                        files.keySet().stream()
                                .filter(name -> name.endsWith(".css"))
                                .filter(name -> !name.equals("css/layers.css")))
                .map(name -> new String(Objects.requireNonNull(files.get(name)), UTF_8))
                .collect(Collectors.joining("\n"))
                .getBytes(UTF_8);
    }

    private String writeImportMap() {
        return files.keySet().stream()
                .filter(name -> name.startsWith("js/"))
                .map(name -> "\"#%s\":\"%s\"".formatted(name, address(name)))
                .collect(Collectors.joining(",", "{\"imports\":{", "}}"));
    }

    private static Iterable<String> names() {
        CodeSource source = Assets.class.getProtectionDomain().getCodeSource();
        try {
            Path home = Path.of(Objects.requireNonNull(source.getLocation()).toURI());
            return Files.isDirectory(home) ? namesInFolder(home) : namesInJar(home);
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("The program's own files can't be listed", e);
        }
    }

    private static Iterable<String> namesInFolder(Path home) throws IOException {
        Path root = home.resolve(ROOT);
        try (Stream<Path> walk = Files.walk(root)) {
            return walk.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .toList();
        }
    }

    private static Iterable<String> namesInJar(Path home) throws IOException {
        try (JarFile jar = new JarFile(home.toFile())) {
            return jar.stream()
                    .map(entry -> entry.getName())
                    .filter(name -> name.startsWith(ROOT) && !name.endsWith("/"))
                    .map(name -> name.substring(ROOT.length()))
                    .toList();
        }
    }

    private static byte[] read(String name) {
        try (InputStream in = Assets.class.getResourceAsStream("/" + ROOT + name)) {
            return Objects.requireNonNull(in).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String fingerprint(byte[] content) {
        return HexFormat.of().formatHex(digest(content), 0, 6);
    }

    private static byte[] digest(byte[] content) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(content);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
