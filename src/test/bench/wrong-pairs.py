"""What is said of pairs of photos that do not belong together, or hardly.

    python3 src/test/bench/wrong-pairs.py FOLDER "java -jar target/leadlight.jar" SET...

SET is the stem of a nudge set of scenes (scene set --nudges), as nudge61/nudge-00001: its photo at rest is paired with
another board of the same part (its joints in reverse order, other grain), a pick that hides the toe of the lead it pushes, the board bumped by half a pitch, another lamp, and
itself once more without a pick; each by --same-row, --placed (the photo at rest as the one after) and nudge. Writes FOLDER/wrong-pairs.md.
"""
import json
import pathlib
import shlex
import subprocess
import sys

SIDE = [{"kind": "patch", "elevation_deg": 30, "spread_deg": 20, "azimuth_deg": 200, "count": 0, "power": 1, "red": 1, "green": 0.97, "blue": 0.92}]
RING = [{"kind": "ring", "elevation_deg": 55, "spread_deg": 8, "azimuth_deg": 0, "count": 0, "power": 1, "red": 1, "green": 1, "blue": 1}]


def variants(stem):
    """Scenes by name, made of a set's photo at rest and its first pushed one."""
    rest = json.load(open(stem + "-a.scene.json"))
    pushed = json.load(open(stem + "-b.scene.json"))
    again = json.dumps(pushed)
    other = json.loads(again)
    other["seed"] += 1
    other["joints"] = rest["joints"][::-1]
    hiding = json.loads(again)
    push = hiding["shot"]["push"]
    land = push["land"] - 1
    push["tip_mm"][0] = hiding["part"]["lands_at_mm"][land] + hiding["joints"][land]["pose"]["shift_mm"]
    push["tip_mm"][1] = -0.02
    push["tip_mm"][2] = 2 * hiding["part"]["lead_thickness_mm"]
    bumped = json.loads(again)
    bumped["camera"]["aim_along_row_mm"] += hiding["part"]["pitch_mm"] / 2
    lamp = json.loads(again)
    lamp["lamps"] = RING if rest["lamps"][0]["kind"] == "patch" else SIDE
    rested = json.loads(again)
    made = {"other-board": other, "hides-toe": hiding, "bumped": bumped, "other-lamp": lamp, "rest-again": rested}
    made["other-board"]["shot"] = {"grain": 90, "rest": False}
    made["rest-again"]["shot"] = {"grain": 91, "rest": False}
    made["rest-again"]["joints"] = rest["joints"]
    for name, scene in made.items():
        scene["name"] = pathlib.Path(stem).name + "-" + name
    return made


def run(app, *args):
    done = subprocess.run([*app, *map(str, args)], capture_output=True, text=True)
    return done.stdout + done.stderr


def joined(report, key):
    if not report.exists():
        return "nothing written"
    told = json.load(open(report))
    if key == "placed":
        if "reason" in told["placed"]:
            return "refused: " + told["placed"]["reason"]["code"]
        kinds = {"unchanged": 0, "came": 0, "not told": 0}
        for joint in told["joints"]:
            change = joint["change"]
            kind = "not told" if "reason" in change else "unchanged" if change["soldered"] < 0.5 else "came"
            kinds[kind] += 1
        return ", ".join(f"{n} {k}" for k, n in kinds.items() if n)
    other = told["photos"][1]
    return "refused: " + other["reason"]["code"] if other["role"] == "refused" else "joined"


def nudged(report):
    told = json.load(open(report))
    photo = told["photos"][0]
    if "reason" in photo:
        return "nothing: " + photo["reason"]["code"]
    lead = next(j for j in told["joints"] if j["pin"] == photo["touched_pin"])
    why = " " + lead["reason"]["code"] if "reason" in lead else ""
    return f"pin {lead['pin']} {lead['motion']} {lead['shift_um']['value']:.0f} um (u {lead['shift_um']['u']:.0f}){why}"


def main(folder, app, stems):
    app = shlex.split(app)
    folder.mkdir(parents=True, exist_ok=True)
    lines = ["| set | second photo | truth | --same-row | --placed | nudge |", "|---|---|---|---|---|---|"]
    for stem in stems:
        truth = json.load(open(stem + "-a.truth.json"))
        pushed = json.load(open(stem + "-b.truth.json"))
        row = ["--leads", truth["leads"], "--pitch", truth["pitch_mm"], "--threads", 1]
        for name, scene in variants(stem).items():
            file = folder / (scene["name"] + ".scene.json")
            json.dump(scene, open(file, "w"))
            run(app, "scene", file, "--out", folder, "--threads", 1)
            photo = folder / (scene["name"] + ".jpg")
            rest = stem + "-a.jpg"
            out = folder / scene["name"]
            same = run(app, "score", "--same-row", rest, photo, *row, "--out", out / "same")
            run(app, "score", rest, "--placed", photo, *row, "--out", out / "placed")
            run(app, "nudge", rest, photo, *row, "--out", out / "nudge")
            base = pathlib.Path(rest).stem
            push = "no pick" if "push" not in scene["shot"] else f"pin {pushed['touched_pin']} by {pushed['toe_shift_um']:.0f} um"
            reports = [
                joined(out / "same" / (base + ".joined.json"), "photos"),
                joined(out / "placed" / (base + ".json"), "placed"),
            ]
            nudge = out / "nudge" / (base + ".nudge.json")
            reports.append(nudged(nudge) if nudge.exists() else "nothing written")
            lines.append(f"| {pathlib.Path(stem).name} | {name} | {push} | " + " | ".join(reports) + " |")
            print(lines[-1], flush=True)
    (folder / "wrong-pairs.md").write_text("\n".join(lines) + "\n")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]), sys.argv[2], sys.argv[3:])
