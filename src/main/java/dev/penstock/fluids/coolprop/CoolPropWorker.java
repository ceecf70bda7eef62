package dev.penstock.fluids.coolprop;

import static dev.penstock.fluids.coolprop.CoolPropOutput.DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTHALPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ENTROPY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.ISOCHORIC_HEAT_CAPACITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PHASE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_DENSITY;
import static dev.penstock.fluids.coolprop.CoolPropOutput.PRESSURE_BY_TEMPERATURE;
import static dev.penstock.fluids.coolprop.CoolPropOutput.TEMPERATURE;

import dev.penstock.errors.PropertyFailure;
import dev.penstock.numerics.Cancellation;
import java.io.IOException;
import java.lang.ref.Cleaner;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * CoolProp from its official Python wheel in a process of its own, for interpreters without a shared library. All
 * threads share one process; it is started again when it has ended, once for a question. A move brings back what most
 * searches read next, and what was asked for before of the same handle, so that a step of a search is one exchange.
 */
final class CoolPropWorker extends CoolPropLibrary {

    private static final CoolPropOutput[] OUTPUTS = CoolPropOutput.values();
    private static final int WHOLE = -1;

    /** What a step of Newton's method reads. */
    private static final int STEP = mask(
            TEMPERATURE,
            PRESSURE,
            DENSITY,
            ENTHALPY,
            ENTROPY,
            ISOCHORIC_HEAT_CAPACITY,
            PHASE,
            PRESSURE_BY_DENSITY,
            PRESSURE_BY_TEMPERATURE);

    /** What is read of a state on the saturation curve, where heat capacity and slopes may be undefined. */
    private static final int SATURATED =
            mask(TEMPERATURE, PRESSURE, DENSITY, ENTHALPY, ENTROPY, PHASE, CoolPropOutput.QUALITY);

    private final Path folder;
    private CoolPropWorkerProcess running;

    private CoolPropWorker(Path folder) {
        this.folder = folder;
        this.running = CoolPropWorkerProcess.start(folder);
    }

    /**
     * @param folder where the wheel was installed
     * @return CoolProp
     * @throws PropertyFailure if there is no interpreter, or it cannot import the wheel
     */
    public static CoolPropWorker load(Path folder) {
        return new CoolPropWorker(folder);
    }

    private static int mask(CoolPropOutput... outputs) {
        int mask = 0;
        for (CoolPropOutput output : outputs) {
            mask |= bit(output);
        }
        return mask;
    }

    private static int bit(CoolPropOutput output) {
        return 1 << output.ordinal();
    }

    /** @return the process that answers now */
    synchronized CoolPropWorkerProcess running() {
        return running;
    }

    /** Starts another process in place of one that has ended, unless another thread did. */
    private synchronized void replace(CoolPropWorkerProcess ended) {
        if (running == ended) {
            ended.close();
            running = CoolPropWorkerProcess.start(folder);
        }
    }

    @Override
    public String version() {
        return PythonRuntime.stamp(folder);
    }

    @Override
    CoolPropHandle open(String fluid, String id) {
        Handle handle = new Handle(fluid, id);
        State state = handle.state;
        handle.freedBy = CLEANER.register(handle, state::free);
        return handle;
    }

    /** A state object in the worker; knows which process it lives in. */
    private static final class State {

        private CoolPropWorkerProcess process;
        private int number;

        synchronized void is(CoolPropWorkerProcess in, int as) {
            process = in;
            number = as;
        }

        synchronized void free() {
            try {
                process.close(number);
            } catch (IOException e) {
                // the process has ended, and its states with it
                return;
            }
        }
    }

    /** A question to a process that holds this state. */
    private interface Question {
        CoolPropWorkerProcess.Answer ask(CoolPropWorkerProcess process, int number) throws IOException;
    }

    private final class Handle implements CoolPropHandle {

        private final String coolPropName;
        private final String fluid;
        private final State state = new State();
        private Cleaner.Cleanable freedBy;
        private boolean closed;
        private boolean moved;
        private CoolPropInputs lastInputs = CoolPropInputs.PRESSURE_TEMPERATURE;
        private double first;
        private double second;
        private int known;
        private int habit;
        private final double[] values = new double[OUTPUTS.length];
        private final Map<CoolPropOutput, String> problems = new EnumMap<>(CoolPropOutput.class);

        Handle(String coolPropName, String id) {
            this.coolPropName = coolPropName;
            this.fluid = id;
            answer(() -> "any input", (process, number) -> new CoolPropWorkerProcess.Answer(new double[0], ""));
        }

        @Override
        public void close() {
            closed = true;
            freedBy.clean();
        }

        @Override
        public void update(CoolPropInputs pair, double a, double b) {
            requireOpen();
            int mask = habit
                    | (pair == CoolPropInputs.PRESSURE_QUALITY || pair == CoolPropInputs.QUALITY_TEMPERATURE
                            ? SATURATED
                            : STEP);
            CoolPropWorkerProcess.Answer answer =
                    answer(() -> pair.describe(a, b), (process, number) -> process.move(number, pair, mask, a, b));
            lastInputs = pair;
            first = a;
            second = b;
            moved = true;
            known = 0;
            problems.clear();
            take(mask, answer);
        }

        private void requireOpen() {
            if (closed) {
                throw new IllegalStateException("this state of " + fluid + " is closed");
            }
        }

        @Override
        public double output(CoolPropOutput key) {
            if ((known & bit(key)) == 0) {
                habit |= bit(key);
                int mask = habit & ~known;
                take(mask, answer(this::describe, (process, number) -> process.read(number, mask)));
            }
            double value = values[key.ordinal()];
            if (!(Math.abs(value) < HUGE)) {
                String reason = problems.getOrDefault(key, "CoolProp gave no number and no reason");
                throw new PropertyFailure(fluid, describe(), key + ": " + reason);
            }
            return value;
        }

        @Override
        public double[] evaluate(CoolPropInputs pair, double[] a, double[] b, CoolPropOutput... wanted) {
            Cancellation.check();
            requireOpen();
            int mask = mask(wanted);
            double[] answered = answer(
                            () -> "any of " + a.length + " inputs",
                            (process, number) -> process.move(number, pair, mask, a, b))
                    .values();
            moved = false;
            known = 0;
            problems.clear();
            double[] ordered = new double[answered.length];
            for (int k = 0; k < wanted.length; k++) {
                int place = Integer.bitCount(mask & (bit(wanted[k]) - 1));
                for (int i = 0; i < a.length; i++) {
                    ordered[i * wanted.length + k] = answered[i * wanted.length + place];
                }
            }
            for (int i = 0; i < ordered.length; i += wanted.length) {
                refuse(ordered, i, i + wanted.length);
            }
            return ordered;
        }

        /** A state of which anything is no number gives no number at all. */
        private static void refuse(double[] all, int from, int to) {
            for (int i = from; i < to; i++) {
                if (!(Math.abs(all[i]) < HUGE)) {
                    Arrays.fill(all, from, to, Double.NaN);
                    return;
                }
            }
        }

        private String describe() {
            return lastInputs.describe(first, second);
        }

        /** Keeps the outputs of an answer about one state. */
        private void take(int mask, CoolPropWorkerProcess.Answer answer) {
            if (!answer.text().isEmpty()) {
                takeProblems(answer.text());
            }
            int place = 0;
            for (int k = 0; k < OUTPUTS.length; k++) {
                if ((mask >> k & 1) != 0) {
                    values[k] = answer.values()[place++];
                }
            }
            known |= mask;
        }

        private void takeProblems(String text) {
            for (String problem : text.split("\u001e")) {
                int space = problem.indexOf(' ');
                int number = Integer.parseInt(problem.substring(0, space));
                String message = problem.substring(space + 1);
                if (number == WHOLE) {
                    throw new PropertyFailure(fluid, describe(), message);
                }
                problems.put(OUTPUTS[number], message);
            }
        }

        /** Asks; if the process has ended, starts another, brings it to this handle's state and asks that. */
        private CoolPropWorkerProcess.Answer answer(Supplier<String> inputs, Question question) {
            for (boolean again = false; ; again = true) {
                CoolPropWorkerProcess process = running();
                try {
                    if (state.process != process) {
                        revive(process);
                    }
                    return question.ask(process, state.number);
                } catch (IOException e) {
                    if (again) {
                        throw new PropertyFailure(
                                fluid,
                                inputs.get(),
                                "the Python process that answers for CoolProp was started again and failed again ("
                                        + e.getMessage() + ")");
                    }
                    replace(process);
                }
            }
        }

        private void revive(CoolPropWorkerProcess process) throws IOException {
            CoolPropWorkerProcess.Answer opened = process.open(coolPropName);
            if (opened.values().length == 0) {
                throw new PropertyFailure(
                        fluid, "any input", opened.text().substring(3).replace("\u001e", ""));
            }
            state.is(process, (int) opened.values()[0]);
            if (moved) {
                process.move(state.number, lastInputs, 0, first, second);
            }
        }
    }
}
