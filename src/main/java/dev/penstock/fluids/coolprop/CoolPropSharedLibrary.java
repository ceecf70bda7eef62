package dev.penstock.fluids.coolprop;

import com.sun.jna.Memory;
import com.sun.jna.NativeLibrary;
import com.sun.jna.NativeLong;
import com.sun.jna.Pointer;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.coolprop.NativeCall.Type;
import java.io.File;
import java.lang.ref.Cleaner;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;

/**
 * CoolProp from its own shared library, through the C interface of {@code CoolPropLib.h}. Every call reports an error
 * number and a message; enumeration values are looked up by name.
 */
final class CoolPropSharedLibrary extends CoolPropLibrary {

    private static final int MESSAGE_SIZE = 1000;

    private final NativeLibrary library;
    private final Map<CoolPropInputs, Long> inputs = new EnumMap<>(CoolPropInputs.class);
    private final Map<CoolPropOutput, Long> outputs = new EnumMap<>(CoolPropOutput.class);

    private CoolPropSharedLibrary(NativeLibrary library) {
        this.library = library;
        for (CoolPropInputs pair : CoolPropInputs.values()) {
            inputs.put(pair, index("get_input_pair_index", pair.nativeName()));
        }
        for (CoolPropOutput key : CoolPropOutput.keyed()) {
            outputs.put(key, index("get_param_index", key.libraryName()));
        }
    }

    /**
     * @param path path of the shared library
     * @return CoolProp
     * @throws PropertyFailure if the file is not a library with CoolProp's C interface
     */
    public static CoolPropSharedLibrary load(Path path) {
        try {
            return new CoolPropSharedLibrary(
                    NativeLibrary.getInstance(path.toAbsolutePath().toString()));
        } catch (LinkageError e) {
            throw failure("PENSTOCK_COOLPROP is " + path + ", which cannot be loaded as CoolProp's shared library ("
                    + e.getMessage() + "); give the path of libCoolProp, or unset it and run ./penstock demo");
        }
    }

    private long index(String function, String name) {
        return new NativeCall(library.getFunction(function), Type.LONG, Type.POINTER)
                .with(0, cString(name))
                .call()
                .longResult();
    }

    private static Memory cString(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        Memory memory = new Memory(bytes.length + 1L);
        memory.clear();
        memory.write(0, bytes, 0, bytes.length);
        return memory;
    }

    /** {@inheritDoc} The C interface has no version; a library that is put in another's place has another time or size. */
    @Override
    public String version() {
        File file = library.getFile();
        return "library " + file + " " + file.length() + " " + file.lastModified();
    }

    @Override
    CoolPropHandle open(String fluid, String id) {
        Handle handle = new Handle(fluid, id);
        long number = handle.number;
        Pointer free = library.getFunction("AbstractState_free");
        handle.freedBy = CLEANER.register(handle, () -> {
            Reports reports = new Reports();
            reports.attach(new NativeCall(free, Type.VOID, Type.LONG, Type.POINTER, Type.POINTER, Type.LONG), 1)
                    .with(0, number)
                    .call();
        });
        return handle;
    }

    /** Where a call leaves its error number and message. */
    private static final class Reports {

        private final Memory error = new Memory(NativeLong.SIZE);
        private final Memory message = new Memory(MESSAGE_SIZE);

        Reports() {
            error.clear();
            message.clear();
        }

        NativeCall attach(NativeCall call, int index) {
            return call.with(index, error).with(index + 1, message).with(index + 2, MESSAGE_SIZE);
        }

        boolean failed() {
            return (NativeLong.SIZE == 8 ? error.getLong(0) : error.getInt(0)) != 0;
        }

        /** Takes the message and resets, since CoolProp leaves the number alone when a call succeeds. */
        String take() {
            String text = failed() ? message.getString(0, "UTF-8") : "CoolProp gave no number and no reason";
            error.clear();
            return text;
        }
    }

    private final class Handle implements CoolPropHandle {

        private final String fluid;
        private final long number;
        private Cleaner.Cleanable freedBy;
        private boolean closed;
        private final Reports reports = new Reports();
        private final NativeCall update;
        private final NativeCall keyedOutput;
        private final NativeCall partialDerivative;
        private final NativeCall unspecifyPhase;
        private CoolPropInputs lastInputs = CoolPropInputs.PRESSURE_TEMPERATURE;
        private double first;
        private double second;

        Handle(String coolPropName, String id) {
            this.fluid = id;
            this.number = make(coolPropName);
            this.update = reporting("AbstractState_update", Type.VOID, Type.LONG, Type.LONG, Type.DOUBLE, Type.DOUBLE);
            this.keyedOutput = reporting("AbstractState_keyed_output", Type.DOUBLE, Type.LONG, Type.LONG);
            this.partialDerivative = reporting(
                    "AbstractState_first_partial_deriv", Type.DOUBLE, Type.LONG, Type.LONG, Type.LONG, Type.LONG);
            this.unspecifyPhase = reporting("AbstractState_unspecify_phase", Type.VOID, Type.LONG);
        }

        private long make(String coolPropName) {
            Memory backend = cString(FULL_EQUATIONS);
            Memory name = cString(coolPropName);
            long made = reporting("AbstractState_factory", Type.LONG, Type.POINTER, Type.POINTER)
                    .with(0, backend)
                    .with(1, name)
                    .call()
                    .longResult();
            if (reports.failed()) {
                throw new PropertyFailure(fluid, "any input", reports.take());
            }
            return made;
        }

        /** A call whose last three arguments are the error number, the message and its size. */
        private NativeCall reporting(String function, Type result, Type... own) {
            Type[] types = Arrays.copyOf(own, own.length + 3);
            types[own.length] = Type.POINTER;
            types[own.length + 1] = Type.POINTER;
            types[own.length + 2] = Type.LONG;
            NativeCall call = new NativeCall(library.getFunction(function), result, types);
            return reports.attach(call, own.length).with(0, number);
        }

        @Override
        public void close() {
            closed = true;
            freedBy.clean();
        }

        @Override
        public void update(CoolPropInputs pair, double a, double b) {
            if (closed) {
                throw new IllegalStateException("this state of " + fluid + " is closed");
            }
            lastInputs = pair;
            first = a;
            second = b;
            update.with(1, inputs.get(pair)).with(2, a).with(3, b).call();
            if (reports.failed()) {
                String message = reports.take();
                unspecifyPhase.call();
                throw new PropertyFailure(fluid, pair.describe(a, b), message);
            }
        }

        @Override
        public double output(CoolPropOutput key) {
            if (!key.isDerivative()) {
                return finite(keyedOutput.with(1, outputs.get(key)).call().doubleResult(), key);
            }
            for (int part = 0; part < 3; part++) {
                partialDerivative.with(1 + part, outputs.get(key.part(part)));
            }
            return finite(partialDerivative.call().doubleResult(), key);
        }

        private double finite(double value, CoolPropOutput key) {
            if (reports.failed() || !(Math.abs(value) < HUGE)) {
                throw new PropertyFailure(fluid, lastInputs.describe(first, second), key + ": " + reports.take());
            }
            return value;
        }
    }
}
