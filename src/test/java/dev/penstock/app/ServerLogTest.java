package dev.penstock.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.app.console.ServerLog;
import dev.penstock.errors.InvalidInput;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ServerLogTest {

    @TempDir
    Path folder;

    private final PrintWriter err = new PrintWriter(new StringWriter());

    @Test
    void linesAndTracesAreAddedWithTheirTime() throws Exception {
        Path file = Files.writeString(folder.resolve("log.txt"), "before\n");
        try (ServerLog log = ServerLog.open(file, err)) {
            log.line("GET /a\nb\u001b 200 3 ms");
            log.defect(new StackOverflowError("on purpose"));
        }
        assertThat(Files.readAllLines(file))
                .startsWith("before")
                .anyMatch(line -> line.matches("\\d{4}-\\d\\d-\\d\\dT\\S+Z GET /a\\?b\\? 200 3 ms"))
                .anyMatch(line -> line.contains("Z defect java.lang.StackOverflowError: on purpose"))
                .anyMatch(line -> line.contains("at dev.penstock.app.ServerLogTest"));
    }

    @Test
    void aFileThatCannotBeWrittenIsNamed() {
        assertThatThrownBy(() -> ServerLog.open(folder.resolve("no/log.txt"), err))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("--log is " + folder.resolve("no/log.txt"));
    }
}
