package dev.penstock.app.console;

import dev.penstock.errors.InvalidInput;
import dev.penstock.files.WholeFiles;
import dev.penstock.reports.vehicle.EphemerisMessage;
import dev.penstock.reports.vehicle.Trajectory;
import dev.penstock.vehicle.FlownSizing;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Option;

/** The options that write a flight for other programs. */
public final class TrajectoryOption implements OutputOption {

    @Option(
            names = "--trajectory",
            paramLabel = "FILE",
            description =
                    "with --fly: also write the flight, moment by moment; .csv has every figure, .oem is a CCSDS Orbit"
                            + " Ephemeris Message (502.0) and .xml the same in XML; may be given several times")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--release",
            paramLabel = "TIME",
            defaultValue = "2000-01-01T12:00:00",
            description = "when the flight begins, in atomic time, for the ephemeris; default ${DEFAULT-VALUE}")
    private String release;

    /** @param flying whether there will be a flight */
    public void check(boolean flying) {
        OptionReader reader = new OptionReader();
        if (!flying && !files.isEmpty()) {
            reader.problem("--trajectory", files.get(0).toString(), "it needs --fly");
        }
        for (Path file : files) {
            if (ending(file).isEmpty()) {
                reader.problem("--trajectory", file.toString(), "its name must end in .csv, .oem or .xml");
            }
        }
        try {
            begin();
        } catch (DateTimeParseException e) {
            reader.problem("--release", release, "write a time such as 2000-01-01T12:00:00");
        }
        reader.finish();
    }

    private Instant begin() {
        return LocalDateTime.parse(release).toInstant(ZoneOffset.UTC);
    }

    private static String ending(Path file) {
        String name = file.toString().toLowerCase(Locale.ROOT);
        return List.of(".csv", ".oem", ".xml").stream()
                .filter(name::endsWith)
                .findFirst()
                .orElse("");
    }

    /**
     * @param flown vehicle and flight
     * @return the files written
     */
    public List<Path> write(FlownSizing flown) {
        if (files.isEmpty()) {
            return List.of();
        }
        Trajectory trajectory = new Trajectory(flown);
        EphemerisMessage message = trajectory.ephemeris(begin(), Instant.now());
        for (Path file : files) {
            String text =
                    switch (ending(file)) {
                        case ".csv" -> trajectory.csv();
                        case ".oem" -> message.keysAndValues();
                        default -> message.xml();
                    };
            Path folder = file.toAbsolutePath().getParent();
            if (folder == null) {
                throw new InvalidInput("", "--trajectory", file.toString(), "write the path of a file");
            }
            WholeFiles.writeBytes(folder, Map.of(file.getFileName().toString(), text.getBytes(StandardCharsets.UTF_8)));
        }
        return List.copyOf(files);
    }
}
