package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The server without a browser: who is let in, what is refused, what is kept. */
class LocalServerTest {

    private static Served served;

    @TempDir
    static Path folder;

    @BeforeAll
    static void serve() throws IOException {
        served = new Served(folder);
    }

    @AfterAll
    static void stop() {
        served.close();
    }

    private static String question(String file, String text, Map<String, String> changes, String... more) {
        ObjectNode node = Served.JSON.createObjectNode().put("file", file).put("text", text);
        ObjectNode map = node.putObject("changes");
        changes.forEach(map::put);
        for (int i = 0; i < more.length; i += 2) {
            node.put(more[i], more[i + 1]);
        }
        return node.toString();
    }

    @Test
    void everyRequestIsToldInALineWithoutItsToken() {
        served.get("/penstock.css");
        assertThat(served.get("/script/nothing.js").statusCode()).isEqualTo(404);
        assertThat(served.requests)
                .anyMatch(line -> line.matches("GET /penstock.css 200 \\d+ ms"))
                .anyMatch(line -> line.matches("GET /script/nothing.js 404 \\d+ ms"))
                .noneMatch(line -> line.contains("token"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/together", "/explore", "/studies", "/jacket", "/vehicle", "/claims"})
    void everyPageIsServedWithAStrictPolicy(String path) {
        HttpResponse<String> page = served.get(path);
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body()).contains("<main").doesNotContain("<script>").doesNotContain("style=");
        String policy = page.headers().firstValue("Content-Security-Policy").orElse("");
        assertThat(policy).contains("default-src 'none'").contains("script-src 'self';");
    }

    @Test
    void anExampleIsBalancedBeforeAnyoneAsks() {
        long asked = served.server.balances();
        assertThat(served.server.warmUp().join()).isTrue();
        assertThat(served.server.balances()).isEqualTo(asked);
    }

    @Test
    void theCookieIsOutOfReachOfScriptsAndOtherSites() {
        HttpResponse<String> entry = served.send(HttpRequest.newBuilder(URI.create(served.server.address())));
        assertThat(entry.statusCode()).isEqualTo(302);
        assertThat(entry.headers().firstValue("Set-Cookie").orElse(""))
                .contains("HttpOnly")
                .contains("SameSite=Strict");
    }

    @Test
    void eachBrowserIsNamedByTheServerAndNobodyCanInventAName() {
        HttpResponse<String> another = served.send(HttpRequest.newBuilder(URI.create(served.server.address())));
        String cookie = another.headers().firstValue("Set-Cookie").orElse("").split(";")[0];
        assertThat(cookie).isNotEqualTo(served.cookie);
        assertThat(files(cookie)).isEqualTo(200);
        String invented = cookie.replaceFirst("=[0-9a-f]+", "=000000000000000000");
        assertThat(invented).isNotEqualTo(cookie);
        assertThat(files(invented)).isEqualTo(403);
        HttpResponse<String> again = served.send(
                HttpRequest.newBuilder(URI.create(served.server.address())).header("Cookie", cookie));
        assertThat(again.statusCode()).isEqualTo(302);
        assertThat(again.headers().firstValue("Set-Cookie"))
                .as("who has a name keeps it")
                .isEmpty();
    }

    private static int files(String cookie) {
        return served.send(HttpRequest.newBuilder(URI.create(served.base + "/api/files"))
                        .header("Cookie", cookie))
                .statusCode();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/?token=0123", "/api/files", "/script/engine.js", "/penstock.css", "/nothing"})
    void nothingIsServedWithoutTheToken(String path) {
        assertThat(served.send(HttpRequest.newBuilder(URI.create(served.base + path)))
                        .statusCode())
                .isEqualTo(403);
    }

    @ParameterizedTest
    @ValueSource(strings = {"http://example.org", "null", "http://127.0.0.1:1", "https://localhost"})
    void requestsOfOtherPagesAreRefusedEvenWithTheToken(String origin) {
        HttpResponse<String> answer = served.send(HttpRequest.newBuilder(URI.create(served.base + "/api/files"))
                .header("Cookie", served.cookie)
                .header("Origin", origin));
        assertThat(answer.statusCode()).isEqualTo(403);
    }

    @Test
    void aPostWithoutOriginIsRefused() {
        HttpResponse<String> answer = served.send(HttpRequest.newBuilder(URI.create(served.base + "/api/inputs"))
                .header("Cookie", served.cookie)
                .POST(HttpRequest.BodyPublishers.ofString("{}")));
        assertThat(answer.statusCode()).isEqualTo(403);
    }

    @Test
    void aNameThatWasMadeToPointHereIsRefused() throws IOException {
        URI uri = URI.create(served.base);
        try (Socket socket = new Socket(uri.getHost(), uri.getPort())) {
            String request = "GET /api/files HTTP/1.1\r\nHost: evil.example:" + uri.getPort() + "\r\nCookie: "
                    + served.cookie + "\r\nConnection: close\r\n\r\n";
            socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer).startsWith("HTTP/1.1 403");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../secret.toml",
                "/etc/passwd",
                "vehicles/../../secret.toml",
                "..%2fsecret.toml",
                ".x.toml",
                "a.txt"
            })
    void noNameLeadsOutOfTheWorkspace(String name) throws IOException {
        Files.writeString(folder.resolve("secret.toml"), "secret = true\n");
        HttpResponse<String> read =
                served.get("/api/file?name=" + java.net.URLEncoder.encode(name, StandardCharsets.UTF_8));
        assertThat(read.statusCode()).isEqualTo(403);
        HttpResponse<String> written = served.post(
                "/api/save", question("heron.toml", served.text("heron.toml"), Map.of(), "as", name, "version", ""));
        assertThat(written.statusCode()).isEqualTo(403);
        assertThat(folder.resolve("secret.toml")).hasContent("secret = true");
    }

    @Test
    void aLinkOutOfTheWorkspaceIsNotFollowed() throws IOException {
        Path outside = Files.writeString(folder.resolve("outside.toml"), "secret = true\n");
        Path link = Files.createSymbolicLink(served.workspace.resolve("link.toml"), outside);
        try {
            assertThat(served.get("/api/file?name=link.toml").statusCode()).isEqualTo(403);
        } finally {
            Files.delete(link);
        }
    }

    @Test
    void aVehicleCannotNameAnEngineOutsideTheWorkspace() throws IOException {
        Files.copy(served.workspace.resolve("heron.toml"), folder.resolve("elsewhere.toml"));
        String text = served.text("vehicles/skerry.toml")
                .replaceAll("engine = \"\\.\\./[a-z]+\\.toml\"", "engine = \"../../elsewhere.toml\"");
        Path vehicle = Files.writeString(served.workspace.resolve("vehicles/astray.toml"), text);
        try {
            HttpResponse<String> answer =
                    served.post("/api/vehicle", "{\"file\":\"vehicles/astray.toml\",\"changes\":{}}");
            assertThat(answer.statusCode()).isEqualTo(403);
        } finally {
            Files.delete(vehicle);
        }
    }

    @Test
    void tooLargeARequestIsRefused() {
        HttpResponse<String> answer = served.post("/api/inputs", question("a.toml", "#".repeat(600_000), Map.of()));
        assertThat(answer.statusCode()).isEqualTo(413);
    }

    @Test
    void aFolderOrALinkToOneIsNoWayOut() throws IOException {
        Path outside = Files.createDirectories(folder.resolve("outside-folder"));
        Files.writeString(outside.resolve("x.toml"), "secret = true\n");
        Path link = served.workspace.resolve("studies");
        Files.createSymbolicLink(link, outside);
        try {
            assertThat(served.get("/api/study?name=studies/x.toml").statusCode())
                    .isEqualTo(403);
            String study = "{\"as\":\"studies/new.toml\",\"name\":\"n\",\"study\":\"compare\",\"version\":\"\","
                    + "\"cases\":[\"dunlin.toml\"]}";
            assertThat(served.post("/api/study", study).statusCode()).isEqualTo(403);
            assertThat(outside.resolve("new.toml")).doesNotExist();
        } finally {
            Files.delete(link);
        }
    }

    @Test
    void aStudyCannotNameAFileOutsideTheWorkspace() throws IOException {
        Path studies = Files.createDirectories(served.workspace.resolve("studies"));
        Files.copy(served.workspace.resolve("dunlin.toml"), folder.resolve("beyond.toml"));
        Path file = Files.writeString(
                studies.resolve("beyond.toml"), "name = \"n\"\nstudy = \"compare\"\ncases = [\"../../beyond.toml\"]\n");
        assertThat(served.get("/api/study?name=studies/beyond.toml").statusCode())
                .isEqualTo(403);
        Files.delete(file);
        String study = "{\"as\":\"studies/new.toml\",\"name\":\"n\",\"study\":\"compare\",\"version\":\"\","
                + "\"cases\":[\"../beyond.toml\"]}";
        assertThat(served.post("/api/study", study).statusCode()).isEqualTo(403);
        Files.delete(studies);
    }

    @Test
    void aSweepThatIsTooLongIsRefusedAndAnOverlongOneIsStopped() {
        assertThat(served.post(
                                "/api/sweep",
                                "{\"file\":\"dunlin.toml\",\"vary\":[\"engine.chamber_pressure=0.9..1.1MPa:900\"],"
                                        + "\"samples\":100}")
                        .statusCode())
                .isEqualTo(422);
        Jobs<String> jobs = new Jobs<>("test", java.time.Duration.ofMillis(50));
        String id = jobs.start(1, job -> {
            while (!job.stopped()) {
                Thread.onSpinWait();
            }
            return "kept";
        });
        while (jobs.job(id).running()) {
            Thread.onSpinWait();
        }
        assertThat(jobs.result(id)).isEqualTo("kept");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "3", "\"x\"", "null"})
    void whatIsNoJsonObjectIsRefused(String body) {
        assertThat(served.post("/api/inputs", body).statusCode()).isEqualTo(400);
    }

    @Test
    void aWrongFileIsAnsweredWithEveryProblem() {
        HttpResponse<String> answer =
                served.post("/api/inputs", question("bad.toml", "name = \"<b>x\"\ncycle = \"perpetual\"\n", Map.of()));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(Served.json(answer).get("problems").get(0).asText()).contains("bad.toml");
    }

    @Test
    void aChangeInAnotherUnitIsBalancedAndKeptOnSaving() throws IOException {
        String text = served.text("dunlin.toml");
        Map<String, String> changes = Map.of("engine.chamber_pressure", "152 psi");
        JsonNode shown = Served.json(served.post("/api/balance", question("dunlin.toml", text, changes)));
        HttpResponse<String> saved =
                served.post("/api/save", question("dunlin.toml", text, changes, "as", "saved.toml", "version", ""));
        assertThat(saved.statusCode()).isEqualTo(200);
        String again = served.text("saved.toml");
        assertThat(again).contains("chamber_pressure = \"152 psi\"");
        JsonNode reopened = Served.json(served.post("/api/balance", question("saved.toml", again, Map.of())));
        assertThat(reopened.get("measures").size())
                .isEqualTo(shown.get("measures").size())
                .isGreaterThan(5);
        for (int i = 0; i < shown.get("measures").size(); i++) {
            JsonNode before = shown.get("measures").get(i);
            JsonNode after = reopened.get("measures").get(i);
            assertThat(after.get("text")).isEqualTo(before.get("text"));
            // A warm study starts from another guess than a cold one, which moves the last bits of the solution.
            double value = before.get("value").asDouble();
            assertThat(after.get("value").asDouble()).isCloseTo(value, within(1e-12 * Math.abs(value)));
        }
    }

    @Test
    void twoPeopleWhoSaveTheSameFileBothKeepTheirWork() throws IOException {
        String text = served.text("dunlin.toml");
        Files.writeString(served.workspace.resolve("shared.toml"), text);
        String version = Served.json(served.get("/api/file?name=shared.toml"))
                .get("version")
                .asText();
        String first = question(
                "shared.toml",
                text,
                Map.of("propellants.mixture_ratio", "1.7"),
                "as",
                "shared.toml",
                "version",
                version);
        String second = question(
                "shared.toml",
                text,
                Map.of("propellants.mixture_ratio", "1.8"),
                "as",
                "shared.toml",
                "version",
                version);
        assertThat(served.post("/api/save", first).statusCode()).isEqualTo(200);
        HttpResponse<String> late = served.post("/api/save", second);
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(Served.json(late).get("theirs").asText()).contains("mixture_ratio = 1.7");
        assertThat(Served.json(late).get("yours").asText()).contains("mixture_ratio = 1.8");
        assertThat(served.text("shared.toml")).contains("mixture_ratio = 1.7");
    }

    @Test
    void aReportIsAPageThatCanBeKept() throws IOException {
        JsonNode made =
                Served.json(served.post("/api/report", question("dunlin.toml", served.text("dunlin.toml"), Map.of())));
        HttpResponse<String> page = served.get("/shown/" + made.get("id").asText() + "?download=1");
        assertThat(page.headers().firstValue("Content-Disposition").orElse("")).contains("Dunlin.html");
        assertThat(page.body())
                .contains("<h1>Dunlin</h1>", "id=\"pressurization\"")
                .doesNotContain("<script");
    }

    @Test
    void whatIsBalancedOnceIsDrawnTracedAndUndoneWithoutBalancingAgain() throws IOException {
        String text = served.text("dunlin.toml");
        String changed = question("dunlin.toml", text, Map.of("engine.chamber_pressure", "1.03 MPa"));
        String before = question("dunlin.toml", text, Map.of());
        served.post("/api/balance", before);
        long balances = served.server.balances();
        HttpResponse<String> figures = served.post("/api/balance", changed);
        assertThat(served.server.balances()).isEqualTo(balances + 1);
        assertThat(figures.body()).doesNotContain("<svg");
        ObjectNode inView = (ObjectNode) Served.JSON.readTree(changed);
        inView.put("flow", true).putArray("charts").add(1);
        JsonNode together = Served.json(served.post("/api/balance", inView.toString()));
        assertThat(together.at("/flow/svg").asText()).startsWith("<svg");
        assertThat(together.at("/charts/places")).hasSize(1);
        assertThat(together.at("/charts/figures/0/svg").asText()).startsWith("<svg");
        assertThat(served.post("/api/flow", changed).body()).contains("<svg");
        assertThat(served.post("/api/charts", changed).body()).contains("<svg");
        served.post("/api/cooling", changed);
        String why = question(
                "dunlin.toml", text, Map.of("engine.chamber_pressure", "1.03 MPa"), "path", "engine.isp_vacuum_s");
        assertThat(served.post("/api/why", why).statusCode()).isEqualTo(200);
        assertThat(served.post("/api/balance", before).statusCode()).isEqualTo(200);
        assertThat(served.server.balances()).isEqualTo(balances + 1);
    }

    @Test
    void aNumberOpensItsTrail() throws IOException {
        JsonNode step = Served.json(served.post(
                "/api/why",
                question("dunlin.toml", served.text("dunlin.toml"), Map.of(), "path", "engine.isp_vacuum_s")));
        assertThat(step.get("model").get("equation").asText()).contains("Isp");
        assertThat(step.get("inputs").size()).isPositive();
    }

    @Test
    void aSweepReportsItsProgressAndItsTable() throws InterruptedException {
        JsonNode started = Served.json(served.post(
                "/api/sweep", "{\"file\":\"dunlin.toml\",\"vary\":[\"engine.chamber_pressure=0.9..1.1MPa:3\"]}"));
        String path = "/api/sweep/" + started.get("id").asText();
        JsonNode state = Served.json(served.get(path));
        for (int i = 0; i < 600 && state.get("running").asBoolean(); i++) {
            Thread.sleep(100);
            state = Served.json(served.get(path));
        }
        assertThat(state.get("done").asInt()).isEqualTo(3);
        assertThat(served.get(path + "/table.csv").body().lines().count()).isEqualTo(4);
        assertThat(Served.json(served.get(path + "/charts")).get("figures").size())
                .isPositive();
    }
}
