#!/usr/bin/env python3
"""Writes reports of the demo engines again and again, several at once, each in a process of its own, and counts what fails.

Usage: python3 src/bench/report_runs.py [--runs 200] [--at-once 4] [--minutes 30]

Each run is ./penstock balance DEMO --report PLACE, every fourth as PDF. It fails by another exit code than 0, by a word on standard
error that is no line of the launcher, or by a page that is cut. Exit code 1 if any fails; what the failed ones said is printed.
"""

import argparse
import concurrent.futures
import itertools
import pathlib
import subprocess
import sys
import tempfile
import time

HOME = pathlib.Path(__file__).resolve().parent.parent.parent
LONGEST = 600


def run(number, demo, folder):
    paper = number % 4 == 3
    place = folder / ("%d.%s" % (number, "pdf" if paper else "html"))
    begun = time.monotonic()
    try:
        done = subprocess.run(
            [HOME / "penstock", "balance", demo, "--report", place], capture_output=True, text=True, timeout=LONGEST
        )
    except subprocess.TimeoutExpired:
        return demo, LONGEST, "not done after %d s" % LONGEST
    said = [line for line in done.stderr.splitlines() if not line.startswith("penstock: building") and "(once)" not in line]
    fault = ""
    if done.returncode != 0 or said:
        fault = "exit code %d, %s" % (done.returncode, " | ".join(said)[:2000])
    elif not whole(place, paper):
        fault = "the page is cut"
    place.unlink(missing_ok=True)
    return demo, time.monotonic() - begun, fault


def whole(place, paper):
    text = place.read_bytes() if place.exists() else b""
    return text.rstrip().endswith(b"%%EOF" if paper else b"</html>")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--runs", type=int, default=200)
    parser.add_argument("--at-once", type=int, default=4)
    parser.add_argument("--minutes", type=float, default=30, help="no run begins later")
    options = parser.parse_args()
    demos = sorted(file.stem for file in (HOME / "cycles").glob("*.toml"))
    end = time.monotonic() + 60 * options.minutes
    times, faults = [], 0
    with tempfile.TemporaryDirectory() as folder:
        jobs = zip(range(options.runs), itertools.cycle(demos))

        def work(job):
            return run(*job, pathlib.Path(folder)) if time.monotonic() < end else None

        with concurrent.futures.ThreadPoolExecutor(options.at_once) as pool:
            for number, done in enumerate(pool.map(work, jobs)):
                if done is None:
                    continue
                demo, seconds, fault = done
                times.append(seconds)
                if fault:
                    faults += 1
                    print("FAILED: run %d, %s: %s" % (number, demo, fault), flush=True)
    times.sort()
    if times:
        print("%d runs, %d failed; %.1f s in the median, %.1f s at the longest" % (len(times), faults, times[len(times) // 2], times[-1]))
    return 1 if faults or not times else 0


if __name__ == "__main__":
    sys.exit(main())
