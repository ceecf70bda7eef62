"""Puts requests to ./penstock answer, and judges whether its memory stays flat.

Usage: answer_load.py [--requests 10000] [--every 1000] [--cheap] [--command "./penstock answer"]

Balances of four demo concepts at chamber pressures that move, with a wrong request among every twenty, written without waiting for
answers. With --cheap balances of the smallest demo engine by turns with fluid states, burnt mixtures and lists. Every so many answers the live heap is read (a full collection, by jcmd).

Judged, exit code 1 if anything fails:
- each request has one answer, in order, and only wrong ones have problems;
- the live heap at the end is at most a tenth, and 8 MB, above that after the first reading.
Printed: live heap and processor time at each reading.
"""

import argparse
import json
import os
import pathlib
import shlex
import subprocess
import sys
import threading

from server_load import live_megabytes

HOME = pathlib.Path(__file__).resolve().parents[2]
# Concepts, with the chamber pressures (MPa) between which they are asked for.
CONCEPTS = [("heron", 6, 9), ("gannet", 16, 20), ("dunlin", 0.8, 1.1), ("avocet", 1, 1.6)]
WRONG_EVERY = 20
STEPS = 97


def cheap(number):
    """A request that takes milliseconds, of another kind each time; none if it is the turn of a balance."""
    moved = number * 31 % STEPS / STEPS
    state = ["methane", "--pressure", "10MPa", "--temperature", "%.2fK" % (110 + 200 * moved)]
    mixture = ["--oxidizer", "oxygen", "--fuel", "methane", "--mixture-ratio", "%.3f" % (2.6 + moved), "--pressure", "10MPa"]
    kinds = [None, ("fluid", state), None, ("combust", mixture), ("list", ["cycles"])]
    kind = kinds[number % len(kinds)]
    return kind and {"id": number, "command": kind[0], "options": kind[1]}


def request(number, only_cheap):
    if only_cheap and number % WRONG_EVERY != 7 and cheap(number):
        return cheap(number)
    name, low, high = CONCEPTS[2 if only_cheap else number % len(CONCEPTS)]
    pressure = low + (high - low) * (number * 31 % STEPS) / STEPS
    key = "engine.chamber_presure" if number % WRONG_EVERY == 7 else "engine.chamber_pressure"
    return {"id": number, "command": "balance", "case": name, "set": {key: "%.4f MPa" % pressure}}


def processor_time(process):
    fields = pathlib.Path("/proc/%d/stat" % process).read_text().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def send(stream, count, only_cheap):
    for number in range(count):
        stream.write(json.dumps(request(number, only_cheap)) + "\n")
        stream.flush()


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--requests", type=int, default=10000)
    parser.add_argument("--every", type=int, default=1000)
    parser.add_argument("--cheap", action="store_true")
    parser.add_argument("--command", default="%s answer" % (HOME / "penstock"))
    options = parser.parse_args()
    server = subprocess.Popen(shlex.split(options.command), stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
    threading.Thread(target=send, args=(server.stdin, options.requests, options.cheap), daemon=True).start()
    failures = []
    heaps = []
    for number in range(options.requests):
        line = server.stdout.readline()
        if not line:
            failures.append("no answer after %d" % number)
            break
        answer = json.loads(line)
        wrong = number % WRONG_EVERY == 7
        if answer["id"] != number or (answer["exit_code"] == 0) == wrong:
            failures.append("request %d was answered by %s" % (number, line[:200]))
        if (number + 1) % options.every == 0:
            heaps.append(live_megabytes(server.pid))
            used = processor_time(server.pid)
            print("%6d answers: live heap %.1f MB, processor time %.1f s" % (number + 1, heaps[-1], used), flush=True)
    if heaps and heaps[-1] > 1.1 * heaps[0] + 8:
        failures.append("the live heap grew from %.1f to %.1f MB" % (heaps[0], heaps[-1]))
    server.stdin.close()
    server.wait()
    for failure in failures[:20]:
        print("FAILED: " + failure)
    sys.exit(1 if failures else 0)


if __name__ == "__main__":
    main()
