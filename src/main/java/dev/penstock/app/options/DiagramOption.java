package dev.penstock.app.options;

import dev.penstock.cycles.sheet.EngineBalance;
import dev.penstock.files.OutputFile;
import dev.penstock.reports.chart.DrawingFont;
import dev.penstock.reports.chart.Raster;
import dev.penstock.reports.engine.EngineCharts;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option that draws the cycle. */
public final class DiagramOption implements OutputOption {

    private static final String OPTION = "--diagram";
    private static final String PNG = ".png";
    private static final List<String> ENDINGS = List.of(".svg", PNG);

    @Option(
            names = OPTION,
            paramLabel = "FILE",
            description = "also draw the cycle with its stations into this file, whose name ends in .svg or .png")
    private Optional<Path> file = Optional.empty();

    /** Refuses what could not be written, before anything is computed. */
    public void check() {
        place().ifPresent(place -> place.requireEnding(ENDINGS));
    }

    private Optional<OutputFile> place() {
        return file.map(path -> new OutputFile(OPTION, path));
    }

    /**
     * @param balance balanced engine
     * @return the file written, if one was asked for
     */
    public List<Path> write(EngineBalance balance) {
        return place().map(place -> List.of(write(place, balance))).orElse(List.of());
    }

    private static Path write(OutputFile place, EngineBalance balance) {
        String svg = new EngineCharts(balance, "d").flow().svg();
        return place.ending(ENDINGS).equals(PNG) ? place.write(Raster.png(svg)) : place.write(DrawingFont.into(svg));
    }
}
