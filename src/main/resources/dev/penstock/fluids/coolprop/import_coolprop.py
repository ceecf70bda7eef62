# Runs once inside the process of Penstock (CoolPropWheel.java) or of its worker (CoolPropWorkerProcess.java), after lines
# that set "folder" and "names".
# Leaves "capsule" and "numbers", or the reason of failure in "problem".
problem = numbers = ""
capsule = None


def quietly(action):
    """Runs action with standard output held back, then passes on everything but CoolProp's own notice."""
    import ctypes
    import os

    libc = ctypes.CDLL("ucrtbase" if os.name == "nt" else None)
    libc.fflush(None)
    kept = os.dup(1)
    read, write = os.pipe()
    os.dup2(write, 1)
    os.close(write)
    try:
        action()
    finally:
        libc.fflush(None)
        os.dup2(kept, 1)
        os.close(kept)
        with os.fdopen(read, "rb") as pipe:
            lines = [line for line in pipe if not line.startswith(b"CoolProp: superancillaries have been disabled")]
        if lines:
            os.write(1, b"".join(lines))


def load():
    import os
    import sys
    import types

    # The package's own __init__ imports plotting and compatibility modules; only the extension module is wanted.
    package = types.ModuleType("CoolProp")
    package.__path__ = [os.path.join(folder, "CoolProp")]
    sys.modules["CoolProp"] = package
    # What an earlier attempt took from another folder does not count, but is kept: an extension module that is begun twice in one
    # process ends it.
    loaded = sys.__dict__.setdefault("penstock_coolprop", {})
    earlier = sys.modules.pop("CoolProp.CoolProp", None)
    if earlier is not None:
        loaded[os.path.dirname(earlier.__file__)] = earlier
    if package.__path__[0] in loaded:
        sys.modules["CoolProp.CoolProp"] = loaded[package.__path__[0]]
    # Without its tables of saturation curves CoolProp loads in 0.3 s instead of 1.9 s; it then solves for saturation.
    os.environ["COOLPROP_DISABLE_SUPERANCILLARIES_ENTIRELY"] = "1"
    import CoolProp.CoolProp as core

    quietly(lambda: core.AbstractState("HEOS", "Water"))
    return core._capi, " ".join(str(int(getattr(core, name))) for name in names.split() if "/" not in name)


try:
    capsule, numbers = load()
except BaseException as error:
    problem = "%s: %s" % (type(error).__name__, error)
