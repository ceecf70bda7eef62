package dev.penstock.fluids.coolprop;

import com.sun.jna.Function;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Pointer;
import dev.penstock.errors.PropertyFailure;
import dev.penstock.fluids.coolprop.NativeCall.Type;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * CoolProp from its official Python wheel. The interpreter is started once, inside this process, to import the
 * extension module; its capsule {@code CoolProp._capi} is a table of C functions (the wheel's
 * {@code include/CoolProp/detail/state_capi.h}), and no Python runs after that. Enumeration values are read from the
 * module, so that a renumbered CoolProp is served as well.
 */
final class CoolPropWheel extends CoolPropLibrary {

    /** Fields of the table of functions, in its order. */
    private enum Field {
        MAKE,
        DESTROY,
        UPDATE,
        KEYED_OUTPUT,
        FIRST_PARTIAL_DERIVATIVE,
        LAST_ERROR,
        SET_MOLE_FRACTIONS,
        SPECIFY_PHASE,
        UNSPECIFY_PHASE
    }

    private final Pointer table;
    private final Map<CoolPropInputs, Long> inputs = new EnumMap<>(CoolPropInputs.class);
    private final Map<CoolPropOutput, Long> outputs = new EnumMap<>(CoolPropOutput.class);

    private final String version;

    private CoolPropWheel(Pointer table, String numbers, String version) {
        this.version = version;
        this.table = table;
        Iterator<Long> number =
                Arrays.stream(numbers.split(" ")).map(Long::valueOf).iterator();
        for (CoolPropInputs pair : CoolPropInputs.values()) {
            inputs.put(pair, number.next());
        }
        for (CoolPropOutput key : CoolPropOutput.keyed()) {
            outputs.put(key, number.next());
        }
    }

    /**
     * @param folder where the wheel was installed
     * @param runtime the interpreter's shared library
     * @return CoolProp
     * @throws PropertyFailure if the wheel or libpython cannot be loaded
     */
    static CoolPropWheel load(Path folder, PythonRuntime runtime) {
        NativeLibrary python = runtime.start();
        int lock = python.getFunction("PyGILState_Ensure").invokeInt(args());
        try {
            Pointer main = run(python, folder);
            String problem = text(python, main, "problem");
            if (!problem.isEmpty()) {
                throw failure("the CoolProp wheel in " + folder + " cannot be imported (" + problem + ")");
            }
            Pointer capsule = python.getFunction("PyObject_GetAttrString").invokePointer(args(main, "capsule"));
            Pointer table = python.getFunction("PyCapsule_GetPointer").invokePointer(args(capsule, "CoolProp._capi"));
            return new CoolPropWheel(table, text(python, main, "numbers"), PythonRuntime.stamp(folder));
        } finally {
            python.getFunction("PyGILState_Release").invokeVoid(args(lock));
        }
    }

    private static Pointer run(NativeLibrary python, Path folder) {
        String script = importScript(folder, CoolPropOutput.keyed()) + "\0";
        python.getFunction("PyRun_SimpleString").invokeInt(args((Object) script.getBytes(StandardCharsets.UTF_8)));
        return python.getFunction("PyImport_AddModule").invokePointer(args("__main__"));
    }

    /** The lines that import the wheel's extension module; they know outputs by the order in which they are given. */
    static String importScript(Path folder, List<CoolPropOutput> outputs) {
        String names = Stream.concat(
                        Arrays.stream(CoolPropInputs.values()).map(CoolPropInputs::nativeName),
                        outputs.stream().map(CoolPropOutput::pythonName))
                .collect(Collectors.joining(" "));
        return "folder = " + quoted(folder.toString()) + "\nnames = " + quoted(names) + "\n"
                + resource("import_coolprop.py");
    }

    static String resource(String name) {
        try (InputStream stream = CoolPropWheel.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(name + " is not in the jar", e);
        }
    }

    private static String text(NativeLibrary python, Pointer module, String name) {
        Pointer object = python.getFunction("PyObject_GetAttrString").invokePointer(args(module, name));
        Pointer utf8 = object == null
                ? Pointer.NULL
                : python.getFunction("PyUnicode_AsUTF8").invokePointer(args(object));
        return utf8 == null ? "python gave no " + name : utf8.getString(0, "UTF-8");
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }

    private static Object[] args(Object... arguments) {
        return arguments;
    }

    @Override
    public String version() {
        return version;
    }

    @Override
    CoolPropHandle open(String fluid, String id) {
        Pointer pointer;
        synchronized (this) {
            pointer = Function.getFunction(field(Field.MAKE)).invokePointer(args(FULL_EQUATIONS, fluid));
        }
        NativeCall lastError = new NativeCall(field(Field.LAST_ERROR), Type.POINTER);
        if (pointer == null) {
            throw new PropertyFailure(id, "any input", message(lastError));
        }
        Pointer destroy = field(Field.DESTROY);
        return new Handle(id, pointer, lastError)
                .freedBy(() -> Function.getFunction(destroy).invokeVoid(args(pointer)));
    }

    private Pointer field(Field field) {
        return table.getPointer((long) field.ordinal() * Long.BYTES);
    }

    private NativeHandle.Calls calls(Pointer state) {
        return new NativeHandle.Calls(
                new NativeCall(field(Field.UPDATE), Type.VOID, Type.POINTER, Type.LONG, Type.DOUBLE, Type.DOUBLE)
                        .with(0, state),
                new NativeCall(field(Field.KEYED_OUTPUT), Type.DOUBLE, Type.POINTER, Type.LONG).with(0, state),
                new NativeCall(
                                field(Field.FIRST_PARTIAL_DERIVATIVE),
                                Type.DOUBLE,
                                Type.POINTER,
                                Type.LONG,
                                Type.LONG,
                                Type.LONG)
                        .with(0, state),
                new NativeCall(field(Field.UNSPECIFY_PHASE), Type.VOID, Type.POINTER).with(0, state));
    }

    private static String message(NativeCall lastError) {
        Pointer message = lastError.call().pointerResult();
        return message == null ? "CoolProp gave no number and no reason" : message.getString(0, "UTF-8");
    }

    private final class Handle extends NativeHandle {

        private final NativeCall lastError;

        Handle(String id, Pointer state, NativeCall lastError) {
            super(id, calls(state), inputs, outputs);
            this.lastError = lastError;
        }

        @Override
        boolean updateFailed() {
            return lastError.call().pointerResult() != null;
        }

        /** What has no value comes as a number that is none. */
        @Override
        boolean outputFailed() {
            return false;
        }

        @Override
        String reason() {
            return message(lastError);
        }
    }
}
