package dev.penstock.fluids.coolprop;

import dev.penstock.fluids.FluidLibrary;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** The ways to CoolProp that this machine offers; test classes of fluids run once by each. */
public enum CoolPropWay {
    /** CoolProp's own shared library. */
    LIBRARY {
        @Override
        boolean isHere() {
            return System.getenv("PENSTOCK_COOLPROP") != null;
        }

        @Override
        CoolPropLibrary load() {
            return CoolPropSharedLibrary.load(Path.of(System.getenv("PENSTOCK_COOLPROP")));
        }
    },
    /** The wheel in this process. */
    PROCESS {
        @Override
        boolean isHere() {
            return PythonRuntime.find(FOLDER).isPresent();
        }

        @Override
        CoolPropLibrary load() {
            return CoolPropWheel.load(FOLDER, PythonRuntime.find(FOLDER).orElseThrow());
        }
    },
    /** The wheel in a process of its own. */
    WORKER {
        @Override
        boolean isHere() {
            return true;
        }

        @Override
        CoolPropLibrary load() {
            return CoolPropWorker.load(FOLDER);
        }
    };

    public static final Path HOME = Path.of("").toAbsolutePath();
    private static final Path FOLDER = HOME.resolve(".penstock/coolprop");

    private CoolPropLibrary library;
    private final FluidLibrary fluids = FluidLibrary.open(Path.of("").toAbsolutePath(), this::library);

    public static List<CoolPropWay> here() {
        return Arrays.stream(values()).filter(CoolPropWay::isHere).toList();
    }

    abstract boolean isHere();

    /** @return CoolProp, reached anew */
    abstract CoolPropLibrary load();

    /** @return CoolProp, reached once */
    synchronized CoolPropLibrary library() {
        if (library == null) {
            library = load();
        }
        return library;
    }

    /** @return the fluids of this project by this way */
    public FluidLibrary fluids() {
        return fluids;
    }
}
