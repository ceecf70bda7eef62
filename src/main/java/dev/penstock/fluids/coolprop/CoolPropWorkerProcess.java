package dev.penstock.fluids.coolprop;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A Python process that has imported CoolProp's wheel and answers questions over its standard input and output; the
 * frames are described in {@code serve_coolprop.py}. It ends when its input does, which the operating system sees to
 * however this process ends. One question at a time; safe to share between threads.
 */
final class CoolPropWorkerProcess implements Closeable {

    /**
     * What the worker said.
     *
     * @param values numbers, NaN where CoolProp gave none
     * @param text messages, see {@code serve_coolprop.py}
     */
    record Answer(double[] values, String text) {}

    private enum Kind {
        OPEN,
        CLOSE,
        MOVE,
        READ
    }

    private static final int HEAD = 20;
    private static final int ANSWER_HEAD = 8;
    private static final int PAIR = 16;
    private static final int END_SECONDS = 5;

    private final Process process;
    private final OutputStream questions;
    private final InputStream answers;
    private ByteBuffer buffer = ByteBuffer.allocate(HEAD + PAIR * 64).order(ByteOrder.LITTLE_ENDIAN);

    private CoolPropWorkerProcess(Process process) {
        this.process = process;
        this.questions = process.getOutputStream();
        this.answers = process.getInputStream();
    }

    /**
     * @param folder where the wheel was installed
     * @return a worker that is ready
     * @throws dev.penstock.errors.PropertyFailure if there is no interpreter, or it cannot import the wheel
     */
    static CoolPropWorkerProcess start(Path folder) {
        String script = CoolPropWheel.resource("serve_coolprop.py")
                + CoolPropWheel.importScript(folder, List.of(CoolPropOutput.values())) + "\nmain()\n";
        String command = PythonRuntime.command();
        try {
            CoolPropWorkerProcess worker =
                    new CoolPropWorkerProcess(new ProcessBuilder(command, "-I", "-S", "-c", script)
                            .redirectError(ProcessBuilder.Redirect.DISCARD)
                            .start());
            String greeting = worker.answer().text;
            if (greeting.startsWith("-")) {
                worker.close();
                throw CoolPropLibrary.failure("the CoolProp wheel in " + folder + " cannot be imported by " + command
                        + " (" + greeting.substring(1) + "); " + PythonRuntime.RUN_FIRST);
            }
            return worker;
        } catch (IOException e) {
            throw CoolPropLibrary.failure(command + " does not run as CoolProp's worker (" + e.getMessage()
                    + "); install Python 3, or set PENSTOCK_COOLPROP to the path of libCoolProp");
        }
    }

    /** @return one value, the number of a new state object, or the reason why there is none */
    synchronized Answer open(String fluid) throws IOException {
        byte[] name = fluid.getBytes(StandardCharsets.UTF_8);
        head(Kind.OPEN, 0, 0, 0, name.length, name.length).put(name);
        return ask();
    }

    /** Frees a state object. */
    synchronized void close(int state) throws IOException {
        head(Kind.CLOSE, state, 0, 0, 0, 0);
        send();
    }

    /**
     * @param state number of a state object
     * @param pair kind of the two values
     * @param mask outputs wanted, a bit each by their order in {@link CoolPropOutput}
     * @param first first values
     * @param second second values, as many
     * @return for each state the wanted outputs in their order
     */
    synchronized Answer move(int state, CoolPropInputs pair, int mask, double[] first, double[] second)
            throws IOException {
        head(Kind.MOVE, state, pair.ordinal(), mask, first.length, first.length * PAIR);
        for (int i = 0; i < first.length; i++) {
            buffer.putDouble(first[i]).putDouble(second[i]);
        }
        return ask();
    }

    /** As {@link #move} for one state. */
    synchronized Answer move(int state, CoolPropInputs pair, int mask, double first, double second) throws IOException {
        head(Kind.MOVE, state, pair.ordinal(), mask, 1, PAIR).putDouble(first).putDouble(second);
        return ask();
    }

    /** @return the wanted outputs of the state as it is */
    synchronized Answer read(int state, int mask) throws IOException {
        head(Kind.READ, state, 0, mask, 0, 0);
        return ask();
    }

    private ByteBuffer head(Kind kind, int state, int pair, int mask, int count, int payload) {
        buffer.clear();
        reserve(HEAD + payload);
        return buffer.putInt(kind.ordinal())
                .putInt(state)
                .putInt(pair)
                .putInt(mask)
                .putInt(count);
    }

    private void reserve(int size) {
        if (buffer.capacity() < size) {
            buffer = ByteBuffer.allocate(2 * size).order(ByteOrder.LITTLE_ENDIAN);
        }
    }

    private void send() throws IOException {
        questions.write(buffer.array(), 0, buffer.position());
        questions.flush();
    }

    private Answer ask() throws IOException {
        send();
        return answer();
    }

    private Answer answer() throws IOException {
        receive(ANSWER_HEAD);
        double[] values = new double[buffer.getInt()];
        int text = buffer.getInt();
        receive(values.length * Double.BYTES + text);
        for (int i = 0; i < values.length; i++) {
            values[i] = buffer.getDouble();
        }
        return new Answer(
                values, text == 0 ? "" : new String(buffer.array(), buffer.position(), text, StandardCharsets.UTF_8));
    }

    private void receive(int size) throws IOException {
        reserve(size);
        buffer.clear();
        if (answers.readNBytes(buffer.array(), 0, size) < size) {
            throw new IOException("it ended" + exitCode());
        }
    }

    private String exitCode() {
        try {
            return process.waitFor(END_SECONDS, TimeUnit.SECONDS) ? " with exit code " + process.exitValue() : "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        }
    }

    /** @return the process, for tests that end it */
    ProcessHandle process() {
        return process.toHandle();
    }

    @Override
    public void close() {
        process.destroy();
    }
}
