package dev.penstock.spark;

import dev.penstock.fluids.FluidLibrary;
import dev.penstock.study.EngineRuns;
import dev.penstock.study.sample.SamplePlan;
import dev.penstock.study.sample.SampleStudy;
import dev.penstock.study.store.BatchFolder;
import java.io.IOException;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * A study as the texts of its files, which travel with every task.
 *
 * @param texts text by name
 */
record StudyFiles(TreeMap<String, String> texts) implements Serializable {

    /** What this process has opened: models and study once, however many tasks it works at. */
    private static final Map<StudyFiles, SamplePlan> OPENED = new ConcurrentHashMap<>();

    /** All files of a study's folder but its rows. */
    static StudyFiles of(Path folder) {
        TreeMap<String, String> texts = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                if (!name.startsWith(".") && !name.startsWith("batch=")) {
                    texts.put(name, Files.readString(file));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new StudyFiles(texts);
    }

    /** The study with the models of a home folder, opened when this process first asks. */
    SamplePlan open(WorkerHome home) {
        return OPENED.computeIfAbsent(this, files -> files.unpacked(home.find()));
    }

    private SamplePlan unpacked(Path home) {
        try {
            Path folder = Files.createTempDirectory("penstock-study");
            for (Map.Entry<String, String> text : texts.entrySet()) {
                Path file = folder.resolve(text.getKey());
                Files.createDirectories(file.getParent());
                Files.writeString(file, text.getValue());
            }
            return SampleStudy.read(
                    new EngineRuns(home, FluidLibrary.open(home)), folder.resolve(BatchFolder.STUDY));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
