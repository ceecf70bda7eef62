package dev.penstock.fluids.coolprop;

import com.sun.jna.Memory;
import com.sun.jna.NativeLibrary;
import com.sun.jna.NativeLong;
import com.sun.jna.Pointer;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.coolprop.NativeCall.Type;
import java.io.File;
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
                    + e.getMessage().lines().findFirst().orElse("").replaceAll(":$", "")
                    + "); give the path of libCoolProp, or unset it and run ./penstock demo");
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
        Reports reports = new Reports();
        long number = reporting(reports, "AbstractState_factory", Type.LONG, Type.POINTER, Type.POINTER)
                .with(0, cString(FULL_EQUATIONS))
                .with(1, cString(fluid))
                .call()
                .longResult();
        if (reports.failed()) {
            throw new PropertyFailure(id, "any input", reports.take());
        }
        Pointer free = library.getFunction("AbstractState_free");
        return new Handle(id, reports, number).freedBy(() -> {
            NativeCall call = new NativeCall(free, Type.VOID, Type.LONG, Type.POINTER, Type.POINTER, Type.LONG);
            new Reports().attach(call, 1).with(0, number).call();
        });
    }

    /** A call whose last three arguments are the error number, the message and its size. */
    private NativeCall reporting(Reports reports, String function, Type result, Type... own) {
        Type[] types = Arrays.copyOf(own, own.length + 3);
        types[own.length] = Type.POINTER;
        types[own.length + 1] = Type.POINTER;
        types[own.length + 2] = Type.LONG;
        return reports.attach(new NativeCall(library.getFunction(function), result, types), own.length);
    }

    private NativeHandle.Calls calls(Reports reports, long number) {
        return new NativeHandle.Calls(
                reporting(reports, "AbstractState_update", Type.VOID, Type.LONG, Type.LONG, Type.DOUBLE, Type.DOUBLE)
                        .with(0, number),
                reporting(reports, "AbstractState_keyed_output", Type.DOUBLE, Type.LONG, Type.LONG)
                        .with(0, number),
                reporting(
                                reports,
                                "AbstractState_first_partial_deriv",
                                Type.DOUBLE,
                                Type.LONG,
                                Type.LONG,
                                Type.LONG,
                                Type.LONG)
                        .with(0, number),
                reporting(reports, "AbstractState_unspecify_phase", Type.VOID, Type.LONG)
                        .with(0, number));
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

    private final class Handle extends NativeHandle {

        private final Reports reports;

        Handle(String id, Reports reports, long number) {
            super(id, calls(reports, number), inputs, outputs);
            this.reports = reports;
        }

        @Override
        boolean updateFailed() {
            return reports.failed();
        }

        @Override
        boolean outputFailed() {
            return reports.failed();
        }

        @Override
        String reason() {
            return reports.take();
        }
    }
}
