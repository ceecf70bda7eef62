package dev.penstock.app.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.Set;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Lets in one browser on this machine and nobody else. The printed address carries a random token, for which a browser gets a
 * cookie of its own that scripts cannot read; every request needs it, and must name this server as its host and as its origin. A page of
 * another site can therefore neither read nor send anything, even if its name is made to point at this machine.
 */
final class Gate {

    private static final int TOKEN_BYTES = 24;
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self';"
            + " style-src-attr 'unsafe-inline'; img-src 'self' blob: data:; font-src data:; connect-src 'self'; frame-src 'self';"
            + " form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
    private static final String SHOWN_POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; form-action 'none';"
                    + " base-uri 'none'; frame-ancestors 'self'";

    private static final int CLIENT_BYTES = 9;
    private static final String CLIENT = "penstock-client";
    private static final String SEAL = "HmacSHA256";

    private final String token;
    private final SecretKeySpec key;

    Gate() {
        token = random(TOKEN_BYTES);
        key = new SecretKeySpec(random(TOKEN_BYTES).getBytes(StandardCharsets.US_ASCII), SEAL);
    }

    private static String random(int length) {
        byte[] bytes = new byte[length];
        new SecureRandom().nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    String token() {
        return token;
    }

    /**
     * Refuses a request that does not come from this server's own pages.
     *
     * @param request request
     * @throws Refusal with status 403
     */
    void check(Context request) {
        headers(request);
        String port = Integer.toString(request.req().getLocalPort());
        Set<String> hosts = Set.of("127.0.0.1:" + port, "localhost:" + port, "[::1]:" + port);
        String host = request.header("Host");
        if (host == null || !hosts.contains(host)) {
            throw new Refusal(403, "this address does not name this page");
        }
        String origin = request.header("Origin");
        boolean reads =
                request.method().name().equals("GET") || request.method().name().equals("HEAD");
        if (origin == null ? !reads : !origin.equals("http://" + host)) {
            throw new Refusal(403, "requests of other pages are not served");
        }
        boolean entry = request.path().equals("/") && same(request.queryParam("token"), token);
        String site = request.header("Sec-Fetch-Site");
        if (!entry && site != null && !site.equals("same-origin") && !site.equals("none")) {
            throw new Refusal(403, "requests of other sites are not served");
        }
        Optional<String> client = known(request.cookie(cookieName(request)));
        if (!entry && client.isEmpty()) {
            throw new Refusal(403, "open the address that penstock serve has printed, with its token");
        }
        client.ifPresent(name -> request.attribute(CLIENT, name));
    }

    /** @return the browser that sends a request which was let in */
    static String client(Context request) {
        String client = request.attribute(CLIENT);
        if (client == null) {
            throw new IllegalStateException("asked by nobody who was let in");
        }
        return client;
    }

    /** Turns the token of the printed address into a cookie, of its own for each browser; one that has one keeps it. */
    void admit(Context request) {
        if (request.attribute(CLIENT) != null) {
            return;
        }
        String client = random(CLIENT_BYTES);
        Cookie cookie = new Cookie(cookieName(request), client + "." + seal(client));
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        request.cookie(cookie);
    }

    /** Rules for a finished report: styles of its own, no scripts, shown in a frame of this server only. */
    static void reportHeaders(Context request) {
        request.header("Content-Security-Policy", SHOWN_POLICY);
        request.header("X-Frame-Options", "SAMEORIGIN");
    }

    private static void headers(Context request) {
        request.header("Content-Security-Policy", POLICY);
        request.header("X-Frame-Options", "DENY");
        request.header("X-Content-Type-Options", "nosniff");
        request.header("Referrer-Policy", "no-referrer");
        request.header("Cross-Origin-Resource-Policy", "same-origin");
        request.header("Cross-Origin-Opener-Policy", "same-origin");
        request.header("Cache-Control", "no-store");
    }

    /** @return the client that a cookie names; empty if this server has not made it */
    private Optional<String> known(String cookie) {
        String[] parts = cookie == null ? new String[0] : cookie.split("\\.", -1);
        return parts.length == 2 && same(parts[1], seal(parts[0])) ? Optional.of(parts[0]) : Optional.empty();
    }

    /** What only this server can write below a name, so that no client can invent one. */
    private String seal(String client) {
        try {
            Mac mac = Mac.getInstance(SEAL);
            mac.init(key);
            return HexFormat.of().formatHex(mac.doFinal(client.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException(e);
        }
    }

    private static boolean same(String offered, String wanted) {
        return offered != null
                && MessageDigest.isEqual(
                        offered.getBytes(StandardCharsets.UTF_8), wanted.getBytes(StandardCharsets.UTF_8));
    }

    /** Cookies do not tell ports apart, so the name does: two servers on one machine keep their own. */
    private static String cookieName(Context request) {
        return "penstock-" + request.req().getLocalPort();
    }
}
