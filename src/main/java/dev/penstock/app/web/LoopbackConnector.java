package dev.penstock.app.web;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import org.eclipse.jetty.ee10.servlet.ServletContextRequest;
import org.eclipse.jetty.io.EndPoint;
import org.eclipse.jetty.server.ConnectionMetaData;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;

/**
 * Connections on the loopback interface only, and how long one may be silent. Who begins a request and does not send the rest of
 * it, head or body, loses the connection soon. An answer may take as long as it needs, and a browser may be slow to take it.
 */
final class LoopbackConnector {

    static final String HOST = "127.0.0.1";
    /** How long a request may keep the server waiting for its next bytes, and for all of them. */
    static final Duration REQUEST_PATIENCE = Duration.ofSeconds(5);
    /** How long a browser may take nothing of an answer that is ready. */
    static final Duration ANSWER_PATIENCE = Duration.ofMinutes(5);

    /** Reads a body. */
    @FunctionalInterface
    interface Reading<T> {

        /**
         * @param in bytes of the body
         * @return what was read
         * @throws IOException if the request breaks off, or is silent for too long
         */
        T from(InputStream in) throws IOException;
    }

    private LoopbackConnector() {}

    /**
     * @param server server
     * @param http how requests are read
     * @param port port; 0 for any that is free
     * @return where the server listens; between requests it waits for a head with {@link #REQUEST_PATIENCE}, from the end of the
     *     head to the end of the answer with {@link #ANSWER_PATIENCE}
     */
    static ServerConnector of(Server server, HttpConfiguration http, int port) {
        return of(server, http, port, REQUEST_PATIENCE);
    }

    /** The same with another patience with requests. */
    static ServerConnector of(Server server, HttpConfiguration http, int port, Duration patience) {
        http.setIdleTimeout(ANSWER_PATIENCE.toMillis());
        ServerConnector connector = new ServerConnector(server, new HttpConnectionFactory(http));
        connector.setHost(HOST);
        connector.setPort(port);
        connector.setIdleTimeout(patience.toMillis());
        return connector;
    }

    /**
     * Reads the body of a request with its connector's patience for its next bytes.
     *
     * @param request request that came over such a connector
     * @param reading reads it
     * @param <T> what is read
     * @return what was read
     * @throws IOException if the request breaks off, or is silent for too long
     */
    static <T> T read(HttpServletRequest request, Reading<T> reading) throws IOException {
        ConnectionMetaData connection =
                ServletContextRequest.getServletContextRequest(request).getConnectionMetaData();
        EndPoint end = connection.getConnection().getEndPoint();
        end.setIdleTimeout(connection.getConnector().getIdleTimeout());
        try {
            return reading.from(request.getInputStream());
        } finally {
            end.setIdleTimeout(ANSWER_PATIENCE.toMillis());
        }
    }
}
