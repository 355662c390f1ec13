#!/usr/bin/env python3
"""Runs leadlight.cmd under Wine's command processor with a stub java; prints docs/release.md's table.

Needs wine. A copy of leadlight.cmd is laid into folders of odd names with an empty jar; the stub, a
batch file, prints the arguments as it got them and exits with 3. Wine is not Windows: what holds
here is likely there, no more. Its command processor reads the percent signs of a value again, where
Windows does not as far as remembered: those lines fail here and are untried there.
"""
import os
import pathlib
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[3]
STUB = "@echo off\r\necho STUB %~f0\r\n:next\r\nif \"%~1\"==\"\" exit 3\r\necho ARG %1\r\nshift\r\ngoto next\r\n"
FOLDERS = ["plain", "with blanks", "Lötstelle", "this & that", "100 % sure"]
PHOTOS = ["a.jpg", "my photo.jpg", "Lötstelle ü.jpg", "this & that.jpg", "100 % sure.jpg"]


def windows(path):
    return "Z:" + str(path).replace("/", "\\")


def run(folder, environment):
    """Names reach the script by its environment: its own bytes would be read in a code page.

    Not by "call", which reads every percent sign a second time.
    """
    script = folder / "go.cmd"
    script.write_bytes(b'@echo off\r\n"%LAUNCHER%" score "%PHOTO%" --leads 19\r\n')
    inherited = {k: v for k, v in os.environ.items() if k != "JAVA_HOME"}
    done = subprocess.run(
        ["wine", "cmd", "/c", windows(script)],
        env={**inherited, "WINEDEBUG": "-all", "LC_ALL": "C.UTF-8", **environment},
        stdin=subprocess.DEVNULL, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, timeout=120, cwd=folder)
    return done.returncode, done.stdout.decode("utf-8", "replace").replace("\r", "")


def case(base, folder, photo, with_home):
    home = base / folder
    (home / "target").mkdir(parents=True, exist_ok=True)
    (home / "target" / "leadlight.jar").touch()
    (home / "leadlight.cmd").write_bytes((ROOT / "leadlight.cmd").read_bytes())
    java = base / ("a java & ü" if with_home else "path")
    (java / "bin").mkdir(parents=True, exist_ok=True)
    (java / "bin" / "java.cmd").write_bytes(STUB.encode("utf-8"))
    environment = {"JAVA_HOME": windows(java)} if with_home else {"WINEPATH": windows(java / "bin")}
    environment.update(LAUNCHER=windows(home / "leadlight.cmd"), PHOTO=photo)
    status, out = run(base, environment)
    # Umlauts are printed in the console's code page: what is compared is their rest.
    said = out.encode("ascii", "replace").decode().replace("?", "")
    bare = lambda name: name.encode("ascii", "ignore").decode()
    got = {
        "jar": bare('ARG "%s"' % windows(home / "target" / "leadlight.jar")) in said,
        "photo": bare('ARG "%s"' % photo) in said,
        "status": status == 3,
    }
    return all(got.values()), ", ".join(k for k, v in got.items() if not v), out


def main():
    print("| installed in | photo | JAVA_HOME | holds |")
    print("|---|---|---|---|")
    failed = 0
    with tempfile.TemporaryDirectory(prefix="leadlight-wine-") as name:
        base = pathlib.Path(name)
        cases = [(folder, "a.jpg") for folder in FOLDERS] + [("plain", photo) for photo in PHOTOS[1:]]
        for folder, photo in cases:
            for with_home in (True, False):
                holds, lost, out = case(base, folder, photo, with_home)
                failed += not holds
                said = "yes" if holds else "no: " + lost
                print("| `%s` | `%s` | %s | %s |" % (folder, photo, "set" if with_home else "not set", said), flush=True)
                if not holds and "-v" in sys.argv:
                    print(out)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
