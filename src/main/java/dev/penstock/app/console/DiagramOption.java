package dev.penstock.app.console;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.errors.InvalidInput;
import dev.penstock.files.WholeFiles;
import dev.penstock.reports.chart.Raster;
import dev.penstock.reports.engine.EngineCharts;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that draws the cycle. */
public final class DiagramOption implements OutputOption {

    private static final String SVG = ".svg";
    private static final String PNG = ".png";

    @Option(
            names = "--diagram",
            paramLabel = "FILE",
            description = "also draw the cycle with its stations into this file, whose name ends in .svg or .png")
    private Optional<Path> file = Optional.empty();

    /** Refuses what could not be written, before anything is computed. */
    public void check() {
        file.filter(path -> !is(path, SVG) && !is(path, PNG)).ifPresent(path -> {
            throw new InvalidInput("", "--diagram", path.toString(), "its name must end in .svg or .png");
        });
    }

    private static boolean is(Path path, String ending) {
        return path.toString().toLowerCase(Locale.ROOT).endsWith(ending);
    }

    /**
     * @param balance balanced engine
     * @return the file written, if one was asked for
     */
    public List<Path> write(EngineBalance balance) {
        return file.map(path -> write(path, balance)).map(List::of).orElse(List.of());
    }

    private static Path write(Path path, EngineBalance balance) {
        String svg = new EngineCharts(balance, "d").flow().svg();
        Path folder = path.toAbsolutePath().getParent();
        if (folder == null) {
            throw new InvalidInput("", "--diagram", path.toString(), "write the path of a file");
        }
        byte[] bytes = is(path, PNG) ? Raster.png(svg) : svg.getBytes(StandardCharsets.UTF_8);
        WholeFiles.writeBytes(folder, Map.of(path.getFileName().toString(), bytes));
        return path;
    }
}
