package dev.penstock.study.space;

import dev.penstock.cycles.reading.ConceptInputs;
import dev.penstock.errors.InvalidInput;
import dev.penstock.input.Input;
import dev.penstock.input.Spelling;
import dev.penstock.study.Measure;
import dev.penstock.study.VaryText;
import dev.penstock.vehicle.engine.EnginePerformance;
import dev.penstock.vehicle.plan.VehicleInputs;
import dev.penstock.vehicle.reading.EngineChanges;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Reads what people write of inputs, figures and constraints of a case. What is wrong is told in a sentence each. */
public final class CasePaths {

    private static final Map<String, Input<?>> CONCEPT =
            ConceptInputs.ofAll(VehicleInputs.IN_CONCEPT).all();
    private static final Map<String, Input<?>> VEHICLE = VehicleInputs.FILE.all();

    private static final int SUGGESTIONS = 3;

    /** Stands for every input that has a spread. */
    private static final String SPREADS = "spreads";

    private final StudyCase subject;

    CasePaths(StudyCase subject) {
        this.subject = subject;
    }

    /**
     * @param vary inputs to vary: {@code path=from..to}, {@code path=value,value,...}, {@code path=spread}, or {@code
     *     spreads} for all that have a spread and are not named by themselves
     * @return the space
     * @throws InvalidInput naming everything that cannot be varied so
     */
    public StudySpace space(List<String> vary) {
        return counted(vary, false).space();
    }

    /**
     * @param vary inputs to vary over a grid, with or without {@code :count} behind a range
     * @return the space, and what was said of each input
     * @throws InvalidInput naming everything that cannot be varied so
     */
    public Counted counted(List<String> vary) {
        return counted(vary, true);
    }

    /**
     * A space whose inputs may say how many values they have.
     *
     * @param space the space
     * @param said what was written of each input that is named, by its path
     */
    public record Counted(StudySpace space, Map<String, VaryText> said) {}

    private Counted counted(List<String> vary, boolean mayCount) {
        if (vary.isEmpty()) {
            throw new InvalidInput(
                    "", "--vary", "missing", "write what to vary, for example engine.chamber_pressure=6..12MPa");
        }
        List<Variable> variables = new ArrayList<>();
        Map<String, VaryText> said = new LinkedHashMap<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        VariableReader reader = new VariableReader(subject, this);
        boolean spreads = false;
        for (String text : vary) {
            if (text.strip().equals(SPREADS)) {
                spreads = true;
                continue;
            }
            collect(problems, () -> said(text, mayCount))
                    .ifPresent(one -> collect(problems, () -> reader.read(one)).ifPresent(variable -> {
                        if (said.putIfAbsent(variable.path(), one) != null) {
                            problems.add(
                                    new InvalidInput.Problem("", "--vary", text, "each input can be varied once only"));
                        }
                        variables.add(variable);
                    }));
        }
        finish(problems);
        if (spreads) {
            reader.uncertain().stream().filter(v -> !said.containsKey(v.path())).forEach(variables::add);
            if (variables.isEmpty()) {
                throw new InvalidInput("", "--vary", SPREADS, "no input of " + subject.name() + " has a spread");
            }
        }
        return new Counted(new StudySpace(variables), said);
    }

    private static VaryText said(String text, boolean mayCount) {
        VaryText said = VariableReader.said(text);
        if (said.count().isPresent() && !mayCount) {
            throw new InvalidInput("", "--vary", text, "only a grid counts its values; write FROM..TO without a count");
        }
        if (said.count().orElse(2) < 2) {
            throw new InvalidInput("", "--vary", text, "write a count of 2 or more");
        }
        return said;
    }

    /**
     * @param option option that names it
     * @param path path of a figure, with or without the unit at its end
     * @return the figure
     * @throws InvalidInput if it names no number
     */
    public StudyFigure figure(String option, String path) {
        Optional<StudyFigure> found = subject.ofVehicle()
                ? CaseFigures.ofVehicleNamed(path, subject.engineNames())
                : CaseFigures.ofConceptNamed(path);
        return found.map(f -> there(option, path, f)).orElseThrow(() -> {
            if (CaseFigures.isText(path)) {
                return new InvalidInput("", option, path, "it is a text or a list; write the path of a number");
            }
            List<String> known = new ArrayList<>(CaseFigures.usual(subject.ofVehicle()));
            known.add(CaseFigures.WITHIN_LIMITS);
            if (!subject.ofVehicle()) {
                Measure.ALL.forEach(m -> known.add(m.key()));
            }
            return new InvalidInput(
                    "", option, path, "no figure has that path" + meant(path, known, "engine.isp_vacuum_s"));
        });
    }

    /** @return figures that people ask for, those that the case can have */
    public List<StudyFigure> usual() {
        List<String> paths = new ArrayList<>();
        if (!subject.ofVehicle()) {
            Measure.ALL.forEach(m -> paths.add(m.path()));
        }
        paths.addAll(CaseFigures.usual(subject.ofVehicle()));
        return paths.stream()
                .flatMap(path -> collect(new ArrayList<>(), () -> figure("", path)).stream())
                .collect(Collectors.toMap(StudyFigure::path, f -> f, (a, b) -> a, LinkedHashMap::new))
                .values()
                .stream()
                .toList();
    }

    private StudyFigure there(String option, String path, StudyFigure figure) {
        if (figure.ofVehicle() && !subject.withVehicle()) {
            throw new InvalidInput(
                    "",
                    option,
                    path,
                    subject.name() + " drives no vehicle; write a table [vehicle], or name a vehicle file");
        }
        return figure;
    }

    /**
     * @param option option that names them
     * @param paths paths of figures
     * @return the figures
     * @throws InvalidInput naming every path that names no number
     */
    public List<StudyFigure> figures(String option, List<String> paths) {
        List<StudyFigure> figures = new ArrayList<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        paths.forEach(path -> collect(problems, () -> figure(option, path)).ifPresent(figures::add));
        finish(problems);
        return List.copyOf(figures);
    }

    /**
     * @param texts constraints: {@code figure<=value}, {@code figure>=value} or {@code within_limits}
     * @return the constraints
     * @throws InvalidInput naming every one that cannot be used, or two that contradict each other
     */
    public List<Constraint> constraints(List<String> texts) {
        List<Constraint> constraints = new ArrayList<>();
        List<InvalidInput.Problem> problems = new ArrayList<>();
        texts.forEach(
                text -> collect(problems, () -> ConstraintText.read(text, this)).ifPresent(constraints::add));
        finish(problems);
        Constraint.agree(constraints);
        return List.copyOf(constraints);
    }

    /** The declaration of an input of the case; repeated tables are counted from zero. */
    Optional<Input<?>> input(String path) {
        if (!subject.ofVehicle()) {
            return declared(CONCEPT, path);
        }
        int dot = path.indexOf('.', EnginePerformance.PATHS.length());
        return path.startsWith(EnginePerformance.PATHS) && dot > 0
                ? declared(CONCEPT, path.substring(dot + 1))
                : declared(VEHICLE, path);
    }

    private static Optional<Input<?>> declared(Map<String, Input<?>> inputs, String path) {
        String general = path.replaceAll("\\[\\d+]", "[]");
        Input<?> exact = inputs.get(general);
        if (exact != null) {
            return Optional.of(exact);
        }
        return inputs.entrySet().stream()
                .filter(e -> e.getKey().contains(".*.") && general.matches(pattern(e.getKey())))
                .<Input<?>>map(Map.Entry::getValue)
                .findFirst();
    }

    private static String pattern(String key) {
        return key.replace("[", "\\[").replace(".*.", "\\.[\\w-]+\\.");
    }

    /** What to write instead of a path that names no input. */
    String near(String path) {
        List<String> known = new ArrayList<>();
        if (subject.ofVehicle()) {
            VEHICLE.keySet().forEach(key -> known.add(key.replace("[]", "[0]")));
            subject.engineNames()
                    .forEach(engine -> CONCEPT.keySet().forEach(key -> known.add(EngineChanges.at(engine) + key)));
        } else {
            known.addAll(CONCEPT.keySet());
        }
        return meant(path, known, subject.ofVehicle() ? "payload" : "engine.chamber_pressure");
    }

    private static String meant(String path, List<String> known, String example) {
        List<String> near = Spelling.near(path, known, SUGGESTIONS);
        return near.isEmpty() ? "; write one such as " + example : "; did you mean " + String.join(" or ", near) + "?";
    }

    private static <T> Optional<T> collect(List<InvalidInput.Problem> problems, Supplier<T> reading) {
        try {
            return Optional.of(reading.get());
        } catch (InvalidInput e) {
            problems.addAll(e.problems());
            return Optional.empty();
        }
    }

    private static void finish(List<InvalidInput.Problem> problems) {
        if (!problems.isEmpty()) {
            throw new InvalidInput(problems);
        }
    }
}
