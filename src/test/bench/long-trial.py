#!/usr/bin/env python3
"""Scores many photos and follows memory and processor time as the batch goes on; then the record is verified.

    src/test/bench/long-trial.py FOLDER [PHOTOS] [SECONDS] [KNOWN]

Each photo is a sample with a comment of its own, so that none is of the same bytes as another. Prints a line every ten
seconds: photos dealt with, resident memory, processor seconds. Ends after SECONDS at the latest, with Ctrl-C's signal.
With KNOWN, photos are links to the samples, and so many of the photos are in the record
already: some are scored beforehand, and their entries are copied in the record to the other boards,
which share their results. FOLDER is emptied first.
"""
import contextlib
import pathlib
import shutil
import signal
import sqlite3
import subprocess
import sys
import time

HOME = pathlib.Path(__file__).resolve().parents[3]
SAMPLES = [HOME / "sample-images" / name for name in [
    "base-station-video-good.jpg", "base-station-video-mixed.jpg", "logger-sensor-open.jpg"]]
BOARDS = 100


def place(i):
    return f"job {i // BOARDS}", f"board {i % BOARDS}"


def link(folder, photos, new):
    for i in photos:
        board = folder / "day" / place(i)[0] / place(i)[1]
        board.mkdir(parents=True)
        sample = SAMPLES[i % len(SAMPLES)]
        if new:
            (board / "row.jpg").write_bytes(commented(sample.read_bytes(), f"photo {i}"))
        else:
            (board / "row.jpg").symlink_to(sample)


def commented(jpeg, words):
    """With a comment segment (ITU-T T.81, B.2.4.5) behind the start of the picture."""
    text = words.encode()
    return jpeg[:2] + b"\xff\xfe" + (len(text) + 2).to_bytes(2, "big") + text + jpeg[2:]


def copy_rows(db, table, key, old, new, values):
    """Copies rows of a table from one parent to another; gives (old, new) ids."""
    names = [row[1] for row in db.execute(f"PRAGMA table_info({table})") if row[1] != "id"]
    read = ", ".join(f"{values[n]!r}" if n in values else n for n in names if n != key)
    ids = [row[0] for row in db.execute(f"SELECT id FROM {table} WHERE {key} = ?", (old,))]
    pairs = []
    for i in ids:
        made = db.execute(
            f"INSERT INTO {table} ({key}, {', '.join(n for n in names if n != key)})"
            f" SELECT ?, {read} FROM {table} WHERE id = ?", (new, i))
        pairs.append((i, made.lastrowid))
    return pairs


def spread(folder, known):
    """Gives the boards from the third on what the record says of one of the first three."""
    with contextlib.closing(sqlite3.connect(folder / "record" / "leadlight.sqlite")) as db:
        first = {name: board for board, name in db.execute("SELECT id, name FROM board")}
        for i in range(len(SAMPLES), known):
            job, board = place(i)
            db.execute("INSERT OR IGNORE INTO job (name) VALUES (?)", (job,))
            job_id = db.execute("SELECT id FROM job WHERE name = ?", (job,)).fetchone()[0]
            new = db.execute("INSERT INTO board (job_id, name) VALUES (?, ?)", (job_id, board))
            path = str(folder / "day" / job / board / "row.jpg")
            for old_id, new_id in copy_rows(db, "scoring", "board_id",
                                            first[place(i % len(SAMPLES))[1]], new.lastrowid,
                                            {"photo_path": path}):
                for old_joint, joint in copy_rows(db, "joint", "scoring_id", old_id, new_id, {}):
                    copy_rows(db, "finding", "joint_id", old_joint, joint, {})
                    db.execute("INSERT INTO measure (joint_id, name, value, u) SELECT ?, name,"
                               " value, u FROM measure WHERE joint_id = ?", (joint, old_joint))
        db.commit()


def dealt_with(folder):
    path = f"file:{folder}/record/leadlight.sqlite?mode=ro"
    with contextlib.closing(sqlite3.connect(path, uri=True)) as db:
        return db.execute("SELECT count(*) FROM run_photo WHERE run_id ="
                          " (SELECT max(id) FROM run)").fetchone()[0]


def follow(folder, command, seconds):
    run = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    began = time.time()
    while run.poll() is None:
        time.sleep(10)
        try:
            status = pathlib.Path(f"/proc/{run.pid}/status").read_text()
            stat = pathlib.Path(f"/proc/{run.pid}/stat").read_text().rsplit(")", 1)[1].split()
            done = dealt_with(folder)
            rss = next(line for line in status.splitlines() if line.startswith("VmRSS")).split()[1]
        except (OSError, sqlite3.Error, StopIteration):
            continue
        print(f"{time.time() - began:.0f} s: {done} photos, {int(rss) // 1024} MB, "
              f"{(int(stat[11]) + int(stat[12])) / 100:.1f} s processor", flush=True)
        if time.time() - began > seconds:
            run.send_signal(signal.SIGINT)
            run.wait()
    print(run.stdout.read().strip(), "status", run.returncode, f"after {time.time() - began:.0f} s")


def main(folder, photos=10000, seconds=3600, known=0):
    shutil.rmtree(folder, ignore_errors=True)
    command = [str(HOME / "leadlight"), "batch", str(folder / "day"), "--leads", "19", "--pitch",
               "0.5", "--out", str(folder / "out"), "--record", str(folder / "record")]
    link(folder, range(len(SAMPLES)), not known)
    if known:
        subprocess.run(command, check=False, stdout=subprocess.DEVNULL)
        spread(folder, known)
    link(folder, range(len(SAMPLES), photos), not known)
    follow(folder, command, seconds)
    subprocess.run([command[0], "record", "verify", "--record", str(folder / "record")], check=True)


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]).resolve(), *map(int, sys.argv[2:]))
