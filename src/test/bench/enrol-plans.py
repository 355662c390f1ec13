"""Writes plans for `leadlight trial --enrol`.

Mock benches (scene set models/scene/mix-enrol.json --benches): python3 enrol-plans.py benches FOLDER
Path-traced sets, grouped by lamp and mask: python3 enrol-plans.py groups FOLDER, where FOLDER holds the pictures and
truth files of lamps, rough and whole-bad together. A group shows up to four photos whose joints are mostly sound and up
to four of rows bad throughout, the first by name; it judges all others. The eight largest groups with two of each, and
something left to judge, are taken. One bench a plan file may be asked for: --each writes FOLDER/plan-NAME.csv.
"""

import collections
import json
import pathlib
import sys

MOST = 4
GROUPS = 8


def benches(folder):
    plans = collections.OrderedDict()
    for photo in sorted(folder.glob("*.jpg")):
        bench, kind, _ = photo.stem.rsplit("-", 2)
        plans.setdefault(bench, []).append((photo.name, "judge" if kind == "mixed" else kind))
    return plans


def sound_share(truth):
    told = [joint["class2"] for joint in truth["joints"] if joint["class2"] != "limit"]
    return sum(it == "acceptable" for it in told) / max(1, len(told))


def groups(folder):
    found = collections.defaultdict(list)
    for file in sorted(folder.glob("*.truth.json")):
        truth = json.loads(file.read_text())
        found[truth["lamp"] + "-" + truth["mask"]].append(
            (file.name.replace(".truth.json", ".jpg"), sound_share(truth)))
    plans = {}
    for name, photos in found.items():
        sound = [photo for photo, share in photos if share > 0.5][:MOST]
        bad = [photo for photo, share in photos if share == 0][:MOST]
        left = [photo for photo, _ in photos if photo not in sound + bad]
        if len(sound) > 1 and len(bad) > 1 and left:
            plans[name] = [(it, "sound") for it in sound] + [(it, "unsoldered") for it in bad]
            plans[name] += [(it, "judge") for it in left]
    largest = sorted(plans, key=lambda name: (-len(plans[name]), name))[:GROUPS]
    return {name: plans[name] for name in sorted(largest)}


def main():
    kind, folder = sys.argv[1], pathlib.Path(sys.argv[2])
    plans = benches(folder) if kind == "benches" else groups(folder)
    files = {name: [name] for name in plans} if "--each" in sys.argv else {"all": list(plans)}
    for name, of in files.items():
        lines = ["bench,photo,as,pins"]
        lines += [f"{bench},{photo},{as_},all" for bench in of for photo, as_ in plans[bench]]
        (folder / f"plan-{name}.csv").write_text("\n".join(lines) + "\n")
    print(len(plans), "benches,", len(files), "plans in", folder)


main()
