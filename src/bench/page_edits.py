#!/usr/bin/env python3
"""How long an edit on the local page takes until its figures, and all figures and drawings in view, are on the screen.

    ./penstock serve --port 8123        (in another terminal; it prints the address with its token)
    python3 src/bench/page_edits.py "http://127.0.0.1:8123/?token=..." [--edits 30] [concept ...]

Drives Chromium through chromedriver (Debian's chromium and chromium-driver), 1280 by 900 pixels. Each edit sets another chamber
pressure, within 2 % of the file's, so that nothing is answered from memory. Times are the page's own marks, from the change of the
field to the frame after all that is in view stands in the page: at its top figures alone, then with the diagram in view, and with
the charts in view.
The load of the machine is printed beside them: on a busy machine they say little.
"""
import argparse
import json
import os
import shutil
import socket
import statistics
import subprocess
import time
import urllib.request

SCRIPT = """
const [value, wanted, done] = arguments;
const box = document.getElementById("in-engine-chamber_pressure");
performance.clearMarks();
const begun = performance.now();
box.value = value;
box.dispatchEvent(new Event("change"));
const look = () => {
  const at = (name) => performance.getEntriesByName(name)[0]?.startTime;
  if (wanted.every((name) => at(name))) {
    requestAnimationFrame(() => setTimeout(() => done([at("penstock-figures") - begun, performance.now() - begun])));
  } else if (performance.now() - begun > 20000) {
    done(null);
  } else {
    requestAnimationFrame(look);
  }
};
look();
"""


class Browser:
    """A session of chromedriver, by the W3C WebDriver protocol."""

    def __init__(self):
        with socket.socket() as free:
            free.bind(("127.0.0.1", 0))
            self.port = free.getsockname()[1]
        self.driver = subprocess.Popen(
            [shutil.which("chromedriver"), "--port=%d" % self.port], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        self.base = "http://127.0.0.1:%d/session" % self.port
        args = ["--headless=new", "--no-sandbox", "--disable-gpu", "--window-size=1280,900"]
        for attempt in range(50):
            try:
                made = self.ask("", {"capabilities": {"alwaysMatch": {
                    "goog:chromeOptions": {"args": args, "binary": shutil.which("chromium")}}}})
                break
            except OSError:
                time.sleep(0.2)
        self.base += "/" + made["sessionId"]
        self.ask("/timeouts", {"script": 60000})

    def ask(self, path, body):
        request = urllib.request.Request(self.base + path, json.dumps(body).encode(), {"Content-Type": "application/json"})
        with urllib.request.urlopen(request, timeout=90) as answer:
            return json.load(answer)["value"]

    def go(self, address):
        self.ask("/url", {"url": address})

    def run(self, script, *arguments, wait=True):
        return self.ask("/execute/" + ("async" if wait else "sync"), {"script": script, "args": list(arguments)})

    def close(self):
        try:
            urllib.request.urlopen(urllib.request.Request(self.base, method="DELETE"), timeout=10).close()
        finally:
            self.driver.terminate()


def until(browser, condition, seconds=60):
    end = time.time() + seconds
    while not browser.run("return " + condition, wait=False):
        if time.time() > end:
            raise SystemExit("the page does not come to: " + condition)
        time.sleep(0.1)


PLACES = {"top of the page": None, "diagram in view": "flow", "charts in view": "charts"}


def measure(browser, base, concept, edits, place):
    browser.go(base + "/?file=" + concept + ".toml")
    until(browser, "document.querySelectorAll('#charts svg').length > 0")
    unit = browser.run("return document.getElementById('in-engine-chamber_pressure').value", wait=False).split()
    drawn = PLACES[place]
    if drawn:
        browser.run("document.getElementById('" + drawn + "').scrollIntoView()", wait=False)
        time.sleep(0.5)
    wanted = ["penstock-figures"] + (["penstock-" + drawn] if drawn else [])
    times = []
    for i in range(edits + 3):
        value = float(unit[0]) * (1 + 0.02 * (i + 1) / (edits + 3))
        answer = browser.run(SCRIPT, "%.5g %s" % (value, unit[1]), wanted)
        if answer is None:
            raise SystemExit(concept + ": no answer in 20 s")
        times.append(answer)
        time.sleep(0.6)
    own = times[3:]
    figures, all_drawn = ([t[k] for t in own] for k in (0, 1))
    print("%-8s %-18s figures: median %4.0f, worst %4.0f ms; all in view: median %4.0f, worst %4.0f ms; load %.1f" % (
        concept, place, statistics.median(figures), max(figures),
        statistics.median(all_drawn), max(all_drawn), os.getloadavg()[0]), flush=True)


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("address")
    parser.add_argument("concepts", nargs="*", default=["heron", "gannet", "avocet"])
    parser.add_argument("--edits", type=int, default=30)
    options = parser.parse_args()
    browser = Browser()
    try:
        browser.go(options.address)
        base = options.address.split("/?")[0]
        for concept in options.concepts:
            for place in PLACES:
                measure(browser, base, concept, options.edits, place)
    finally:
        browser.close()


if __name__ == "__main__":
    main()
