package dev.penstock.app.console;

import dev.penstock.claims.file.ClaimsInputs;
import dev.penstock.input.FileTemplate;
import dev.penstock.input.InputGroup;
import dev.penstock.study.StudyInputs;
import dev.penstock.vehicle.plan.VehicleInputs;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The files other than concepts that can be written to start from; each can be used as it is. */
public enum NewFiles {
    /** a vehicle with two stages */
    VEHICLE("a vehicle of two stages, with the engines of two concepts", "size", VehicleInputs.FILE),
    /** claims about an engine */
    CLAIMS("claims about an engine, to be judged", "judge", ClaimsInputs.FILE),
    /** a comparison of two concepts */
    STUDY("a study that puts two concepts side by side", "study", StudyInputs.FILE);

    private final String summary;
    private final String next;
    private final InputGroup inputs;

    NewFiles(String summary, String next, InputGroup inputs) {
        this.summary = summary;
        this.next = next;
        this.inputs = inputs;
    }

    /** @return how it is asked for */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** @return what is written */
    public String summary() {
        return summary;
    }

    /** @return the command that uses it */
    public String next() {
        return next;
    }

    /**
     * @param word how a file is asked for
     * @return that file, if there is one
     */
    public static Optional<NewFiles> named(String word) {
        return Arrays.stream(values()).filter(file -> file.word().equals(word)).findFirst();
    }

    /**
     * @param name name of what is in the file
     * @param folder where it will be
     * @param home home folder, whose concepts it uses
     * @return its text
     */
    public String text(String name, Path folder, Path home) {
        String named = "name = \"" + name.replace("\\", "").replace("\"", "") + "\"\n";
        String first = concept("heron", folder, home);
        String second = concept("tern", folder, home);
        String stated =
                switch (this) {
                    case VEHICLE ->
                        named + "payload = \"5 t\"\n[mission]\norbit_altitude = \"400 km\"\nlatitude = \"28 deg\"\n"
                                + "[mission.losses]\n\"gravity\" = \"1350 m/s\"\n\"drag\" = \"60 m/s\"\n\"steering\" = \"60 m/s\"\n"
                                + "[[stage]]\nname = \"first stage\"\nengine = " + first + "\n"
                                + "[[stage]]\nname = \"second stage\"\nengine = " + second + "\nengines = 1\n";
                    case CLAIMS ->
                        named + "cycle = \"pressure-fed\"\n[propellants]\noxidizer = \"nitrogen-tetroxide\"\nfuel ="
                                + " \"mmh\"\n[claims.\"engine.isp_vacuum\"]\nvalue = \"315 s\"\nwithin = \"6 s\"\n"
                                + "[claims.\"engine.chamber_pressure\"]\nlow = \"0.6 MPa\"\nhigh = \"2 MPa\"\n"
                                + "[given]\n\"engine.thrust_vacuum\" = \"27 kN\"\n";
                    case STUDY -> named + "study = \"compare\"\ncases = [" + first + ", " + second + "]\n";
                };
        return FileTemplate.text(inputs, stated);
    }

    /** A concept that comes with Penstock, by its path from the folder of the file. */
    private static String concept(String name, Path folder, Path home) {
        Path concept = home.toAbsolutePath().normalize().resolve("cycles").resolve(name + ".toml");
        Path from = folder.toAbsolutePath().normalize();
        Path path = from.getRoot().equals(concept.getRoot()) ? from.relativize(concept) : concept;
        return '"' + path.toString().replace('\\', '/').replace("\"", "\\\"") + '"';
    }
}
