package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How long a connection may be silent, on either side. The waits are longer than what a request has here. */
class LoopbackConnectorTest {

    private static final int LONG = 400_000;
    private static final Duration PATIENCE = Duration.ofSeconds(2);
    private static final long SILENCE = PATIENCE.toMillis() * 3 / 2;

    private Javalin server;

    @BeforeEach
    void start() {
        server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            config.startup.startupWatcherEnabled = false;
            config.jetty.addConnector((jetty, http) -> LoopbackConnector.of(jetty, http, 0, PATIENCE));
            config.routes.get("/halting", LoopbackConnectorTest::halting);
            config.routes.get("/large", request -> request.result(new byte[100 * LONG]));
            config.routes.post(
                    "/count",
                    request -> request.result(
                            Integer.toString(LoopbackConnector.read(request.req(), InputStream::readAllBytes).length)));
        });
        server.start();
    }

    @AfterEach
    void stop() {
        server.stop();
    }

    /** Nothing is written for longer than a request may be silent, and then the whole; in the middle of it the same again. */
    private static void halting(Context request) throws IOException {
        OutputStream out = request.res().getOutputStream();
        halt();
        out.write(new byte[LONG / 2]);
        out.flush();
        halt();
        out.write(new byte[LONG / 2]);
    }

    private static void halt() {
        try {
            Thread.sleep(SILENCE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Socket begun(String request, int buffer) throws IOException {
        Socket socket = new Socket();
        if (buffer > 0) {
            socket.setReceiveBufferSize(buffer);
        }
        socket.connect(new InetSocketAddress(LoopbackConnector.HOST, server.port()));
        socket.setSoTimeout(60_000);
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private static String get(String path) {
        return "GET " + path + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n";
    }

    /** Both at once: the one halts while the other is not taken. */
    @Test
    void answersThatHaltLongerThanARequestMayAndAnswersTakenSlowlyArriveWhole() throws IOException {
        try (Socket halting = begun(get("/halting"), 0);
                Socket slow = begun(get("/large"), 8192)) {
            InputStream in = slow.getInputStream();
            int first = in.readNBytes(1000).length;
            halt();
            assertThat(first + in.readAllBytes().length).isGreaterThan(100 * LONG);
            String answer = new String(halting.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            assertThat(answer.length() - answer.indexOf("\r\n\r\n")).isEqualTo(LONG + 4);
        }
    }

    @Test
    void aRequestThatIsNeverSentWholeIsLetGo() throws IOException {
        String head = "POST /count HTTP/1.1\r\nHost: localhost\r\nContent-Length: 100\r\n";
        try (Socket body = begun(head + "\r\n{", 0);
                Socket headless = begun(head, 0);
                Socket second = begun(head.replace("100", "3") + "\r\nabc" + head, 0)) {
            long begun = System.nanoTime();
            body.getInputStream().readAllBytes();
            headless.getInputStream().readAllBytes();
            second.getInputStream().readAllBytes();
            // the patience, and what a machine under load needs on top; an answer would be waited for much longer
            assertThat(Duration.ofNanos(System.nanoTime() - begun)).isLessThan(Duration.ofSeconds(30));
        }
    }

    @Test
    void aServerHasThePatienceThatIsStated() {
        ServerConnector usual = LoopbackConnector.of(new Server(), new HttpConfiguration(), 0);
        assertThat(usual.getIdleTimeout()).isEqualTo(LoopbackConnector.REQUEST_PATIENCE.toMillis());
    }

    @Test
    void aWholeRequestIsReadAndItsConnectionServesTheNext() throws IOException {
        String post = "POST /count HTTP/1.1\r\nHost: localhost\r\nContent-Length: 3\r\n";
        try (Socket socket = begun(post + "\r\nabc" + post + "Connection: close\r\n\r\nabc", 0)) {
            String answers = new String(socket.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
            assertThat(answers.split("\r\n\r\n3", -1)).hasSize(3);
        }
    }
}
