#!/usr/bin/env python3
"""Uses Penstock from Python: a table of an engine, many balances in one process, a Parquet file, a plot.

    python3 docs/examples/engine_study.py [FOLDER]

Needs nothing but Python's standard library. With pandas (and pyarrow) the Parquet file is read back, with matplotlib the table is
plotted. The command that runs Penstock is ./penstock in the current folder, or what the environment variable PENSTOCK says.
"""

import json
import os
import pathlib
import shlex
import subprocess
import sys

PENSTOCK = shlex.split(os.environ.get("PENSTOCK", "./penstock"))


def ask(*words):
    """One command; its JSON document. A refusal ends the program with Penstock's own sentence."""
    run = subprocess.run([*PENSTOCK, *words, "--json"], stdout=subprocess.PIPE, encoding="utf-8")
    if run.returncode != 0:
        sys.exit(run.returncode)
    return json.loads(run.stdout)


def ask_many(requests):
    """Many requests to one process, which starts once; an answer for each, in order."""
    lines = "".join(json.dumps(request) + "\n" for request in requests)
    run = subprocess.run([*PENSTOCK, "answer"], input=lines, stdout=subprocess.PIPE, encoding="utf-8", check=True)
    return [json.loads(line) for line in run.stdout.splitlines()]


def table(folder):
    """Thrust and impulse over altitude and throttle, of the engine as built."""
    document = ask("table", "heron", "--altitude", "0..40km:5", "--throttle", "0.7..1:2", "--mixture-ratio", "2.34")
    print(document["name"], "by", document["command"])
    for column in document["columns"]:
        print("  ", column["name"], "-", column["title"], column["unit"])
    for point in document["points"]:
        if point["failure"]:
            print("  does not run:", point["failure"])
        elif point["throttle"] == 1:
            print("   %5.1f km  %7.1f kN  %6.1f s" % (point["altitude_m"] / 1e3, point["thrust_N"] / 1e3, point["isp_s"]))
    return document["points"]


def best_pressure():
    """Impulse over chamber pressure; one of the pressures cannot be, and says why in its place."""
    pressures = [5, 6, 7, 8, 9, 10, -1]
    answers = ask_many(
        {"id": p, "command": "balance", "case": "heron", "set": {"engine.chamber_pressure": "%g MPa" % p}}
        for p in pressures
    )
    found = {}
    for answer in answers:
        if answer["exit_code"] == 0:
            found[answer["id"]] = answer["answer"]["engine"]["isp_vacuum_s"]
        else:
            print("   %g MPa: %s" % (answer["id"], "; ".join(answer["problems"])))
    best = max(found, key=found.get)
    print("best of", len(found), "balances: %g MPa with %.1f s" % (best, found[best]))


def parquet(folder):
    """The same table as a file for data frames."""
    file = folder / "heron.parquet"
    subprocess.run(
        [*PENSTOCK, "table", "heron", "--altitude", "0..40km:5", "--throttle", "1", "--mixture-ratio", "2.34",
         "--output", str(file)],
        stdout=subprocess.DEVNULL,
        check=True,
    )
    print("wrote", file.name, "of", file.stat().st_size, "bytes")
    try:
        import pandas
        frame = pandas.read_parquet(file)
    except ImportError:
        print("pandas or pyarrow is not there; the Parquet file was not read back")
        return
    print(frame[["altitude_m", "thrust_N", "isp_s"]])


def plot(folder, points):
    """Thrust over altitude, a line for each throttle setting."""
    try:
        import matplotlib
    except ImportError:
        print("matplotlib is not there; nothing was plotted")
        return
    matplotlib.use("Agg")
    from matplotlib import pyplot

    for throttle in sorted({point["throttle"] for point in points}):
        line = [point for point in points if point["throttle"] == throttle and not point["failure"]]
        pyplot.plot(
            [point["altitude_m"] / 1e3 for point in line],
            [point["thrust_N"] / 1e3 for point in line],
            label="throttle %g" % throttle,
        )
    pyplot.xlabel("altitude (km)")
    pyplot.ylabel("thrust (kN)")
    pyplot.legend()
    pyplot.savefig(folder / "heron.png")
    print("wrote heron.png")


def main():
    folder = pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else ".")
    folder.mkdir(parents=True, exist_ok=True)
    points = table(folder)
    best_pressure()
    parquet(folder)
    plot(folder, points)


if __name__ == "__main__":
    main()
