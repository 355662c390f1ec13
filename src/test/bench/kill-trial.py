#!/usr/bin/env python3
"""Kills a batch with SIGKILL at random moments and looks what is lost.

    src/test/bench/kill-trial.py FOLDER [KILLS] [PHOTOS] [SEED]

After each kill the record is checked with Python's own SQLite (integrity, foreign keys) and every
recorded result is opened; after the last, the batch runs to its end and all is counted. Ends with
status 1 if anything was lost, doubled or half-written. FOLDER is emptied first.
"""
import json
import pathlib
import random
import shutil
import sqlite3
import subprocess
import sys
import time

HOME = pathlib.Path(__file__).resolve().parents[3]
LEADLIGHT = str(HOME / "leadlight")
SAMPLES = ["base-station-video-good.jpg", "base-station-video-mixed.jpg", "logger-sensor-open.jpg"]


def day(folder, photos):
    samples = HOME / "sample-images"
    for i in range(photos):
        place = folder / "day" / f"job {i % 10}" / f"board {i // 10}"
        place.mkdir(parents=True)
        (place / "row.jpg").symlink_to(samples / SAMPLES[i % 3])


def recorded(folder):
    try:
        path = folder / "record" / "leadlight.sqlite"
        with sqlite3.connect(f"file:{path}?mode=ro", uri=True) as db:
            return db.execute("SELECT count(*) FROM scoring").fetchone()[0]
    except sqlite3.Error:
        return 0


def trouble(folder, total=None):
    found = []
    record = folder / "record" / "leadlight.sqlite"
    if not record.exists():
        return found, 0
    with sqlite3.connect(f"file:{record}?mode=ro", uri=True) as db:
        found += [r[0] for r in db.execute("PRAGMA integrity_check") if r[0] != "ok"]
        found += [str(r) for r in db.execute("PRAGMA foreign_key_check")]
        try:
            rows = db.execute("SELECT results, leads, (SELECT count(*) FROM joint j WHERE"
                              " j.scoring_id = s.id) FROM scoring s WHERE row_reason IS NULL")
            rows = rows.fetchall()
            boards = db.execute("SELECT count(*), count(DISTINCT board_id) FROM scoring").fetchone()
        except sqlite3.OperationalError as e:
            return ([] if "no such table" in str(e) else [str(e)]), 0
    if boards[0] != boards[1]:
        found.append(f"{boards[0]} scorings of {boards[1]} boards")
    for results, leads, joints in rows:
        if leads != joints:
            found.append(f"{results}: {joints} joints of {leads} in the record")
        try:
            report = json.loads(pathlib.Path(results).read_bytes())
            if len(report["joints"]) != leads:
                found.append(f"{results}: {len(report['joints'])} joints")
        except (OSError, ValueError) as e:
            found.append(f"{results}: {e}")
        picture = pathlib.Path(results.removesuffix(".json") + ".annotated.png")
        if not (picture.exists() and picture.read_bytes().endswith(b"IEND\xaeB`\x82")):
            found.append(f"{picture}: half a picture")
    if total is not None:
        if boards[0] != total:
            found.append(f"{boards[0]} scorings of {total} photos")
        left = [p for p in (folder / "out").rglob("*") if p.name.endswith(".part")]
        left += list((folder / "out").rglob(".unfinished"))
        found += [f"left over: {p}" for p in left]
    return found, boards[0]


def main(folder, kills=50, photos=120, seed=1):
    shutil.rmtree(folder, ignore_errors=True)
    day(folder, photos)
    dice = random.Random(seed)
    command = [LEADLIGHT, "batch", str(folder / "day"), "--leads", "19", "--pitch", "0.5",
               "--out", str(folder / "out"), "--record", str(folder / "record")]
    bad, killed, done = [], 0, []
    began = time.time()
    while killed < kills:
        run = subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        before = recorded(folder)
        # Most while it adds photos, each fifth at any moment from its start.
        while killed % 5 and run.poll() is None and recorded(folder) <= before:
            time.sleep(0.02)
        try:
            run.wait(dice.uniform(0, 2))
            # It came to its end: everything again, so that there is work to be broken off.
            shutil.rmtree(folder / "out")
            shutil.rmtree(folder / "record")
        except subprocess.TimeoutExpired:
            run.kill()
            run.wait()
            killed += 1
        found, count = trouble(folder)
        done.append(count)
        bad += found
    subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False)
    found, count = trouble(folder, photos)
    verify = subprocess.run([LEADLIGHT, "record", "verify", "--record", str(folder / "record")],
                            capture_output=True, text=True)
    bad += found + ([] if verify.returncode == 0 else [verify.stdout])
    runs = len(list((folder / "out").glob("20*")))
    print(f"{killed} kills; photos recorded after each: {done}")
    print(f"at the end {count} of {photos} photos recorded, {runs} run folder(s), verify: "
          f"{verify.stdout.strip()}; {time.time() - began:.0f} s")
    print(f"{len(bad)} troubles", *bad[:20], sep="\n")
    return 1 if bad else 0


if __name__ == "__main__":
    sys.exit(main(pathlib.Path(sys.argv[1]).resolve(), *map(int, sys.argv[2:])))
