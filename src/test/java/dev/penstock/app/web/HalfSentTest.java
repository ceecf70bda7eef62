package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Requests that never end. */
class HalfSentTest {

    private static final int MANY = 300;

    @TempDir
    Path folder;

    @Test
    void ofHalfSentRequestsFewWaitAndTheOthersAreRefusedAtOnce() throws IOException {
        try (Served served = new Served(folder)) {
            URI base = URI.create(served.base);
            String head = "POST /api/balance HTTP/1.1\r\nHost: 127.0.0.1:" + base.getPort() + "\r\nOrigin: " + base
                    + "\r\nCookie: " + served.cookie + "\r\nContent-Length: 100\r\n\r\n{";
            List<Socket> sockets = new ArrayList<>();
            try {
                for (int i = 0; i < MANY; i++) {
                    Socket socket = new Socket(base.getHost(), base.getPort());
                    sockets.add(socket);
                    socket.getOutputStream().write(head.getBytes(StandardCharsets.US_ASCII));
                }
                assertThat(served.get("/api/files").statusCode()).isEqualTo(200);
                List<String> statuses = new ArrayList<>();
                for (Socket socket : sockets) {
                    socket.setSoTimeout(20_000);
                    String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
                    statuses.add(answer.substring(9, 12));
                }
                assertThat(statuses).containsOnly("400", "503").contains("400");
                // those that wait hold a thread each; a machine under load lets more come after the first are let go
                assertThat(Collections.frequency(statuses, "400")).isBetween(1, 4 * RequestBody.MOST_SENDING);
            } finally {
                for (Socket socket : sockets) {
                    socket.close();
                }
            }
            assertThat(served.defects).isEmpty();
        }
    }
}
