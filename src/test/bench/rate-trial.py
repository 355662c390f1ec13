#!/usr/bin/python3
"""Photos a second of a batch against the time that decoding alone takes.

    src/test/bench/rate-trial.py FOLDER PHOTO...

The photos, rows of 19 leads at 0.5 mm, are scored in one batch (started program and summary
included) and then decoded one after the other by OpenCV's Python binding on one core. FOLDER is
emptied first. Processor time is that of all threads.
"""
import os
import pathlib
import resource
import shutil
import subprocess
import sys
import time

import cv2
import numpy

HOME = pathlib.Path(__file__).resolve().parents[3]


def main(folder, *photos):
    shutil.rmtree(folder, ignore_errors=True)
    day = folder / "day" / "job" / "board"
    day.mkdir(parents=True)
    for photo in photos:
        (day / photo.name).symlink_to(photo)
    command = [str(HOME / "leadlight"), "batch", str(folder / "day"), "--leads", "19", "--pitch",
               "0.5", "--out", str(folder / "out"), "--record", str(folder / "record")]
    load = os.getloadavg()[0]
    began = time.monotonic()
    run = subprocess.run(command, capture_output=True, text=True)
    wall = time.monotonic() - began
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    work = used.ru_utime + used.ru_stime
    cv2.setNumThreads(1)
    began = time.process_time()
    pixels = 0
    for photo in photos:
        picture = cv2.imdecode(numpy.frombuffer(photo.read_bytes(), numpy.uint8), cv2.IMREAD_COLOR)
        pixels += picture.shape[0] * picture.shape[1]
    decode = time.process_time() - began
    print(run.stdout.splitlines()[0])
    print(f"{len(photos)} photos of {pixels / 1e6 / len(photos):.1f} MP, load {load:.1f}: batch "
          f"{wall:.1f} s, {len(photos) / wall:.2f} photos/s, {work:.1f} s processor; decoding "
          f"{decode:.2f} s processor; ratio of wall to decoding on two cores "
          f"{wall / (decode / 2):.1f}, of processor times {work / decode:.1f}; most memory "
          f"{used.ru_maxrss / 1024:.0f} MB")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]).resolve(), *(pathlib.Path(p).resolve() for p in sys.argv[2:]))
