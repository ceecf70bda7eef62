package dev.penstock.reports.chart;

import static org.assertj.core.api.Assertions.assertThat;

import dev.penstock.errors.InvalidInput;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fonts are put into temporary files: where that fails it is said, and when the reason is gone it works again. */
class TemporaryFontsTest {

    @TempDir
    Path folder;

    /** What runs in a process of its own, whose folder for temporary files is not there at first. */
    static final class Drawing {

        private Drawing() {}

        public static void main(String[] arguments) throws Exception {
            System.setProperty("java.awt.headless", "true");
            try {
                ChartFont.width("text", 12);
                System.out.println("worked");
            } catch (InvalidInput e) {
                System.out.println("told " + e.getMessage());
            }
            Files.createDirectories(Path.of(System.getProperty("java.io.tmpdir")));
            System.out.println("then " + (ChartFont.width("text", 12) > 0));
        }
    }

    @Test
    void aFailureIsToldAndDoesNotLast() throws Exception {
        Path temporary = folder.resolve("temporary");
        Path out = folder.resolve("out.txt");
        Process process = new ProcessBuilder(
                        ProcessHandle.current().info().command().orElse("java"),
                        "-Djava.io.tmpdir=" + temporary,
                        "-cp",
                        classPath(),
                        Drawing.class.getName())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile())
                .start();
        assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(Files.readString(out))
                .contains("told java.io.tmpdir is " + temporary, "temporary files that can be written", "then true");
    }

    private static String classPath() {
        List<String> places = new ArrayList<>(List.of(System.getProperty("java.class.path")));
        for (ClassLoader loader = ChartFont.class.getClassLoader(); loader != null; loader = loader.getParent()) {
            if (loader instanceof URLClassLoader urls) {
                for (URL url : urls.getURLs()) {
                    places.add(Path.of(URI.create(url.toString())).toString());
                }
            }
        }
        return String.join(":", places);
    }
}
