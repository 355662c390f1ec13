#!/usr/bin/env python3
"""Scores many photos, links to a few, and follows memory and processor time as the batch goes on.

    bench/long-trial.py FOLDER [PHOTOS] [SECONDS]

Prints a line every ten seconds: photos in the record, resident memory, processor seconds. Ends after
SECONDS at the latest, with Ctrl-C's signal. FOLDER is emptied first.
"""
import pathlib
import shutil
import signal
import sqlite3
import subprocess
import sys
import time

HOME = pathlib.Path(__file__).resolve().parent.parent


def main(folder, photos=10000, seconds=3600):
    shutil.rmtree(folder, ignore_errors=True)
    samples = sorted((HOME / "sample-images").glob("*.jpg"))[:3]
    for i in range(photos):
        place = folder / "day" / f"job {i // 100}" / f"board {i % 100}"
        place.mkdir(parents=True)
        (place / "row.jpg").symlink_to(samples[i % len(samples)])
    command = [str(HOME / "leadlight"), "batch", str(folder / "day"), "--leads", "19", "--pitch",
               "0.5", "--out", str(folder / "out"), "--record", str(folder / "record")]
    run = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    began = time.time()
    while run.poll() is None:
        time.sleep(10)
        try:
            status = pathlib.Path(f"/proc/{run.pid}/status").read_text()
            stat = pathlib.Path(f"/proc/{run.pid}/stat").read_text().rsplit(")", 1)[1].split()
            with sqlite3.connect(f"file:{folder}/record/leadlight.sqlite?mode=ro", uri=True) as db:
                done = db.execute("SELECT count(*) FROM scoring").fetchone()[0]
        except (OSError, sqlite3.Error):
            continue
        rss = next(line for line in status.splitlines() if line.startswith("VmRSS")).split()[1]
        print(f"{time.time() - began:.0f} s: {done} photos, {int(rss) // 1024} MB, "
              f"{(int(stat[11]) + int(stat[12])) / 100:.1f} s processor", flush=True)
        if time.time() - began > seconds:
            run.send_signal(signal.SIGINT)
            run.wait()
    print(run.stdout.read().strip(), "status", run.returncode)


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]).resolve(), *map(int, sys.argv[2:]))
