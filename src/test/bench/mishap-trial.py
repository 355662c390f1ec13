#!/usr/bin/env python3
"""Puts in a batch's and a watch's way what goes wrong in a shop, and looks what is lost.

    src/test/bench/mishap-trial.py FOLDER [TIMES [MISHAP...]]

Full disk, read-only folder, record held by another program, Ctrl-C, and a folder that vanishes while
watched. Each is tried TIMES times (held record: once, as it waits a minute); then the trouble ends
and the same command is run again: every photo must be recorded once, every result be whole and
`leadlight record verify` be content. Small disks are mounted, so this needs Linux and root. Ends
with status 1 if anything was lost. FOLDER is emptied first.
"""
import contextlib
import pathlib
import random
import shutil
import signal
import sqlite3
import subprocess
import sys
import time

HOME = pathlib.Path(__file__).resolve().parents[3]
LEADLIGHT = str(HOME / "leadlight")
SAMPLE = HOME / "sample-images" / "base-station-video-good.jpg"
PHOTOS = 12
DICE = random.Random(1)


class Day:
    """A day of photos with an output folder and a record."""

    def __init__(self, folder):
        shutil.rmtree(folder, ignore_errors=True)
        self.photos, self.out, self.record = (folder / n for n in ["day", "out", "record"])
        for i in range(PHOTOS):
            place = self.photos / f"job {i % 3}" / f"board {i}"
            place.mkdir(parents=True)
            (place / "row.jpg").symlink_to(SAMPLE)
        self.out.mkdir()
        self.record.mkdir()

    def command(self, what="batch"):
        return [LEADLIGHT, what, str(self.photos), "--leads", "19", "--pitch", "0.5", "--out",
                str(self.out), "--record", str(self.record)]

    def run(self):
        return subprocess.run(self.command(), capture_output=True, text=True)

    def start(self, what="batch"):
        return subprocess.Popen(self.command(what), stdout=subprocess.PIPE,
                                stderr=subprocess.PIPE, text=True)

    def recorded(self):
        try:
            path = f"file:{self.record}/leadlight.sqlite?mode=ro"
            with contextlib.closing(sqlite3.connect(path, uri=True)) as db:
                return db.execute("SELECT count(*) FROM scoring").fetchone()[0]
        except sqlite3.Error:
            return 0

    def troubles(self, run):
        """What is wrong after the command was run again."""
        found = [] if run.returncode in (0, 3, 4) else [f"status {run.returncode}: {run.stderr}"]
        if self.recorded() != PHOTOS:
            found.append(f"{self.recorded()} of {PHOTOS} recorded")
        verify = subprocess.run([LEADLIGHT, "record", "verify", "--record", str(self.record)],
                                capture_output=True, text=True)
        if verify.stdout != "the record is sound\n":
            found.append(verify.stdout + verify.stderr)
        left = [p for p in self.out.rglob("*") if p.name in (".unfinished", ".running")
                or p.suffix == ".part" or p.is_file() and p.stat().st_size == 0]
        return found + [f"left over: {p}" for p in left]


def one_line(run):
    lines = run.stderr.strip().splitlines()
    return [] if run.returncode == 2 and len(lines) == 1 else [f"{run.returncode}: {run.stderr}"]


def mount(place, options):
    subprocess.run(["mount", "-t", "tmpfs", "-o", options, "tmpfs", str(place)], check=True)


def remount(place, options):
    subprocess.run(["mount", "-o", f"remount,{options}", str(place)], check=True)


def on_a_disk(day, place, bad, good):
    """A run on a disk that is bad, then the same on one that is good."""
    mount(place, "size=64m")
    try:
        remount(place, bad)
        stopped = day.run()
        found, done = one_line(stopped), day.recorded()
        remount(place, good)
        return stopped.stderr.strip(), done, found + day.troubles(day.run())
    finally:
        subprocess.run(["umount", str(place)], check=True)


def full_results(day):
    return on_a_disk(day, day.out, f"size={DICE.randint(1, 12)}m", "size=64m")


def full_record(day):
    return on_a_disk(day, day.record, f"size={DICE.randint(150, 400)}k", "size=64m")


def read_only_results(day):
    return on_a_disk(day, day.out, "ro", "rw")


def read_only_record(day):
    return on_a_disk(day, day.record, "ro", "rw")


def held_record(day):
    day.run()
    shutil.rmtree(day.out)
    file = day.record / "leadlight.sqlite"
    with contextlib.closing(sqlite3.connect(file, isolation_level=None)) as db:
        db.execute("DELETE FROM run_photo")
        db.execute("BEGIN EXCLUSIVE")
        stopped = day.run()
        db.execute("ROLLBACK")
    again = day.run()
    with contextlib.closing(sqlite3.connect(file)) as db:
        doubled = db.execute("SELECT count(*) FROM scoring WHERE repeat > 2").fetchone()[0]
    found = [f"{doubled} recorded twice"] if doubled else []
    return stopped.stderr.strip(), 0, one_line(stopped) + found + (
        [] if again.returncode == 0 else [again.stderr])


def ctrl_c(day):
    run = day.start()
    time.sleep(DICE.uniform(0.3, 5))
    run.send_signal(signal.SIGINT)
    out, err = run.communicate()
    found = [] if len(err.splitlines()) <= 1 else [err]
    return f"status {run.returncode}, {err.strip()}", day.recorded(), found + day.troubles(
        day.run())


def vanished(day):
    run = day.start("watch")
    while day.recorded() < 3:
        time.sleep(0.05)
    away = day.photos.with_name("away")
    day.photos.rename(away)
    done = day.recorded()
    time.sleep(5)
    away.rename(day.photos)
    began = time.monotonic()
    while day.recorded() < PHOTOS and time.monotonic() - began < 120:
        time.sleep(0.1)
    missed = [] if day.recorded() == PHOTOS else [f"watch took {day.recorded()} of {PHOTOS}"]
    run.send_signal(signal.SIGINT)
    out, err = run.communicate()
    gone = [line for line in err.splitlines() if "gone" in line]
    found = missed + ([] if len(gone) == 1 else [err])
    return "; ".join(err.strip().splitlines()[1:]), done, found + day.troubles(day.run())


MISHAPS = [full_results, full_record, read_only_results, read_only_record, ctrl_c, vanished,
           held_record]


def main(folder, times=3, *names):
    lost = 0
    for mishap in [m for m in MISHAPS if not names or m.__name__ in names]:
        for _ in range(1 if mishap == held_record else times):
            said, done, found = mishap(Day(folder))
            lost += len(found)
            print(f"{mishap.__name__}: {done} of {PHOTOS} recorded when it said \"{said}\"; "
                  f"then {found or 'nothing lost'}", flush=True)
    return 1 if lost else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]).resolve(), *map(int, sys.argv[2:3]), *sys.argv[3:]))
