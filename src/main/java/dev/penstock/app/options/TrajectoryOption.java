package dev.penstock.app.options;

import dev.penstock.files.OutputFile;
import dev.penstock.reports.vehicle.EphemerisMessage;
import dev.penstock.reports.vehicle.Trajectory;
import dev.penstock.vehicle.FlownSizing;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** The options that write a flight for other programs. */
public final class TrajectoryOption implements OutputOption {

    private static final String OPTION = "--trajectory";
    private static final String CSV = ".csv";
    private static final String KEYS = ".oem";
    private static final List<String> ENDINGS = List.of(CSV, KEYS, ".xml");

    @Option(
            names = OPTION,
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
            reader.problem(OPTION, files.get(0).toString(), "it needs --fly");
        }
        for (Path file : files) {
            reader.check(() -> output(file).requireEnding(ENDINGS));
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

    private static OutputFile output(Path file) {
        return new OutputFile(OPTION, file);
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
            OutputFile place = output(file);
            place.write(
                    switch (place.ending(ENDINGS)) {
                        case CSV -> trajectory.csv();
                        case KEYS -> message.keysAndValues();
                        default -> message.xml();
                    });
        }
        return List.copyOf(files);
    }
}
