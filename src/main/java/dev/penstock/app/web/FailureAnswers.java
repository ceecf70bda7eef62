package dev.penstock.app.web;

import dev.penstock.errors.InvalidInput;
import dev.penstock.errors.PenstockException;
import dev.penstock.reports.text.JsonText;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What the local page answers when a request fails: always a status and a sentence, whatever went wrong. */
final class FailureAnswers {

    private static final Map<String, Object> DEFECT =
            Map.of("problems", List.of("this is a defect of Penstock; the terminal shows its trace"));

    private FailureAnswers() {}

    /**
     * @param config server to be
     * @param defects told of failures that should not happen
     */
    static void addTo(JavalinConfig config, Consumer<Throwable> defects) {
        RoutesConfig routes = config.routes;
        config.router.javaLangErrorHandler((response, error) -> broken(response, defects, error));
        routes.exception(Refusal.class, (refusal, request) -> {
            Map<String, Object> map = new LinkedHashMap<>(refusal.details());
            map.put("problems", List.of(refusal.getMessage()));
            LocalServer.json(request.status(refusal.status()), map);
        });
        routes.exception(
                InvalidInput.class,
                (e, request) -> LocalServer.json(
                        request.status(422),
                        Map.of(
                                "problems",
                                e.problems().stream()
                                        .map(InvalidInput.Problem::sentence)
                                        .toList(),
                                "keys",
                                e.problems().stream()
                                        .map(InvalidInput.Problem::key)
                                        .toList())));
        routes.exception(
                PenstockException.class,
                (e, request) -> LocalServer.json(request.status(422), Map.of("problems", List.of(e.getMessage()))));
        routes.exception(Exception.class, (e, request) -> {
            defects.accept(e);
            LocalServer.json(request.status(500), DEFECT);
        });
        routes.error(404, request -> {
            if (!LocalServer.JSON.equals(request.res().getContentType())) {
                request.contentType("text/plain;charset=utf-8").result("there is nothing at this address");
            }
        });
    }

    /** An answer for what no code expects, such as a stack or memory used up: never an empty answer. */
    private static void broken(HttpServletResponse response, Consumer<Throwable> defects, Throwable failure) {
        defects.accept(failure);
        if (response.isCommitted()) {
            return;
        }
        response.resetBuffer();
        response.setStatus(500);
        response.setContentType(LocalServer.JSON);
        try {
            response.getOutputStream().write(JsonText.of(DEFECT).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            defects.accept(e);
        }
    }
}
