package dev.penstock.app.options;

import dev.penstock.files.WholeFiles;
import dev.penstock.reports.slide.SlideFiles;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** The option that asks for drawings to show to an audience. */
public final class FiguresOption implements OutputOption {

    @Option(
            names = "--figures",
            paramLabel = "DIR",
            description =
                    "also write drawings for an audience into this folder, made if absent: large type, 1920 x 1080"
                            + " and 1080 x 1080, light and dark, each as SVG and PNG")
    private Optional<Path> folder = Optional.empty();

    /** @return where the drawings go; empty if none were asked for */
    public Optional<Path> folder() {
        return folder;
    }

    /**
     * @param sets makes the drawings; called only where they were asked for
     * @return the folder written, if any
     */
    public List<Path> write(Supplier<List<SlideFiles>> sets) {
        if (folder.isEmpty()) {
            return List.of();
        }
        Map<String, byte[]> files = new LinkedHashMap<>();
        sets.get().forEach(set -> files.putAll(set.files()));
        WholeFiles.writeBytes(folder.get(), files);
        return List.of(folder.get());
    }
}
