#!/usr/bin/env bash
# Shows that two builds say the same of the same photos, byte by byte: all samples scored, the demo day as a batch,
# a trial with its tables, and scenes drawn anew.
#     src/test/bench/same-bytes.sh FOLDER APP-BEFORE APP-AFTER [SCENES [THREADS]]
# An APP is a folder with leadlight.jar and lib/. SCENES (default 5) rendered pictures of a mix are scored, too, by
# THREADS (default 1), which change no byte.
# JSON, CSV, PNG, JPEG and HTML are compared, but for the time by which a run is called. Ends with status 1 if a byte
# differs, and names the files. FOLDER is emptied first. About six minutes on a core.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd -P)
folder=$1 before=$(cd "$2" && pwd) after=$(cd "$3" && pwd) scenes=${4:-5}
threads=${5:-1}
rm -rf "$folder"
mkdir -p "$folder"
folder=$(cd "$folder" && pwd)
export OPENCV_LOG_LEVEL=OFF TZ=UTC
# Defects and doubts are no failure of the comparison; faults of the program are.
leadlight() {
  local status=0
  java -jar "$app/leadlight.jar" "$@" >>"$out/said.txt" 2>&1 || status=$?
  ((status < 70)) || { echo "status $status: leadlight $*" >&2; tail -5 "$out/said.txt" >&2; exit 1; }
}
figure() { grep -o "\"$2\" *: *[0-9.]*" "$1" | head -1 | grep -o '[0-9.]*$'; }
all() {
  app=$1 out=$folder/$2
  mkdir -p "$out"
  cd "$home"
  for truth in sample-images/*.truth.json; do
    photo=${truth%.truth.json}.jpg
    leadlight score "$photo" --leads "$(figure "$truth" leads)" --pitch "$(figure "$truth" pitch_mm)" \
      --out "$out/samples" --threads "$threads"
  done
  leadlight batch sample-images/day/day.csv --out "$out/day" --record "$out/record" --by Ada --threads "$threads"
  leadlight trial sample-images --joints "$out/trial-joints.csv" --measures "$out/trial-measures.csv" \
    --out "$out/trial" --threads "$threads"
  leadlight scene set models/scene/mix-bench.json --count "$scenes" --seed 7 --out "$out/scenes" --threads "$threads"
  leadlight trial "$out/scenes" --joints "$out/scenes-joints.csv" \
    --measures "$out/scenes-measures.csv" --out "$out/scenes-trial" --threads "$threads"
  # A run is called by its time; that is no result.
  find "$out/day" -mindepth 1 -maxdepth 1 -type d -exec mv {} "$out/day/run" \;
  sed -i -E 's/[0-9]{4}-[0-9]{2}-[0-9]{2}_[0-9]{6}/RUN/g' "$out/day/run/summary.html"
}
sums() {
  (cd "$folder/$1" && find . -type f \( -name '*.json' -o -name '*.csv' -o -name '*.png' -o -name '*.html' -o -name '*.jpg' \) \
    ! -path './record/*' -print0 | sort -z | xargs -0 sha256sum)
}
all "$before" before
all "$after" after
if diff <(sums before) <(sums after); then
  echo "the same bytes: $(sums after | wc -l) files"
else
  exit 1
fi
