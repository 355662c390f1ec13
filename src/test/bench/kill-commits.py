#!/usr/bin/env python3
"""Kills Leadlight (SIGKILL) while it commits, and looks whether what it acknowledged is there.

    src/test/bench/kill-commits.py FOLDER [SECONDS] [KILLS] [SEED]

Batch, watch, the bench page and the drill page in turn, KILLS each or as many as SECONDS allow. A
process of its own watches for the rollback journal, which lies there while a transaction is open,
and kills: inside a commit is a kill that left a journal, whose head is valid where it has to be played
back. The record is looked at in a copy, so that Leadlight's own next start has
to recover it; `record verify` is run at the end, as a chain once broken stays so. FOLDER is emptied first.

Acknowledged is: for watch the line on the terminal, for the pages the answer to the request. A
batch says nothing before its end: there, no recorded photo may be lost, and each must have
its whole result files. Ends with status 1 if anything was lost or is not sound.
"""
import http.client
import json
import multiprocessing
import os
import pathlib
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import tempfile
import time
import urllib.parse

HOME = pathlib.Path(__file__).resolve().parents[3]
LEADLIGHT = str(HOME / "leadlight")
SAMPLE = HOME / "sample-images" / "base-station-video-good.jpg"
ROW = ["--leads", "19", "--pitch", "0.5"]
# First eight bytes of a rollback journal that is to be played back; sqlite.org, "Database File Format".
HOT = bytes.fromhex("d9d505f920a163d7")


def is_hot(journal):
    try:
        with open(journal, "rb") as file:
            return file.read(8) == HOT
    except FileNotFoundError:
        return False


def kill_in_commit(pid, journal, skip, late):
    """Lets some commits pass, then kills within one: late is while the record itself is written."""
    for left in range(skip, -1, -1):
        while not os.path.exists(journal):
            time.sleep(0.00005)
        while left and os.path.exists(journal):
            time.sleep(0.00005)
    while late and not is_hot(journal):
        pass
    try:
        os.kill(pid, signal.SIGKILL)
    except ProcessLookupError:
        pass


class Trial:
    """One way to write, in a folder of its own."""

    def __init__(self, folder, dice):
        self.folder, self.dice = folder, dice
        self.record = folder / "record"
        self.journal = self.record / "leadlight.sqlite-journal"
        self.kills = self.inside = self.hot = self.acknowledged = 0
        self.bad = []
        folder.mkdir(parents=True)
        self.prepare()

    def prepare(self):
        day = self.folder / "day"
        for i in range(400):
            place = day / f"job {i % 20}" / f"board {i // 20}"
            place.mkdir(parents=True)
            (place / "row.jpg").symlink_to(SAMPLE)

    def start(self, *words):
        return subprocess.Popen([LEADLIGHT, *words, "--record", str(self.record)],
                                stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True)

    def once(self):
        """One start, one kill."""
        run = self.start(*self.words())
        ready = self.begin(run)
        killer = multiprocessing.Process(
            target=kill_in_commit,
            args=(run.pid, str(self.journal), self.dice.randrange(4),
                  self.kills % 2 == 0))
        if ready:
            killer.start()
            self.write(run)
            killer.terminate()
            killer.join()
        run.kill()
        run.wait()
        self.kills += ready
        self.inside += self.journal.exists()
        self.hot += self.journal.exists() and self.journal.read_bytes()[:8] == HOT
        self.look()

    def look(self):
        with tempfile.TemporaryDirectory() as aside:
            for file in self.record.glob("leadlight.sqlite*"):
                shutil.copy(file, aside)
            with sqlite3.connect(pathlib.Path(aside) / "leadlight.sqlite") as db:
                self.bad += [r[0] for r in db.execute("PRAGMA integrity_check") if r[0] != "ok"]
                self.bad += [str(r) for r in db.execute("PRAGMA foreign_key_check")]
                self.compare(db)

    def verify(self):
        said = subprocess.run([LEADLIGHT, "record", "verify", "--record", str(self.record)],
                              capture_output=True, text=True)
        if said.returncode:
            self.bad.append("verify: " + said.stdout + said.stderr)
        return said.stdout.strip()


class Batch(Trial):
    recorded = 0

    def words(self):
        return ["batch", str(self.folder / "day"), *ROW, "--out", str(self.folder / "out")]

    def begin(self, run):
        # The start has commits of its own; half of the kills fall into these.
        while self.kills % 2 and not self.more() and run.poll() is None:
            time.sleep(0.02)
        return run.poll() is None

    def more(self):
        try:
            with sqlite3.connect(f"file:{self.record}/leadlight.sqlite?mode=ro", uri=True) as db:
                return db.execute("SELECT count(*) FROM scoring").fetchone()[0] > self.recorded
        except sqlite3.Error:
            return False

    def write(self, run):
        for line in run.stdout:
            self.acknowledged += ": " in line and not line.startswith("wrote")

    def compare(self, db):
        try:
            rows = db.execute("SELECT results, leads FROM scoring").fetchall()
        except sqlite3.OperationalError as e:
            if "no such table" not in str(e) or self.recorded:
                self.bad.append(str(e))
            return
        if len(rows) < max(self.recorded, self.acknowledged):
            self.bad.append(f"{len(rows)} of {self.recorded} recorded, "
                            f"{self.acknowledged} acknowledged")
        self.recorded = len(rows)
        for results, leads in rows:
            try:
                if len(json.loads(pathlib.Path(results).read_bytes())["joints"]) != leads:
                    self.bad.append(f"{results}: joints")
            except (OSError, ValueError) as e:
                self.bad.append(f"{results}: {e}")


class Watch(Batch):
    def words(self):
        return ["watch", str(self.folder / "day"), *ROW, "--out", str(self.folder / "out")]


class Page(Trial):
    """A page that a browser has open; what was sent last may be there or not."""

    def begin(self, run):
        address = next((line.strip() for line in run.stdout if line.startswith("  http")), None)
        if address is None:
            return False
        self.at = urllib.parse.urlsplit(address)
        return self.open()

    def post(self, path, body, kind="application/json"):
        self.page = http.client.HTTPConnection(self.at.netloc, timeout=300)
        data = body if isinstance(body, bytes) else json.dumps(body).encode()
        self.page.request("POST", self.at.path + path, data,
                          {"Content-Type": kind, "Origin": "http://" + self.at.netloc})
        answer = self.page.getresponse()
        content = answer.read()
        if answer.status not in (200, 204):
            raise ValueError(f"{path}: {answer.status} {content[:200]}")
        return content

    def write(self, run):
        try:
            while True:
                self.send()
                self.acknowledged += 1
        except (OSError, http.client.HTTPException):
            return
        except ValueError as e:
            self.bad.append(str(e))


class Bench(Page):
    scoring = 0
    number = 0

    def prepare(self):
        self.noted, self.said = set(), {}

    def words(self):
        return ["bench", *ROW, "--by", "Ada", "--out", str(self.folder / "out")]

    def open(self):
        self.post("subject", {"job": "7", "board": "A", "stage": "as-received", "attempt": 1})
        if not self.scoring:
            taken = self.post("take", SAMPLE.read_bytes(), "image/jpeg")
            self.scoring = json.loads(taken)["scoring"]
        return True

    def send(self):
        self.number += 1
        if self.number % 2:
            self.post("note", {"kind": "looked", "words": f"number {self.number}", "pins": []})
            self.noted.add(f"number {self.number}")
            return
        pin = self.number // 2 % 19 + 1
        result = "firm" if self.number // 38 % 2 else "moves"
        before = self.said.get(pin, {None})
        self.said[pin] = before | {result}
        self.post("bench", {"scoring": self.scoring, "pin": pin, "test": "prod", "result": result})
        self.said[pin] = {result}

    def verify(self):
        # Results that the last kill left half told are written anew by the next start.
        run = self.start(*self.words())
        self.begin(run)
        run.kill()
        run.wait()
        return super().verify()

    def compare(self, db):
        there = {r[0] for r in db.execute("SELECT words FROM life_event")}
        if self.noted - there:
            self.bad.append(f"notes lost: {sorted(self.noted - there)}")
        last = dict(db.execute("SELECT j.pin, b.result FROM bench_result b JOIN joint j"
                               " ON j.id = b.joint_id ORDER BY b.id"))
        for pin, may in self.said.items():
            if last.get(pin) not in may:
                self.bad.append(f"pin {pin}: {last.get(pin)}, not {may}")
            self.said[pin] = {last.get(pin)}


class Drill(Page):
    number = 0

    def prepare(self):
        self.kept = set()
        made = self.folder / "set"
        subprocess.run([LEADLIGHT, "drill", "new", "--scenes", str(HOME / "sample-images"),
                        "--count", "2", "--out", str(made)], check=True, stdout=subprocess.DEVNULL)
        self.pin = json.loads((made / "practice-set.json").read_text())["specimens"][0]["spots"][0]["pin"]

    def words(self):
        return ["drill", "judge", str(self.folder / "set"), "--by", "Ada"]

    def open(self):
        return True

    def send(self):
        # Answers are only ever added; the time taken, which is kept with each, numbers them.
        self.number += 1
        self.post("answer", {"specimen": 1, "pin": self.pin, "verdict": "acceptable",
                             "took_ms": self.number})
        self.kept.add(self.number)

    def compare(self, db):
        lost = self.kept - {r[0] for r in db.execute("SELECT took_ms FROM drill_answer")}
        if lost:
            self.bad.append(f"answers lost: {sorted(lost)}")


def main(folder, seconds=600, kills=50, seed=1):
    shutil.rmtree(folder, ignore_errors=True)
    dice = random.Random(seed)
    end = time.time() + seconds
    trials = [kind(folder / kind.__name__.lower(), dice) for kind in (Batch, Watch, Bench, Drill)]
    while time.time() < end and trials[-1].kills < kills and not any(t.bad for t in trials):
        for trial in trials:
            trial.once()
        # A long run that is broken off has said how far it came.
        print(*(f"{type(t).__name__.lower()} {t.inside} of {t.kills} inside,"
                f" {t.acknowledged} acknowledged" for t in trials),
              sep="; ", file=sys.stderr, flush=True)
    for trial in trials:
        print(f"{type(trial).__name__.lower()}: {trial.kills} kills, {trial.inside} inside a commit, "
              f"{trial.hot} to be played back, "
              f"{trial.acknowledged} acknowledged; verify: {trial.verify()}")
        print(*trial.bad[:20], sep="\n")
    return 1 if any(t.bad for t in trials) else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]).resolve(), *map(int, sys.argv[2:])))
