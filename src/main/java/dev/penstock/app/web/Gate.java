package dev.penstock.app.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;

/**
 * Lets in one browser on this machine and nobody else. The printed address carries a random token, which becomes a cookie
 * that scripts cannot read; every request needs it, and must name this server as its host and as its origin. A page of
 * another site can therefore neither read nor send anything, even if its name is made to point at this machine.
 */
final class Gate {

    private static final int TOKEN_BYTES = 24;
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self';"
            + " style-src-attr 'unsafe-inline'; img-src 'self' blob: data:; connect-src 'self'; frame-src 'self';"
            + " form-action 'none'; base-uri 'none'; frame-ancestors 'none'";
    private static final String SHOWN_POLICY =
            "default-src 'none'; style-src 'unsafe-inline'; img-src data:; form-action 'none'; base-uri 'none';"
                    + " frame-ancestors 'self'";

    private final String token;

    Gate() {
        byte[] bytes = new byte[TOKEN_BYTES];
        new SecureRandom().nextBytes(bytes);
        token = HexFormat.of().formatHex(bytes);
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
            throw new Refusal(403, "this address does not name the workbench");
        }
        String origin = request.header("Origin");
        boolean reads =
                request.method().name().equals("GET") || request.method().name().equals("HEAD");
        if (origin == null ? !reads : !origin.equals("http://" + host)) {
            throw new Refusal(403, "requests of other pages are not served");
        }
        boolean entry = request.path().equals("/") && same(request.queryParam("token"));
        String site = request.header("Sec-Fetch-Site");
        if (!entry && site != null && !site.equals("same-origin") && !site.equals("none")) {
            throw new Refusal(403, "requests of other sites are not served");
        }
        if (!entry && !same(request.cookie(cookieName(request)))) {
            throw new Refusal(403, "open the address that penstock serve has printed, with its token");
        }
    }

    /** Turns the token of the printed address into a cookie. */
    void admit(Context request) {
        Cookie cookie = new Cookie(cookieName(request), token);
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

    private boolean same(String offered) {
        return offered != null
                && MessageDigest.isEqual(
                        offered.getBytes(StandardCharsets.UTF_8), token.getBytes(StandardCharsets.UTF_8));
    }

    /** Cookies do not tell ports apart, so the name does: two workbenches on one machine keep their own. */
    private static String cookieName(Context request) {
        return "penstock-" + request.req().getLocalPort();
    }
}
