package dev.penstock.app.study;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.penstock.errors.InvalidInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Spark's folder serves only if it holds the program that runs: by content, whatever the dates. */
class SparkProgramsTest {

    private static final Map<String, String> PROGRAM = Map.of(
            "dev/penstock/study/Rows.class", "rows",
            "dev/penstock/cycles/Cycle.class", "cycle",
            "dev/penstock/app/Command.class", "command");

    @TempDir
    private Path folder;

    private static void archive(Path file, Map<String, String> entries) throws IOException {
        Files.createDirectories(file.getParent());
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, String> entry : entries.entrySet()) {
                zip.putNextEntry(new ZipEntry(entry.getKey()));
                zip.write(entry.getValue().getBytes());
                zip.closeEntry();
            }
        }
    }

    private Path classes() throws IOException {
        Path classes = folder.resolve("classes");
        for (Map.Entry<String, String> entry : PROGRAM.entrySet()) {
            Path file = classes.resolve(entry.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, entry.getValue());
        }
        return classes;
    }

    private Path spark(Map<String, String> changes) throws IOException {
        Map<String, String> entries = new LinkedHashMap<>(PROGRAM);
        entries.put("dev/penstock/spark/Driver.class", "driver");
        entries.putAll(changes);
        Path spark = folder.resolve("spark");
        archive(spark.resolve("penstock-0.1.0.jar"), entries);
        return spark;
    }

    @Test
    void theSameProgramServesAsFolderAndAsArchive() throws IOException {
        Path spark = spark(Map.of("dev/penstock/app/Command.class", "another command"));
        Path jar = folder.resolve("program.jar");
        archive(jar, PROGRAM);
        Path classes = classes();
        assertThatCode(() -> SparkPrograms.require(spark, classes)).doesNotThrowAnyException();
        assertThatCode(() -> SparkPrograms.require(spark, jar)).doesNotThrowAnyException();
    }

    @Test
    void anotherProgramIsRefusedThoughItIsNewer() throws IOException {
        Path classes = classes();
        Path spark = spark(Map.of("dev/penstock/cycles/Cycle.class", "older cycle"));
        assertThatThrownBy(() -> SparkPrograms.require(spark, classes))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("1 of 2 files differ")
                .hasMessageContaining("mvn -Pspark");
    }

    @Test
    void aFolderWithoutPenstockIsRefused() throws IOException {
        Path classes = classes();
        Path spark = Files.createDirectories(folder.resolve("spark"));
        assertThatThrownBy(() -> SparkPrograms.require(spark, classes))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("there is no Penstock in it");
    }
}
