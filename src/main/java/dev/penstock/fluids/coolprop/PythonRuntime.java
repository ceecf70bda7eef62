package dev.penstock.fluids.coolprop;

import com.sun.jna.Library;
import com.sun.jna.Memory;
import com.sun.jna.Native;
import com.sun.jna.NativeLibrary;
import com.sun.jna.Platform;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The shared library of the Python interpreter for which the wheel was fetched. Asking the interpreter where it may lie
 * costs a process, so the answer is kept in a file beside the wheel.
 *
 * @param library path of libpython
 * @param home installation prefix of the interpreter
 */
record PythonRuntime(Path library, String home) {

    static final String RUN_FIRST =
            "run ./penstock demo, which fetches it once, or set PENSTOCK_COOLPROP to the path of libCoolProp";

    private static final String CACHE = "python.txt";
    private static final String NAMED = "PENSTOCK_PYTHON";
    private static final int CANDIDATES = 2;
    private static final int RTLD_NOW = 2;
    private static final int RTLD_GLOBAL = Platform.isMac() ? 8 : 0x100;
    private static final int ANSWER_SECONDS = 20;

    /** Texts whose address the interpreter keeps; they must outlive it. */
    private static final List<Memory> KEPT = new ArrayList<>();

    /** Prints the version, the prefix and where the library may lie, one a line. */
    private static final String QUESTION = String.join(
            "\n",
            "import os, sys, sysconfig as s",
            "v = lambda name: str(s.get_config_var(name) or '')",
            "print('python%d.%d' % sys.version_info[:2])",
            "print(sys.base_prefix)",
            "names = [n for n in (v('INSTSONAME'), v('LDLIBRARY'), 'python%d%d.dll' % sys.version_info[:2]) if n]",
            "folders = [v('LIBDIR'), os.path.join(v('LIBDIR'), v('MULTIARCH')), v('LIBPL'), v('PYTHONFRAMEWORKPREFIX'),",
            "           sys.base_prefix, os.path.join(sys.base_prefix, 'lib')]",
            "paths = [os.path.join(f, n) for n in names for f in folders]",
            "print(*dict.fromkeys(p for p in paths if not p.endswith('.a')), sep='\\n')");

    /** @return the command that starts the interpreter: the one named in {@code PENSTOCK_PYTHON}, else python3 */
    static String command() {
        String named = System.getenv(NAMED);
        if (named != null && !named.isBlank()) {
            return named;
        }
        return Platform.isWindows() ? "python" : "python3";
    }

    /**
     * @param folder where the wheel was installed
     * @return the interpreter's library, if it has one
     * @throws dev.penstock.errors.PropertyFailure if there is no interpreter, or it is of another version than the wheel
     */
    static Optional<PythonRuntime> find(Path folder) {
        List<String> known = known(folder);
        String home = known.get(1);
        return known.stream()
                .skip(CANDIDATES)
                .filter(path -> !path.isEmpty())
                .map(Path::of)
                .filter(Files::isRegularFile)
                .findFirst()
                .map(path -> new PythonRuntime(path, home));
    }

    /** The interpreter's command, its prefix, and where its library may lie: kept in a file, or asked and kept. */
    private static List<String> known(Path folder) {
        Path cache = folder.resolve(CACHE);
        try {
            List<String> kept = Files.readAllLines(cache);
            if (kept.size() > CANDIDATES && kept.get(0).equals(command())) {
                return kept;
            }
        } catch (IOException e) {
            // no cache yet: ask
        }
        List<String> known = new ArrayList<>(ask(folder));
        known.set(0, command());
        try {
            Files.write(cache, known);
        } catch (IOException e) {
            // a folder that cannot be written to costs the question again next time, nothing else
        }
        return known;
    }

    private static List<String> ask(Path folder) {
        if (!Files.isDirectory(folder.resolve("CoolProp"))) {
            throw CoolPropLibrary.failure("CoolProp is not in " + folder + "; " + RUN_FIRST);
        }
        List<String> answer = output(command(), "-I", "-c", QUESTION);
        String version = answer.get(0);
        if (!stamp(folder).endsWith(version)) {
            throw CoolPropLibrary.failure("the CoolProp wheel in " + folder + " was fetched for "
                    + stamp(folder).replaceFirst(".* ", "") + ", but " + command() + " is " + version
                    + "; run ./penstock demo to fetch it again");
        }
        return answer;
    }

    /** Versions of CoolProp and of the Python that it was fetched for. */
    static String stamp(Path folder) {
        try {
            return Files.readString(folder.resolve("VERSION")).strip();
        } catch (IOException e) {
            throw CoolPropLibrary.failure("the CoolProp wheel in " + folder
                    + " is incomplete (no VERSION file); run ./penstock demo to fetch it again");
        }
    }

    private static List<String> output(String... command) {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.getOutputStream().close();
            List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
            if (process.waitFor(ANSWER_SECONDS, TimeUnit.SECONDS)
                    && process.exitValue() == 0
                    && lines.size() > CANDIDATES) {
                return lines;
            }
        } catch (IOException e) {
            // no such program: the same advice
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        throw CoolPropLibrary.failure(command() + " does not run here; install Python 3, name an interpreter in "
                + NAMED + ", or set PENSTOCK_COOLPROP to the path of libCoolProp");
    }

    /**
     * Loads the library and starts the interpreter, without its site packages and without reading the user's
     * environment. Its symbols are made global, as extension modules need them.
     *
     * @return the library; no thread holds the interpreter's lock
     */
    NativeLibrary start() {
        Map<String, Object> options =
                Platform.isWindows() ? Map.of() : Map.of(Library.OPTION_OPEN_FLAGS, RTLD_NOW | RTLD_GLOBAL);
        NativeLibrary python;
        try {
            python = NativeLibrary.getInstance(library.toString(), options);
        } catch (LinkageError e) {
            throw CoolPropLibrary.failure("libpython at " + library + " cannot be loaded (" + e.getMessage() + ")");
        }
        if (python.getFunction("Py_IsInitialized").invokeInt(new Object[0]) != 0) {
            return python;
        }
        for (String flag : List.of("Py_NoSiteFlag", "Py_IgnoreEnvironmentFlag", "Py_IsolatedFlag")) {
            setFlag(python, flag);
        }
        setHome(python);
        python.getFunction("Py_InitializeEx").invokeVoid(new Object[] {0});
        python.getFunction("PyEval_SaveThread").invokePointer(new Object[0]);
        return python;
    }

    private static void setFlag(NativeLibrary python, String flag) {
        try {
            python.getGlobalVariableAddress(flag).setInt(0, 1);
        } catch (UnsatisfiedLinkError e) {
            // later Pythons drop these flags; they only save start-up time
        }
    }

    private void setHome(NativeLibrary python) {
        try {
            Memory text = new Memory((home.length() + 1L) * Native.WCHAR_SIZE);
            text.setWideString(0, home);
            python.getFunction("Py_SetPythonHome").invokeVoid(new Object[] {text});
            KEPT.add(text);
        } catch (UnsatisfiedLinkError e) {
            // later Pythons drop this call and find their home by the library's own path
        }
    }
}
