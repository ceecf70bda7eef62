package dev.penstock.app.options;

import dev.penstock.errors.InvalidInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;

/** The option that changes a value of a file for one run. */
public final class ChangeOptions {

    @Option(
            names = "--set",
            paramLabel = "PATH=VALUE",
            description = "use this value instead of the file's, for example engine.chamber_pressure=\"12 MPa\";"
                    + " may be given several times")
    private List<String> changes = new ArrayList<>();

    /**
     * @return value by dotted path
     * @throws InvalidInput if a change is not written as path=value
     */
    public Map<String, String> map() {
        Map<String, String> map = new LinkedHashMap<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        for (String change : changes) {
            int equals = change.indexOf('=');
            String path = equals < 0 ? "" : change.substring(0, equals).strip();
            if (!path.matches("[\\w-]+(\\[\\d+])?(\\.[\\w-]+(\\[\\d+])?)*")
                    || change.substring(equals + 1).isBlank()) {
                problems.add(new InvalidInput.Problem(
                        "", "--set", change, "write path=value, for example engine.chamber_pressure=\"12 MPa\""));
            } else {
                map.put(path, change.substring(equals + 1).strip());
            }
        }
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
        return map;
    }
}
