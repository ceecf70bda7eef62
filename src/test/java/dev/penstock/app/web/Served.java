package dev.penstock.app.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.penstock.fluids.FluidLibrary;
import dev.penstock.input.HomeFolder;
import dev.penstock.reports.text.Software;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;

/** A server over a copy of the demo's files, and a client that has been let in. */
final class Served implements AutoCloseable {

    static final ObjectMapper JSON = new ObjectMapper();

    final Path workspace;
    final LocalServer server;
    final String base;
    final String cookie;
    final List<Throwable> defects = new CopyOnWriteArrayList<>();
    final List<String> requests = new CopyOnWriteArrayList<>();
    private final HttpClient client = HttpClient.newHttpClient();

    Served(Path folder) throws IOException {
        this(folder, Duration.ofSeconds(120));
    }

    /** With another time within which each request is answered. */
    Served(Path folder, Duration patience) throws IOException {
        Path home = HomeFolder.find();
        workspace = Files.createDirectories(folder.resolve("cycles"));
        Files.createDirectories(workspace.resolve("vehicles"));
        Files.createDirectories(workspace.resolve("claims"));
        try (Stream<Path> files = Files.walk(home.resolve("cycles"), 2)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".toml")).toList()) {
                Path relative = home.resolve("cycles").relativize(file);
                if (relative.getNameCount() == 1 || relative.startsWith("vehicles") || relative.startsWith("claims")) {
                    Files.copy(file, workspace.resolve(relative.toString()));
                }
            }
        }
        server = LocalServer.start(new LocalServer.Settings(
                home,
                FluidLibrary.open(home),
                workspace,
                Software.of(home, "test"),
                0,
                patience,
                defects::add,
                requests::add));
        base = server.address().replaceAll("/\\?.*", "");
        HttpResponse<String> entry = send(HttpRequest.newBuilder(URI.create(server.address())));
        cookie = entry.headers().firstValue("Set-Cookie").orElse("").split(";")[0];
    }

    HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    HttpResponse<String> get(String path) {
        return send(HttpRequest.newBuilder(URI.create(base + path)).header("Cookie", cookie));
    }

    HttpResponse<String> post(String path, String body) {
        return send(HttpRequest.newBuilder(URI.create(base + path))
                .header("Cookie", cookie)
                .header("Origin", base)
                .POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    String text(String file) throws IOException {
        return Files.readString(workspace.resolve(file));
    }

    static JsonNode json(HttpResponse<String> response) {
        try {
            return JSON.readTree(response.body());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        server.close();
    }
}
