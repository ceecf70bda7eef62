"""Fetches the Python wheels that Penstock uses into a folder of the project, once.

Usage: fetch_packages.py DIR NAME...

Each NAME below becomes DIR/NAME with a file VERSION inside. CoolProp is needed to run; Cantera only to test, as an
independent reference. A package appears whole or not at all, so an interrupted fetch is repeated, not trusted; of two
fetches at once the second waits for the first.

Nothing comes but what the file packages.lock beside this script pins: wheels only, each of the version there, and checked by
its hash where the lock has a wheel for this interpreter and machine. With PENSTOCK_WHEELS=FOLDER they are taken from that
folder of wheels, and no package index is asked.
"""

import contextlib
import importlib.util
import os
import re
import shutil
import subprocess
import sys
import tempfile

# What each package needs, itself first: the metadata of the wheels are not asked, so nothing else is drawn in.
PARTS = {"coolprop": ["coolprop", "numpy"], "cantera": ["cantera", "numpy", "ruamel-yaml", "typing-extensions"]}


class Lock:
    """The wheels of packages.lock: one a line, hash and file name, as sha256sum prints them."""

    def __init__(self, path):
        self.wheels = []
        with open(path, encoding="utf-8") as lines:
            for number, line in enumerate(lines, 1):
                text = line.partition("#")[0].strip()
                wheel = re.fullmatch(r"([0-9a-f]{64})  ((\w+)-([\w.]+)-(\w+)-\w+-[\w.]+\.whl)", text)
                if wheel is None and text:
                    sys.exit("%s: line %d is %s; a SHA-256, two spaces and the name of a wheel are needed" % (path, number, text))
                if text:
                    digest, file, name, version, python = wheel.groups()
                    self.wheels.append((name.replace("_", "-"), version, python, digest, file))

    def version(self, name):
        """The version for this Python; for a Python that the lock does not know, that of the last wheel there."""
        mine = "cp%d%d" % sys.version_info[:2]
        of_name = [wheel for wheel in self.wheels if wheel[0] == name]
        for_me = [wheel for wheel in of_name if wheel[2] == mine]
        return (for_me or of_name)[-1][1]

    def hashes(self, name, tags):
        """Hashes of the wheels that serve this interpreter on this machine."""
        version = self.version(name)
        return [w[3] for w in self.wheels if w[:2] == (name, version) and serves(w[4], tags)]


def serves(file, tags):
    python, abi, platform = file[: -len(".whl")].split("-")[-3:]
    every = ((p, a, m) for p in python.split(".") for a in abi.split(".") for m in platform.split("."))
    return any(tag in tags for tag in every)


def own_tags():
    """The names of wheels that pip would install here; none if this pip does not tell."""
    try:
        from pip._vendor.packaging.tags import sys_tags
    except ImportError:
        return frozenset()
    return frozenset((tag.interpreter, tag.abi, tag.platform) for tag in sys_tags())


def installed(target, version):
    try:
        with open(os.path.join(target, "VERSION"), encoding="utf-8") as stamp:
            return stamp.read().strip() == stamp_text(version)
    except OSError:
        return False


def stamp_text(version):
    """Binary wheels belong to one Python version; another interpreter needs its own."""
    return "%s python%d.%d" % (version, sys.version_info[0], sys.version_info[1])


def fetch(folder, name, lock):
    target = os.path.join(folder, name)
    version = lock.version(name)
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
                install(folder, name, lock)
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


def install(folder, name, lock):
    target = os.path.join(folder, name)
    version = lock.version(name)
    print("fetching %s %s (once) ..." % (name, version), file=sys.stderr, flush=True)
    scratch = tempfile.mkdtemp(prefix=name + "-", dir=folder)
    wheels = tempfile.mkdtemp(prefix=name + "-", dir=folder)
    try:
        tags = own_tags()
        hashes = {part: lock.hashes(part, tags) for part in PARTS[name]}
        pinned = {part: "%s==%s" % (part, lock.version(part)) for part in PARTS[name]}
        checked = [part for part in PARTS[name] if hashes[part]]
        unchecked = [pinned[part] for part in PARTS[name] if not hashes[part]]
        if checked:
            required = os.path.join(wheels, "required.txt")
            with open(required, "w", encoding="utf-8") as lines:
                for part in checked:
                    lines.write(" ".join([pinned[part]] + ["--hash=sha256:" + h for h in hashes[part]]) + "\n")
            pip(name, version, scratch, ["--require-hashes", "-r", required])
        if unchecked:
            print(
                "taking %s by version, unchecked: src/build/packages.lock has no hash for Python %d.%d on this machine"
                % ((" and ".join(unchecked),) + sys.version_info[:2]),
                file=sys.stderr,
                flush=True,
            )
            pip(name, version, scratch, unchecked)
        os.chmod(scratch, 0o755)  # for whoever may read the checkout, not only for who fetched
        with open(os.path.join(scratch, "VERSION"), "w", encoding="utf-8") as stamp:
            stamp.write(stamp_text(version) + "\n")
        if os.path.isdir(target):
            shutil.rmtree(target)
        os.rename(scratch, target)
    finally:
        shutil.rmtree(scratch, ignore_errors=True)
        shutil.rmtree(wheels, ignore_errors=True)


def pip(name, version, scratch, what):
    command = [sys.executable, "-m", "pip", "install", "--quiet", "--disable-pip-version-check", "--no-input"]
    command += ["--only-binary", ":all:", "--no-deps", "--target", scratch]
    folder = os.environ.get("PENSTOCK_WHEELS", "")
    if folder:
        if not os.path.isdir(folder):
            sys.exit("PENSTOCK_WHEELS is %s; it must be a folder with the wheels of packages.lock" % folder)
        command += ["--no-index", "--find-links", os.path.abspath(folder)]
    done = subprocess.run(command + what, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True, check=False)
    if done.returncode == 0:
        return
    if "DO NOT MATCH THE HASHES" in done.stdout:
        sys.exit(
            "Penstock refuses the Python package %s %s or what it needs: a wheel has another SHA-256 than src/build/packages.lock "
            "says (%s)" % (name, version, ", ".join(line.strip() for line in done.stdout.splitlines() if "Expected" in line or "Got" in line))
        )
    lines = [line for line in done.stdout.splitlines() if "ERROR" in line]
    sys.exit(
        "Penstock needs the Python package %s %s, which %s -m pip could not install (%s); connect to a package "
        "index that has it for Python %d.%d, name a folder with its wheels in PENSTOCK_WHEELS, or name another interpreter in "
        "PENSTOCK_PYTHON, then run this again"
        % (
            (name, version, sys.executable, lines[-1].strip() if lines else "exit code %d" % done.returncode)
            + sys.version_info[:2]
        )
    )


def main():
    if len(sys.argv) < 3 or any(name not in PARTS for name in sys.argv[2:]):
        sys.exit("usage: fetch_packages.py DIR NAME..., where NAME is one of " + ", ".join(sorted(PARTS)))
    lock = Lock(os.path.join(os.path.dirname(os.path.abspath(__file__)), "packages.lock"))
    for name in sys.argv[2:]:
        fetch(sys.argv[1], name, lock)


if __name__ == "__main__":
    main()
