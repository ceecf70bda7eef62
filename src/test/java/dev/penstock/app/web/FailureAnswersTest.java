package dev.penstock.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.errors.NotConverged;
import io.javalin.Javalin;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;

/** Failures of a handler as they reach a client. */
class FailureAnswersTest {

    private final List<Throwable> defects = new CopyOnWriteArrayList<>();

    @Test
    void aStackUsedUpIsAnsweredAndTold() throws Exception {
        HttpResponse<String> answer = answer(new StackOverflowError());
        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith("application/json");
        assertThat(answer.body()).contains("problems", "this is a defect of Penstock");
        assertThat(defects).hasSize(1).first().isInstanceOf(StackOverflowError.class);
    }

    @Test
    void aClassThatCannotBeMadeReadyIsAnsweredAndTold() throws Exception {
        HttpResponse<String> answer = answer(new ExceptionInInitializerError("on purpose"));
        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.body()).contains("this is a defect of Penstock");
        assertThat(defects).hasSize(1);
    }

    @Test
    void aDefectIsAnsweredTheSameWay() throws Exception {
        HttpResponse<String> answer = answer(new IllegalStateException("on purpose"));
        assertThat(answer.statusCode()).isEqualTo(500);
        assertThat(answer.body()).contains("this is a defect of Penstock");
        assertThat(defects).hasSize(1);
    }

    @Test
    void aFailureOfItsOwnKindIsNoDefect() throws Exception {
        HttpResponse<String> answer = answer(new NotConverged("cycle", 3, 1, "bounds"));
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(defects).isEmpty();
    }

    private HttpResponse<String> answer(Throwable failure) throws Exception {
        Javalin server = Javalin.create(config -> {
            config.startup.showJavalinBanner = false;
            FailureAnswers.addTo(config, defects::add);
            config.routes.get("/", request -> {
                if (failure instanceof Error error) {
                    throw error;
                }
                throw (Exception) failure;
            });
        });
        try {
            server.start("127.0.0.1", 0);
            return HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + server.port() + "/"))
                                    .build(),
                            HttpResponse.BodyHandlers.ofString());
        } finally {
            server.stop();
        }
    }
}
