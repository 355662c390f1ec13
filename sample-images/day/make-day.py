#!/usr/bin/env python3
"""Makes the demo day's pictures: draws rows by models/scene/mix-workshop.json and mends them stage by stage.

Run from the repository's root: sample-images/day/make-day.py FOLDER. FOLDER gets the scene files; the pictures
and day.csv go to sample-images/day. The same program gives the same bytes.
"""
import csv
import json
import pathlib
import random
import subprocess
import sys

ROWS = {12: ("quad-flat-0.5", 12), 19: ("video-a-19-slots", ""), 24: ("flex-0.5", 24)}
JOBS = [  # job, boards, stages
    ("0412 logger Weir Lane", ["display"], "arf"),
    ("0413 logger Mill Race", ["display"], "arf"),
    ("0414 logger Ford Bridge", ["sensor"], "arf"),
    ("0415 logger Old Lock", ["radio"], "arf"),
    ("0416 base station North", ["video"], "arf"),
    ("0417 base station South", ["video"], "arf"),
    ("0418 logger Sluice 3", ["display"], "arf"),
    ("0419 logger Sluice 4", ["sensor"], "arf"),
    ("0420 logger Reed Bed", ["memory"], "arf"),
    ("0421 two loggers Staithe", ["left", "right"], "arf"),
    ("0422 base station Hill", ["video", "display"], "arf-rf"),
    ("0423 logger Gauge House", ["radio"], "af"),
]
STAGES = {"a": "as received", "r": "after rework", "f": "final"}
MENDED = 0.75  # share of faults that one rework mends


def faulty(joint):
    return joint["condition"] != "wetted" or abs(joint["pose"]["shift_mm"]) > 0.08


def mend(scene, dice, share):
    """Mends a share of the faults; a mended joint is like a good one of the row."""
    good = next(joint for joint in scene["joints"] if not faulty(joint))
    for place, joint in enumerate(scene["joints"]):
        if faulty(joint) and dice.random() < share:
            scene["joints"][place] = dict(good)
    scene["bridges"] = [b for b in scene.get("bridges", []) if dice.random() >= share]


def stage_scene(scene, name, seed):
    """The same row photographed another time: a little off, with other noise."""
    dice = random.Random(seed)
    scene["name"] = name
    scene["seed"] = seed
    scene["camera"]["aim_along_row_mm"] += dice.uniform(-0.15, 0.15)
    scene["camera"]["rotation_rad"] += dice.uniform(-0.03, 0.03)
    scene["camera"]["sensor"]["exposure"] *= dice.uniform(0.93, 1.07)
    return scene


def stages(stages_of_boards, board_number):
    parts = stages_of_boards.split("-")
    return parts[min(board_number, len(parts) - 1)]


def main(folder):
    folder.mkdir(parents=True, exist_ok=True)
    day = pathlib.Path("sample-images/day")
    day.mkdir(parents=True, exist_ok=True)
    boards = sum(len(job[1]) for job in JOBS)
    subprocess.run(
        ["./leadlight", "scene", "set", "models/scene/mix-workshop.json", "--count", str(boards)]
        + ["--seed", "7", "--out", str(folder / "drawn")], check=True)
    drawn = sorted((folder / "drawn").glob("*.scene.json"))
    lines, files = [], []
    for job, names, way in JOBS:
        for number, board in enumerate(names):
            scene = json.loads(drawn.pop(0).read_text())
            dice = random.Random(job + board)
            for stage in stages(way, number):
                if stage != "a":
                    mend(scene, dice, MENDED)
                name = f"{job[:4]}-{board}-{STAGES[stage].replace(' ', '-')}"
                path = folder / (name + ".scene.json")
                stage_scene(scene, name, dice.randrange(2**31))
                path.write_text(json.dumps(scene, indent=1))
                files.append(str(path))
                connector, leads = ROWS[len(scene["joints"])]
                lines.append([name + ".jpg", job, board, STAGES[stage], connector, leads, 2])
    subprocess.run(["./leadlight", "scene", *files, "--out", str(folder / "day")], check=True)
    for picture in (folder / "day").glob("*.jpg"):
        (day / picture.name).write_bytes(picture.read_bytes())
    with open("sample-images/day/day.csv", "w", newline="") as table:
        writer = csv.writer(table, lineterminator="\n")
        writer.writerow(["photo", "job", "board", "stage", "connector", "leads", "class"])
        writer.writerows(lines)
    print(len(lines), "photos of", len(JOBS), "jobs in sample-images/day")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]))
