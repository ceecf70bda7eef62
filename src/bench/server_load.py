"""Puts the local page under load, kills it without warning on the way, and judges what came back and what is on the disk.

Usage: server_load.py [--minutes 10] [--clients 16] [--kills 10] [--time-limit 60] [--slow 0] [--seed 1]

Runs ./penstock serve over a copy of the demo concepts in a temporary folder. Each client is let in as a browser of its own and
then asks at random: balances and drawings, sweeps that it stops, saves that conflict with those of others, reports, PDFs,
vehicles, and wrong input. The kills (SIGKILL) come in the first half, so that the second shows whether memory is flat. --slow
adds as many clients again that share one cookie, invent a page for each question and ask for engines that take long.

Judged, exit code 1 if anything fails:
- every answer has a status that belongs to its question, and every refusal a sentence; a connection breaks off by a kill only;
- every edit that was answered as saved is in its file after each kill and at the end, and every file is whole;
- the server writes no trace, and its live memory does not grow in the second half.
Times are printed by kind of question: number, median, 99th percentile, longest.
"""

import argparse
import collections
import http.client
import json
import os
import pathlib
import random
import re
import shutil
import signal
import socket
import subprocess
import sys
import tempfile
import threading
import time

HOME = pathlib.Path(__file__).resolve().parents[2]
# Concepts, with chamber pressures (MPa) at which they are asked for.
CONCEPTS = {"heron.toml": (6, 9), "gannet.toml": (16, 22), "razorbill.toml": (14, 18), "dunlin.toml": (0.8, 1.1)}
SHARED = ["shared-%d.toml" % i for i in range(4)]
EDIT = re.compile(r"# edit [\w-]+\.\d+")


class Server:
    """The server process that runs at the moment, and every one before it."""

    def __init__(self, folder, time_limit):
        self.folder = folder
        self.time_limit = time_limit
        self.port = free_port()
        self.errors = open(folder / "stderr", "ab")
        self.kills = 0
        self.killing = threading.Event()

    def start(self):
        environment = dict(os.environ, PENSTOCK_JAVA_OPTIONS="-Xmx768m")
        command = [HOME / "penstock", "serve", "--workspace", self.folder / "cycles", "--port", self.port]
        command += ["--time-limit", self.time_limit, "--log", self.folder / "log"]
        self.process = subprocess.Popen(
            [str(c) for c in command], stdout=subprocess.PIPE, stderr=self.errors, env=environment, text=True
        )
        for line in self.process.stdout:
            if line.startswith("open "):
                self.token = line.strip().split("token=")[1]
                self.killing.clear()
                return
        sys.exit("the server did not start; see " + str(self.folder / "stderr"))

    def kill(self):
        self.killing.set()
        self.kills += 1
        os.kill(self.process.pid, signal.SIGKILL)
        self.process.wait()

    def live_megabytes(self):
        return live_megabytes(self.process.pid)


def resting_megabytes(server, most=60):
    """Live memory when nobody asks any more: a paper whose time is over holds some until its next drawing, a leak for ever."""
    least, end = server.live_megabytes(), time.monotonic() + most
    while time.monotonic() < end:
        time.sleep(5)
        least = min(least, server.live_megabytes())
    return least


def live_megabytes(process):
    """What is left on a Java process's heap after a full collection."""
    done = subprocess.run(["jcmd", str(process), "GC.class_histogram"], stdout=subprocess.PIPE, text=True, check=True)
    return int(done.stdout.strip().splitlines()[-1].split()[-1]) / 1e6


def free_port():
    with socket.socket() as s:
        s.bind(("127.0.0.1", 0))
        return s.getsockname()[1]


class Killed(Exception):
    """The server was killed during a question."""


class Record:
    """What all clients have seen."""

    def __init__(self):
        self.lock = threading.Lock()
        self.times = collections.defaultdict(list)
        self.statuses = collections.defaultdict(collections.Counter)
        self.failures = []
        self.saved = collections.defaultdict(set)

    def answer(self, kind, status, seconds):
        with self.lock:
            self.statuses[kind][status] += 1
            self.times[kind].append(seconds)

    def failure(self, text):
        with self.lock:
            self.failures.append(text)
        print("FAILED:", text, flush=True)

    def edit(self, file, edit):
        with self.lock:
            self.saved[file].add(edit)


class Browser:
    """One connection of a client, with its cookie."""

    def __init__(self, server, record, cookie=None):
        self.server = server
        self.record = record
        self.kills = server.kills
        self.cookie = cookie
        self.connection = http.client.HTTPConnection("127.0.0.1", server.port, timeout=200)
        if cookie is None:
            _, headers, _ = self.send("enter", "GET", "/?token=" + server.token, None, {302})
            self.cookie = headers["Set-Cookie"].split(";")[0]

    def send(self, kind, method, path, body, wanted, **headers):
        """Sends a request; an answer with another status than those wanted is a failure."""
        base = "127.0.0.1:%d" % self.server.port
        sent = {"Origin": "http://" + base} if method == "POST" else {}
        if self.cookie:
            sent["Cookie"] = self.cookie
        sent.update(headers)
        if body is not None and not isinstance(body, (str, bytes)):
            body = json.dumps(body)
        begun = time.monotonic()
        try:
            self.connection.request(method, path, body, sent)
            answer = self.connection.getresponse()
            data = answer.read()
        except (OSError, http.client.HTTPException) as broken:
            self.connection.close()
            if not self.server.killing.is_set() and self.server.kills == self.kills:
                self.record.failure("%s: the connection broke off (%r)" % (kind, broken))
            raise Killed() from broken
        self.record.answer(kind, answer.status, time.monotonic() - begun)
        if answer.status not in wanted:
            self.record.failure("%s %s: status %d, %s" % (kind, path, answer.status, data[:300]))
        elif answer.status >= 400 and answer.status != 404 and not told(data):
            self.record.failure("%s %s: status %d without a sentence, %s" % (kind, path, answer.status, data[:300]))
        return answer.status, answer.headers, data


def told(data):
    try:
        return all(len(sentence) > 5 for sentence in json.loads(data)["problems"])
    except (ValueError, KeyError):
        return False


BUSY = {503, 504}


class Client(threading.Thread):
    def __init__(self, number, server, record, texts, end, seed):
        super().__init__(daemon=True)
        self.name = "c%d" % number
        self.server, self.record, self.texts, self.end = server, record, texts, end
        self.dice = random.Random(seed * 1000 + number)
        self.count = 0
        self.known = {}

    def run(self):
        kinds = [self.balance] * 8 + [self.save] * 6 + [self.wrong] * 4 + [self.sweep, self.report, self.report, self.pdf, self.vehicle]
        while time.monotonic() < self.end:
            try:
                browser = Browser(self.server, self.record)
                while time.monotonic() < self.end:
                    self.dice.choice(kinds)(browser)
                    time.sleep(self.dice.uniform(0, 0.5))
            except Killed:
                self.known.clear()
                while self.server.killing.is_set() and time.monotonic() < self.end:
                    time.sleep(0.1)
            except Exception as defect:  # of this script, or of an answer that cannot be read
                self.record.failure("%s: %r" % (self.name, defect))

    def question(self):
        file = self.dice.choice(list(CONCEPTS))
        pressure = "%.4f MPa" % self.dice.uniform(*CONCEPTS[file])
        return {"file": file, "text": self.texts[file], "changes": {"engine.chamber_pressure": pressure}}

    def balance(self, browser):
        self.count += 1
        question = dict(self.question(), page=self.name, number=self.count)
        status, _, data = browser.send("balance", "POST", "/api/balance", question, {200, 422} | BUSY)
        if status == 200:
            json.loads(data)
            for part in self.dice.sample(["flow", "charts", "cooling"], 2):
                browser.send("drawing", "POST", "/api/" + part, question, {200, 422} | BUSY)

    def save(self, browser):
        """Adds a line to a file that others change too; who comes second takes their text and adds to that."""
        file = self.dice.choice(SHARED)
        self.count += 1
        edit = "# edit %s-%d.%d" % (self.name, browser.kills, self.count)
        if file not in self.known:
            _, _, data = browser.send("open", "GET", "/api/file?name=" + file, None, {200})
            self.known[file] = json.loads(data)
        known = self.known[file]
        text, version = known["text"], known["version"]
        for _ in range(50):
            body = {"file": file, "text": text + edit + "\n", "as": file, "version": version, "whole": True}
            status, _, data = browser.send("save", "POST", "/api/save", body, {200, 409})
            answer = json.loads(data)
            if status == 200:
                self.record.edit(file, edit)
                self.known[file] = answer
                return
            text, version = answer["theirs"], answer["version"]
        self.record.failure("%s was changed by others fifty times in a row" % file)

    def sweep(self, browser):
        question = {"text": self.texts["heron.toml"], "vary": ["engine.chamber_pressure=6..9MPa:40"], "changes": {}}
        status, _, data = browser.send("sweep", "POST", "/api/sweep", question, {200, 429})
        if status != 200:
            return
        path = "/api/sweep/" + json.loads(data)["id"]
        time.sleep(self.dice.uniform(0.1, 3))
        browser.send("stop", "POST", path + "/stop", {}, {200})
        stopped = time.monotonic()
        while json.loads(browser.send("progress", "GET", path, None, {200})[2])["running"]:
            time.sleep(0.1)
            if time.monotonic() - stopped > 60:
                self.record.failure("a sweep ran on for a minute after it was stopped")
                return
        self.record.answer("sweep stopped", 200, time.monotonic() - stopped)
        browser.send("table", "GET", path + "/table.csv", None, {200, 409})

    def shown(self, browser, kind, path, question):
        status, _, data = browser.send(kind, "POST", path, question, {200, 422} | BUSY)
        return browser.send("shown", "GET", "/shown/" + json.loads(data)["id"], None, {200, 404}) if status == 200 else (0, {}, b"")

    def report(self, browser):
        status, _, data = self.shown(browser, "report", "/api/report", dict(self.question(), form="html"))
        if status == 200 and not data.rstrip().endswith(b"</html>"):
            self.record.failure("a report is not whole")

    def pdf(self, browser):
        status, _, data = self.shown(browser, "pdf", "/api/report", dict(self.question(), form="a4"))
        if status == 200 and not (data.startswith(b"%PDF") and data.rstrip().endswith(b"%%EOF")):
            self.record.failure("a PDF is not whole")

    def vehicle(self, browser):
        browser.send("vehicle", "POST", "/api/vehicle", {"file": "vehicles/skerry.toml", "changes": {}}, {200, 422} | BUSY)

    def wrong(self, browser):
        text = self.texts["heron.toml"]
        method, path, body, wanted, headers = self.dice.choice(
            [
                ("POST", "/api/balance", "{", {400}, {}),
                ("POST", "/api/balance", "[]", {400}, {}),
                ("POST", "/api/balance", {"text": text, "changes": {"engine.chamber_pressure": "8 parsec"}}, {422}, {}),
                ("POST", "/api/balance", {"text": text, "changes": {"engine.chamber_pressure": "1e400 MPa"}}, {422}, {}),
                ("POST", "/api/balance", {"text": text, "changes": {"engine.colour": "red"}}, {422}, {}),
                ("POST", "/api/balance", {"text": "name = " + "[" * 5000, "changes": {}}, {422}, {}),
                ("POST", "/api/balance", "{\"a\":" * 5000, {400}, {}),
                ("POST", "/api/balance", {"text": "#" * 600_000}, {413}, {}),
                ("POST", "/api/save", {"text": text, "as": "../heron.toml", "version": "", "whole": True}, {403}, {}),
                ("POST", "/api/save", {"text": text, "as": SHARED[0], "version": "", "whole": True}, {409}, {}),
                ("GET", "/api/file?name=none.toml", None, {404}, {}),
                ("GET", "/api/sweep/none", None, {404}, {}),
                ("GET", "/api/none", None, {404}, {}),
                ("GET", "/api/files", None, {403}, {"Cookie": "none=none"}),
                ("POST", "/api/save", "{}", {403}, {"Origin": "http://elsewhere.example"}),
            ]
        )
        browser.send("wrong input", method, path, body, wanted, **headers)


class Slow(threading.Thread):
    """Asks for an engine that takes long, each time from a page that it invents; all of them share one cookie."""

    def __init__(self, number, server, record, end, text):
        super().__init__(daemon=True)
        self.number, self.server, self.record, self.end, self.text = number, server, record, end, text

    def run(self):
        cookie = None
        while time.monotonic() < self.end:
            try:
                if cookie is None or self.server.kills != browser.kills:
                    browser = Browser(self.server, self.record)
                    cookie = browser.cookie
                question = {"text": self.text, "changes": {"engine.chamber_pressure": "%.5f MPa" % random.uniform(9, 11)}}
                question.update(page="invented %d" % random.getrandbits(60), number=1)
                browser.send("slow", "POST", "/api/balance", question, {200, 422} | BUSY)
            except Killed:
                cookie = None
                time.sleep(1)


def check_files(server, record, base, when):
    """Every file is the first text and whole edits behind it, and has each edit that was answered as saved."""
    for file in SHARED:
        text = (server.folder / "cycles" / file).read_text(encoding="utf-8")
        lines = text[len(base) :].splitlines()
        if not text.startswith(base) or not text.endswith("\n") or not all(EDIT.fullmatch(line) for line in lines):
            record.failure("%s: %s is not whole" % (when, file))
        lost = record.saved[file] - set(lines)
        if lost:
            record.failure("%s: %s lost %d edits that were answered as saved: %s" % (when, file, len(lost), sorted(lost)[:5]))
        if len(lines) != len(set(lines)):
            record.failure("%s: %s has an edit twice" % (when, file))


def table(record):
    print("\n%-14s %7s %9s %9s %9s  %s" % ("question", "number", "median s", "p99 s", "longest", "statuses"))
    for kind, times in sorted(record.times.items()):
        ordered = sorted(times)
        p99 = ordered[min(len(ordered) - 1, int(0.99 * len(ordered)))]
        statuses = " ".join("%d:%d" % s for s in sorted(record.statuses[kind].items()))
        print("%-14s %7d %9.3f %9.3f %9.3f  %s" % (kind, len(times), ordered[len(times) // 2], p99, ordered[-1], statuses))


def main():
    options = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    options.add_argument("--minutes", type=float, default=10)
    options.add_argument("--clients", type=int, default=16)
    options.add_argument("--kills", type=int, default=10)
    options.add_argument("--time-limit", type=int, default=60)
    options.add_argument("--slow", type=int, default=0)
    options.add_argument("--slow-concept", type=pathlib.Path, help="concept that takes long to balance, for --slow")
    options.add_argument("--seed", type=int, default=1)
    given = options.parse_args()
    folder = pathlib.Path(tempfile.mkdtemp(prefix="penstock-load-"))
    shutil.copytree(HOME / "cycles", folder / "cycles")
    texts = {file: (folder / "cycles" / file).read_text(encoding="utf-8") for file in CONCEPTS}
    base = texts["dunlin.toml"]
    for file in SHARED:
        (folder / "cycles" / file).write_text(base, encoding="utf-8")
    server, record = Server(folder, given.time_limit), Record()
    server.start()
    begun = time.monotonic()
    end = begun + 60 * given.minutes
    threads = [Client(i, server, record, texts, end, given.seed) for i in range(given.clients)]
    if given.slow:
        slow = given.slow_concept.read_text(encoding="utf-8")
        threads += [Slow(i, server, record, end, slow) for i in range(given.slow)]
    for thread in threads:
        thread.start()
    print("load of the machine at the start: %.1f %.1f %.1f" % os.getloadavg(), flush=True)
    dice = random.Random(given.seed)
    times = sorted(begun + 20 + dice.uniform(0, 1) * (27 * given.minutes - 20) for _ in range(given.kills))
    memory = []
    sampled = begun + 30 * given.minutes
    while time.monotonic() < end:
        now = time.monotonic()
        if times and now >= times[0]:
            times.pop(0)
            server.kill()
            check_files(server, record, base, "after kill %d" % server.kills)
            server.start()
            print("%4.0f s: kill %d, %d edits saved so far" % (now - begun, server.kills, sum(map(len, record.saved.values()))), flush=True)
        elif now >= sampled and not times:
            sampled = now + 3 * given.minutes
            memory.append(server.live_megabytes())
            print("%4.0f s: %.0f MB live" % (now - begun, memory[-1]), flush=True)
        time.sleep(0.05)
    for thread in threads:
        thread.join(220)
    if any(thread.is_alive() for thread in threads):
        record.failure("a question was not answered within 200 s")
    memory.append(resting_megabytes(server))
    # not SIGINT, which a shell lets processes in the background ignore
    server.process.terminate()
    server.process.wait(30)
    check_files(server, record, base, "at the end")
    trace = (folder / "stderr").read_text(errors="replace")
    if "defect" in trace or "Exception" in trace:
        record.failure("the server wrote a trace: " + trace[:3000])
    middle, last = max(memory[: len(memory) // 2 + 1]), memory[-1]
    if last > 1.15 * middle + 10:
        record.failure("live memory grew from %.0f to %.0f MB" % (middle, last))
    table(record)
    print("\nlive memory in the second half (MB): " + " ".join("%.0f" % m for m in memory))
    print("edits answered as saved: %d; kills: %d; failures: %d" % (sum(map(len, record.saved.values())), server.kills, len(record.failures)))
    print("load of the machine at the end: %.1f %.1f %.1f" % os.getloadavg())
    if record.failures:
        sys.exit("kept for a look: " + str(folder))
    shutil.rmtree(folder)


if __name__ == "__main__":
    main()
