#!/usr/bin/env python3
"""Types the commands of the four ten-minute pages, each page in a folder of its own, and says what failed.

Argument: the launcher to run in place of ./leadlight (default: the one of this tree).
"""
import pathlib
import re
import shlex
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[3]
# A trainee who calls everything by the first answer.
ANSWERS = "1\n" * 40
PAGES = ["for-the-tech", "for-the-shop", "for-qa", "for-the-trainee"]


def main():
    launcher = str(pathlib.Path(sys.argv[1] if len(sys.argv) > 1 else ROOT / "leadlight").resolve())
    failed = 0
    for page in PAGES:
        text = (ROOT / "docs" / (page + ".md")).read_text(encoding="utf-8")
        with tempfile.TemporaryDirectory(prefix="leadlight-pages-") as folder:
            (pathlib.Path(folder) / "sample-images").symlink_to(ROOT / "sample-images")
            for block in re.findall(r"(?s)```\n(.*?)```", text):
                for line in block.strip().splitlines():
                    words = shlex.split(line)
                    start = time.time()
                    done = subprocess.run(
                        [launcher] + words[1:], cwd=folder, input=ANSWERS,
                        stdout=subprocess.PIPE, stderr=subprocess.STDOUT, encoding="utf-8")
                    fine = done.returncode in (0, 3, 4)
                    failed += not fine
                    print("%s: status %d, %.1f s: %s" % (page, done.returncode, time.time() - start, line), flush=True)
                    if not fine or "-v" in sys.argv:
                        print(done.stdout, flush=True)
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
