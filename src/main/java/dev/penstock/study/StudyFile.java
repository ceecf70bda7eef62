package dev.penstock.study;

import dev.penstock.errors.InvalidInput;
import dev.penstock.input.Input;
import dev.penstock.input.InputFile;
import dev.penstock.input.InputKind;
import dev.penstock.input.InputTable;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A study to be kept and done again: which concepts stand side by side, which inputs a sweep varies, or which vehicle is
 * sized. As a file it is TOML:
 *
 * <pre>
 * name = "Heron over chamber pressure"
 * study = "sweep"                      # or "compare", "vehicle", "claims", "sample", "optimise", "sensitivity", "frontier"
 * cases = ["../heron.toml"]            # relative to this file
 * vary = ["engine.chamber_pressure=5..14MPa:8"]
 * samples = 24                         # sweep and vehicle: bands from the uncertain inputs; claims: engines of each kind
 * fly = true                           # vehicle only; sized on the losses of its flight
 *
 * [set]                                # values in place of those of the cases
 * "propellants.mixture_ratio" = "2.4"
 * </pre>
 *
 * @param name name for people
 * @param kind what is done
 * @param cases concept, vehicle or claims files, relative to the folder of the study
 * @param changes values by dotted path that replace or add to what the cases say
 * @param vary inputs to vary, as {@link Axis#parse} reads them
 * @param samples engines to sample about each combination of a sweep, vehicles for percentiles, or engines of each kind that claims
 *     allow; 0 for none, or for the usual number of claims
 * @param fly whether a vehicle is flown
 * @param further what one kind of study alone says, by the keys of {@link StudyInputs}
 */
public record StudyFile(
        String name,
        Kind kind,
        List<String> cases,
        Map<String, String> changes,
        List<String> vary,
        int samples,
        boolean fly,
        Map<String, List<String>> further) {

    private static final int MOST_CASES = 100;

    /** What a study does. */
    public enum Kind {
        COMPARE,
        SWEEP,
        VEHICLE,
        CLAIMS,
        SAMPLE,
        OPTIMISE,
        SENSITIVITY,
        FRONTIER;

        /** @return its name in files */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public StudyFile {
        cases = List.copyOf(cases);
        changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
        vary = List.copyOf(vary);
        further = Collections.unmodifiableMap(new LinkedHashMap<>(further));
    }

    /**
     * @param path file of a study
     * @return the study
     * @throws InvalidInput with every problem of the file together
     */
    public static StudyFile read(Path path) {
        return of(InputFile.read(path));
    }

    /**
     * @param file name of the file, for messages
     * @param text its text
     * @return the study
     * @throws InvalidInput with every problem of the text together
     */
    public static StudyFile parse(String file, String text) {
        return of(InputFile.parse(file, text, Map.of()));
    }

    private static StudyFile of(InputFile file) {
        InputTable root = file.root().as(StudyInputs.FILE);
        String name = root.read(StudyInputs.NAME);
        Kind kind = root.read(StudyInputs.STUDY);
        List<String> cases = root.read(StudyInputs.CASES);
        List<String> vary = root.read(StudyInputs.VARY);
        int samples = root.read(StudyInputs.SAMPLES);
        boolean fly = root.read(StudyInputs.FLY);
        InputTable set = root.table("set");
        Map<String, String> changes = new LinkedHashMap<>();
        for (String key : set.keys()) {
            String value = set.text(key);
            if (!key.matches(VaryText.PATH) || value.isBlank()) {
                set.problem('"' + key + '"', value, "write \"path\" = \"value\", both in quotes");
            }
            changes.put(key, value);
        }
        check(root, kind, cases, vary, samples, fly);
        Map<String, List<String>> further = further(root, kind);
        file.finish();
        return new StudyFile(name, kind, cases, changes, vary, samples, fly, further);
    }

    private static Map<String, List<String>> further(InputTable root, Kind kind) {
        Map<String, List<String>> further = new LinkedHashMap<>();
        for (Input<?> input : StudyInputs.further()) {
            if (root.has(input)) {
                List<String> texts = texts(root, input);
                if (StudyInputs.FURTHER.getOrDefault(kind, List.of()).contains(input)) {
                    further.put(input.key(), texts);
                } else {
                    Set<Kind> owners = EnumSet.allOf(Kind.class);
                    owners.removeIf(
                            k -> !StudyInputs.FURTHER.getOrDefault(k, List.of()).contains(input));
                    root.problem(input, texts.toString(), "only " + names(owners) + " have it");
                }
            }
        }
        return further;
    }

    private static <T> List<String> texts(InputTable root, Input<T> input) {
        T value = input.silence() == Input.Silence.COMPUTED
                ? root.find(input).orElseGet(() -> input.kind().placeholder())
                : root.read(input);
        return value instanceof List<?> list
                ? list.stream().map(String::valueOf).toList()
                : List.of(input.kind().text(value));
    }

    private static void check(
            InputTable root, Kind kind, List<String> cases, List<String> vary, int samples, boolean fly) {
        boolean many = kind == Kind.COMPARE;
        if (cases.isEmpty()
                || cases.size() > (many ? MOST_CASES : 1)
                || cases.stream().anyMatch(String::isBlank)) {
            root.problem("cases", cases.toString(), many ? "write 1 to " + MOST_CASES + " files" : "write one file");
        }
        for (String axis : vary) {
            try {
                if (kind == Kind.SWEEP) {
                    Axis.parse(axis);
                } else {
                    VaryText.parse(axis, "write PATH=FROM..TO or PATH=VALUE,VALUE,...");
                }
            } catch (InvalidInput e) {
                root.problem("vary", axis, e.problems().get(0).allowed());
            }
        }
        if (vary.isEmpty() == StudyInputs.VARYING.contains(kind)) {
            root.problem(
                    "vary",
                    vary.toString(),
                    names(StudyInputs.VARYING) + " varies one input or more, other studies none");
        }
        if (samples == 1 || samples > 0 && !StudyInputs.SAMPLED.contains(kind)) {
            root.problem(
                    "samples",
                    Integer.toString(samples),
                    "only " + names(StudyInputs.SAMPLED) + " have them, 2 or more");
        }
        if (fly && kind != Kind.VEHICLE) {
            root.problem("fly", "true", "only a vehicle flies");
        }
    }

    private static String names(Set<Kind> kinds) {
        return kinds.stream().map(Kind::key).collect(Collectors.joining(", "));
    }

    /** @return the study as the text of a file */
    public String text() {
        StringBuilder text = new StringBuilder();
        text.append("name = ").append(quoted(name)).append('\n');
        text.append("study = ").append(quoted(kind.key())).append('\n');
        text.append("cases = ").append(list(cases)).append('\n');
        if (!vary.isEmpty()) {
            text.append("vary = ").append(list(vary)).append('\n');
        }
        if (samples > 0) {
            text.append("samples = ").append(samples).append('\n');
        }
        if (fly) {
            text.append("fly = true\n");
        }
        further.forEach((key, values) -> text.append(key)
                .append(" = ")
                .append(written(StudyInputs.FILE.all().get(key).kind(), values))
                .append('\n'));
        if (!changes.isEmpty()) {
            text.append("\n[set]\n");
            changes.forEach((key, value) ->
                    text.append(quoted(key)).append(" = ").append(quoted(value)).append('\n'));
        }
        return text.toString();
    }

    private static String written(InputKind<?> kind, List<String> values) {
        return kind instanceof InputKind.Whole
                ? values.get(0)
                : kind instanceof InputKind.Many<?> ? list(values) : quoted(values.get(0));
    }

    private static String list(List<String> texts) {
        List<String> quoted = new ArrayList<>();
        texts.forEach(t -> quoted.add(quoted(t)));
        return "[" + String.join(", ", quoted) + "]";
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(c -> {
            if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
            } else if (c < ' ' || c == 0x7f) {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", c));
            } else {
                quoted.appendCodePoint(c);
            }
        });
        return quoted.append('"').toString();
    }
}
