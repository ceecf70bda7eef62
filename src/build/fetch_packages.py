"""Fetches the Python wheels that Penstock uses into a folder of the project, once.

Usage: fetch_packages.py DIR NAME...

Each NAME below becomes DIR/NAME with a file VERSION inside. CoolProp is needed to run; Cantera only to test, as an
independent reference. A package appears whole or not at all, so an interrupted fetch is repeated, not trusted; of two
fetches at once the second waits for the first.
"""

import contextlib
import importlib.util
import os
import shutil
import subprocess
import sys
import tempfile

VERSIONS = {"coolprop": "8.0.0", "cantera": "3.2.0"}


def installed(target, version):
    try:
        with open(os.path.join(target, "VERSION"), encoding="utf-8") as stamp:
            return stamp.read().strip() == stamp_text(version)
    except OSError:
        return False


def stamp_text(version):
    """Binary wheels belong to one Python version; another interpreter needs its own."""
    return "%s python%d.%d" % (version, sys.version_info[0], sys.version_info[1])


def fetch(folder, name, version):
    target = os.path.join(folder, name)
    if installed(target, version):
        return
    if importlib.util.find_spec("pip") is None:
        sys.exit(
            "Penstock needs the Python package %s %s, but %s has no pip to fetch it; install pip (on Debian and Ubuntu the "
            "package python3-pip), or name another interpreter in PENSTOCK_PYTHON" % (name, version, sys.executable)
        )
    try:
        os.makedirs(folder, exist_ok=True)
        with locked(os.path.join(folder, "fetch.lock")):
            if not installed(target, version):
                install(folder, name, version)
    except OSError as error:
        sys.exit("Penstock cannot write the Python package %s to %s (%s)" % (name, folder, error))


@contextlib.contextmanager
def locked(path):
    """Held by one process at a time; the system frees it when its holder ends, however that happens."""
    with open(path, "a", encoding="utf-8") as lock:
        if os.name == "nt":
            import msvcrt

            msvcrt.locking(lock.fileno(), msvcrt.LK_LOCK, 1)
        else:
            import fcntl

            fcntl.flock(lock, fcntl.LOCK_EX)
        yield


def install(folder, name, version):
    target = os.path.join(folder, name)
    print("fetching %s %s (once) ..." % (name, version), file=sys.stderr, flush=True)
    scratch = tempfile.mkdtemp(prefix=name + "-", dir=folder)
    try:
        command = [sys.executable, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-input"]
        command += ["--only-binary", ":all:", "--target", scratch, "%s==%s" % (name, version)]
        done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False)
        if done.returncode != 0:
            lines = [line for line in done.stdout.splitlines() if "ERROR" in line]
            sys.exit(
                "Penstock needs the Python package %s %s, which %s -m pip could not install (%s); connect to a package "
                "index that has it for Python %d.%d, or name another interpreter in PENSTOCK_PYTHON, then run this again"
                % (
                    (name, version, sys.executable, lines[-1].strip() if lines else "exit code %d" % done.returncode)
                    + sys.version_info[:2]
                )
            )
        os.chmod(scratch, 0o755)  # for whoever may read the checkout, not only for who fetched
        with open(os.path.join(scratch, "VERSION"), "w", encoding="utf-8") as stamp:
            stamp.write(stamp_text(version) + "\n")
        if os.path.isdir(target):
            shutil.rmtree(target)
        os.rename(scratch, target)
    finally:
        shutil.rmtree(scratch, ignore_errors=True)


def main():
    if len(sys.argv) < 3 or any(name not in VERSIONS for name in sys.argv[2:]):
        sys.exit("usage: fetch_packages.py DIR NAME..., where NAME is one of " + ", ".join(sorted(VERSIONS)))
    for name in sys.argv[2:]:
        fetch(sys.argv[1], name, VERSIONS[name])


if __name__ == "__main__":
    main()
