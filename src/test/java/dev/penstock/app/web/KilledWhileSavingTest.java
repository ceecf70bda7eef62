package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import dev.penstock.input.HomeFolder;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A server process of its own that is killed in the middle of saving, as by the power button. */
class KilledWhileSavingTest {

    private static final int KILLS = 3;
    private static final int LETTERS = 200_000;

    @TempDir
    Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    @Test
    void theFileIsTheOldOrTheNewOneAndNeverHalf() throws Exception {
        Path workspace = Files.createDirectories(folder.resolve("cycles"));
        Path file = workspace.resolve("kept.toml");
        Random random = new Random(7);
        String text = Files.readString(HomeFolder.find().resolve("cycles/dunlin.toml"));
        Files.writeString(file, text);
        int saves = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process server = start(workspace);
            AtomicBoolean killed = new AtomicBoolean();
            try {
                String address = address(server);
                CountDownLatch saving = new CountDownLatch(1);
                Thread killer = new Thread(() -> {
                    await(saving);
                    pause(random.nextInt(60));
                    killed.set(true);
                    server.destroyForcibly();
                });
                killer.start();
                saves += saveUntilItDies(address, text, killed, saving);
                killer.join();
            } finally {
                server.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
            }
            String left = Files.readString(file);
            assertThat(left).startsWith(text.substring(0, 50));
            String tail = left.substring(text.length());
            if (!tail.isEmpty()) {
                assertThat(tail).hasSize(LETTERS + 2).startsWith("#").endsWith("\n");
                assertThat(tail.substring(1, LETTERS + 1).chars().distinct().count())
                        .isEqualTo(1);
            }
        }
        assertThat(saves).as("saves that were answered before the kills").isPositive();
    }

    /** Each save fills the file with another letter, so that a mixture of two would show. */
    private int saveUntilItDies(String address, String text, AtomicBoolean killed, CountDownLatch saving)
            throws Exception {
        String base = address.replaceAll("/\\?.*", "");
        HttpResponse<String> entry =
                client.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString());
        String cookie = entry.headers().firstValue("Set-Cookie").orElseThrow().split(";")[0];
        int saves = 0;
        String version = null;
        for (int i = 0; ; i++) {
            try {
                if (version == null) {
                    version = Served.json(client.send(
                                    HttpRequest.newBuilder(URI.create(base + "/api/file?name=kept.toml"))
                                            .header("Cookie", cookie)
                                            .build(),
                                    HttpResponse.BodyHandlers.ofString()))
                            .get("version")
                            .asText();
                }
                String filled =
                        text + "#" + String.valueOf((char) ('a' + i % 26)).repeat(LETTERS) + "\n";
                String body = Served.JSON
                        .createObjectNode()
                        .put("file", "kept.toml")
                        .put("text", filled)
                        .put("as", "kept.toml")
                        .put("version", version)
                        .put("whole", true)
                        .toString();
                HttpResponse<String> answer = client.send(
                        HttpRequest.newBuilder(URI.create(base + "/api/save"))
                                .header("Cookie", cookie)
                                .header("Origin", base)
                                .POST(HttpRequest.BodyPublishers.ofString(body))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
                JsonNode saved = Served.json(answer);
                assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
                version = saved.get("version").asText();
                saves++;
                saving.countDown();
            } catch (IOException broken) {
                assertThat(killed).as("the server broke off by itself").isTrue();
                return saves;
            }
        }
    }

    private static Process start(Path workspace) throws IOException {
        return new ProcessBuilder(List.of(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-Xmx256m",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        classPath(),
                        "dev.penstock.app.CommandLineProgram",
                        "serve",
                        "--workspace",
                        workspace.toString()))
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    /** The classes of this test run, whoever runs it. */
    private static String classPath() {
        List<String> places = new ArrayList<>(List.of(System.getProperty("java.class.path")));
        for (ClassLoader loader = LocalServer.class.getClassLoader(); loader != null; loader = loader.getParent()) {
            if (loader instanceof URLClassLoader urls) {
                for (URL url : urls.getURLs()) {
                    places.add(Path.of(URI.create(url.toString())).toString());
                }
            }
        }
        return String.join(File.pathSeparator, places);
    }

    private static String address(Process server) throws IOException {
        BufferedReader out = server.inputReader(StandardCharsets.UTF_8);
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            if (line.startsWith("open ")) {
                return line.substring("open ".length()).strip();
            }
        }
        throw new AssertionError("the server did not start");
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await(60, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void pause(int milliseconds) {
        try {
            Thread.sleep(milliseconds);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
