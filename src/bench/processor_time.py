"""Wall-clock and processor time of a command with all processes it started, those that outlive it included (Linux).

Usage: processor_time.py COMMAND...
"""

import ctypes
import os
import resource
import subprocess
import sys
import time

PR_SET_CHILD_SUBREAPER = 36


def main():
    ctypes.CDLL(None).prctl(PR_SET_CHILD_SUBREAPER, 1, 0, 0, 0)
    start = time.monotonic()
    code = subprocess.run(sys.argv[1:], check=False).returncode
    wall = time.monotonic() - start
    try:
        while True:
            os.wait()
    except ChildProcessError:
        pass
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    print("wall %.2f s, processor %.2f s (system %.2f s)" % (wall, used.ru_utime + used.ru_stime, used.ru_stime), file=sys.stderr)
    sys.exit(code)


if __name__ == "__main__":
    main()
