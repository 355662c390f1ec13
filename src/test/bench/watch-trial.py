#!/usr/bin/env python3
"""Measures `leadlight watch`: from the last byte of a 12 MP photo to its recorded result.

    src/test/bench/watch-trial.py FOLDER [PHOTOS] [SEED]

The photos are scenes of 19 leads, 4000 x 3000 pixels, 60-120 px per pitch, rendered into FOLDER/12mp
the first time. Each is written into the watched folder in two halves, the second a second after the
first, as a slow camera would; the time ends when watch has said its line, which it does once files
and record are written. Prints each time, and how much of it watch computed.
"""
import json
import os
import pathlib
import random
import shutil
import signal
import statistics
import subprocess
import sys
import time

HOME = pathlib.Path(__file__).resolve().parents[3]
LEADLIGHT = str(HOME / "leadlight")


def render(folder, count, seed):
    mix = json.loads((HOME / "models" / "scene" / "mix-even.json").read_text())
    mix |= {"leads": {"19": 1}, "pitch_mm": {"0.5": 1}}
    folder.mkdir(parents=True)
    (folder / "mix.json").write_text(json.dumps(mix))
    small = folder / "small"
    subprocess.run([LEADLIGHT, "scene", "set", str(folder / "mix.json"), "--count", str(count),
                    "--seed", str(seed), "--out", str(small)], check=True)
    dice = random.Random(seed)
    scenes = sorted(small.glob("*.scene.json"))
    for path in scenes:
        scene = json.loads(path.read_text())
        camera = scene["camera"]
        px_per_mm = dice.uniform(60, 120) / 0.5
        camera["lens"]["blur_px"] *= px_per_mm / camera["px_per_mm"]
        camera["sensor"] |= {"noise": dice.uniform(0.01, 0.03), "jpeg_quality": 0.95}
        camera |= {"width_px": 4000, "height_px": 3000, "px_per_mm": px_per_mm}
        path.write_text(json.dumps(scene))
    subprocess.run([LEADLIGHT, "scene", *map(str, scenes), "--out", str(folder)], check=True)


def processor_s(pid):
    stat = pathlib.Path(f"/proc/{pid}/stat").read_text().rsplit(")", 1)[1].split()
    return (int(stat[11]) + int(stat[12])) / os.sysconf("SC_CLK_TCK")


def deliver(photo, place):
    content = photo.read_bytes()
    with open(place, "wb") as file:
        file.write(content[:len(content) // 2])
        file.flush()
        time.sleep(1)
        file.write(content[len(content) // 2:])
    return time.monotonic()


def main(folder, count=20, seed=1):
    pictures = folder / "12mp"
    if not pictures.exists():
        render(pictures, count, seed)
    for old in ["day", "out", "record"]:
        shutil.rmtree(folder / old, ignore_errors=True)
    inbox = folder / "day" / "job" / "board"
    inbox.mkdir(parents=True)
    run = subprocess.Popen([LEADLIGHT, "watch", str(folder / "day"), "--leads", "19", "--pitch",
                            "0.5", "--out", str(folder / "out"), "--record",
                            str(folder / "record")], stdout=subprocess.PIPE,
                           stderr=subprocess.PIPE, text=True)
    print(run.stderr.readline().strip())
    times = []
    for photo in sorted(pictures.glob("*.jpg"))[:count]:
        used = processor_s(run.pid)
        last_byte = deliver(photo, inbox / photo.name)
        line = run.stdout.readline().strip()
        times.append(time.monotonic() - last_byte)
        print(f"{times[-1]:.2f} s, {processor_s(run.pid) - used:.2f} s processor, "
              f"{photo.stat().st_size / 1e6:.1f} MB, load {os.getloadavg()[0]:.1f}: {line}",
              flush=True)
        time.sleep(0.3)
    run.send_signal(signal.SIGINT)
    run.wait()
    print(f"{len(times)} photos: least {min(times):.2f} s, median {statistics.median(times):.2f} s, "
          f"most {max(times):.2f} s; {sum(t <= 1 for t in times)} within a second")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]).resolve(), *map(int, sys.argv[2:]))
