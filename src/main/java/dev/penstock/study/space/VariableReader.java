package dev.penstock.study.space;

import dev.penstock.errors.InvalidInput;
import dev.penstock.input.Input;
import dev.penstock.input.InputKind;
import dev.penstock.input.InputValue;
import dev.penstock.quantities.Units;
import dev.penstock.study.VaryText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads an input to vary: what its declaration says it is, and whether the case takes its values. */
final class VariableReader {

    private static final String OPTION = "--vary";
    private static final String ALLOWED = "write PATH=FROM..TO, for example engine.chamber_pressure=6..12MPa,"
            + " PATH=VALUE,VALUE,... for example propellants.fuel=methane,rp-1, or PATH=spread";

    /** Stands in place of a range for the spread that the input has. */
    private static final String SPREAD = "spread";

    private final StudyCase subject;
    private final CasePaths paths;
    /** Inputs with a spread, once they were asked for: to know them takes a balance. */
    private Optional<Map<String, InputValue>> uncertain = Optional.empty();

    VariableReader(StudyCase subject, CasePaths paths) {
        this.subject = subject;
        this.paths = paths;
    }

    /** What was written of an input. */
    static VaryText said(String text) {
        return VaryText.parse(text, ALLOWED);
    }

    Variable read(VaryText said) {
        Input<?> input = paths.input(said.path())
                .orElseThrow(() -> new InvalidInput(
                        "",
                        OPTION,
                        said.path(),
                        "no input of " + subject.name() + " has that path" + paths.near(said.path())));
        Variable variable = said.values().equals(List.of(SPREAD))
                ? uncertain(said)
                : said.isList() ? list(said, input) : range(said, input);
        takes(said.text(), variable);
        return variable;
    }

    /** Every input of the case that is only known within bounds. */
    List<Variable> uncertain() {
        return known().entrySet().stream()
                .map(e -> uncertain(e.getKey(), e.getValue()))
                .toList();
    }

    private Map<String, InputValue> known() {
        if (uncertain.isEmpty()) {
            uncertain = Optional.of(subject.uncertain());
        }
        return uncertain.get();
    }

    private Variable uncertain(VaryText said) {
        InputValue input = known().get(said.path());
        if (input == null) {
            throw refusal(said, "it counts as exact; write FROM..TO, or its spread into the table [uncertainty]");
        }
        return uncertain(said.path(), input);
    }

    private static Variable uncertain(String path, InputValue input) {
        return new Variable.Uncertain(path, input);
    }

    private static Variable list(VaryText said, Input<?> input) {
        if (said.values().size() < 2) {
            throw refusal(said, "write two values or more, or a range FROM..TO");
        }
        List<Object> documents = new ArrayList<>(said.values());
        if (one(input) instanceof InputKind.Quantity kind) {
            documents.replaceAll(v -> Units.parse(v.toString(), kind.dimension())
                    .map(si -> (Object) si)
                    .orElse(v));
        }
        return new Variable.Named(said.path(), input.title(), said.values(), documents);
    }

    private static Variable range(VaryText said, Input<?> input) {
        if (said.from() >= said.to()) {
            throw refusal(
                    said,
                    said.from() > said.to()
                            ? "it is upside down; write the lower end first"
                            : "both ends are the same");
        }
        if (one(input) instanceof InputKind.Whole) {
            if (said.from() != Math.rint(said.from())
                    || said.to() != Math.rint(said.to())
                    || !said.unit().isEmpty()) {
                throw refusal(said, "it is a whole number; write whole ends without a unit");
            }
            return new Variable.Whole(said.path(), input.title(), (int) said.from(), (int) said.to());
        }
        if (one(input) instanceof InputKind.Quantity kind) {
            return new Variable.Continuous(
                    said.path(), input.title(), kind, end(said, said.from(), kind), end(said, said.to(), kind));
        }
        throw refusal(said, "it is not a number; list its values: " + said.path() + "=value,value");
    }

    /** A value of an input that may have several, one for each stage say, is one for all. */
    private static InputKind<?> one(Input<?> input) {
        return input.kind() instanceof InputKind.Many<?> many ? many.element() : input.kind();
    }

    private static double end(VaryText said, double number, InputKind.Quantity kind) {
        String text = number + (said.unit().isEmpty() ? "" : " " + said.unit());
        return Units.parse(text, kind.dimension())
                .orElseThrow(() ->
                        refusal(said, "write both ends as " + kind.dimension().description()));
    }

    /** Reads the case at the values that were written: one that it refuses is refused here, in its words. */
    private void takes(String text, Variable variable) {
        List<String> values = new ArrayList<>();
        if (variable instanceof Variable.Named named) {
            values.addAll(named.values());
        } else {
            values.add(variable.change(variable.at(0)));
            values.add(variable.change(variable.at(1)));
        }
        int refused = 0;
        Optional<InvalidInput.Problem> problem = Optional.empty();
        for (String value : values) {
            try {
                subject.read(Map.of(variable.path(), value));
            } catch (InvalidInput e) {
                refused++;
                InvalidInput.Problem first = e.problems().get(0);
                if (own(variable, first) || refused == values.size()) {
                    problem = problem.or(() -> Optional.of(first));
                }
            }
        }
        problem.ifPresent(p -> {
            throw new InvalidInput("", OPTION, text, p.sentence());
        });
    }

    private static boolean own(Variable variable, InvalidInput.Problem problem) {
        return !problem.key().isEmpty() && variable.path().endsWith(problem.key());
    }

    private static InvalidInput refusal(VaryText said, String allowed) {
        return new InvalidInput("", OPTION, said.text(), allowed);
    }
}
