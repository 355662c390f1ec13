#!/bin/sh
# Trains the second reader from nothing, on a machine with a JDK, Maven, Python, and best a GPU:
#
#     models/reader/make.sh [WORK] [pictures|train|folds|all]
#
# Pictures are drawn by the program itself, from seeds, so they are the same anywhere. BENCHMARK is a
# folder of path-traced sets with truth, REAL one of annotated photos; a set that is not there is left
# out. Of whole-bad and rough the even-numbered pictures are learned from, the odd ones and all of
# rendered only counted. PARTS processes work side by side. Python needs PyTorch, onnx, numpy, pandas
# and OpenCV. Networks land in WORK/first and WORK/again (trained twice, as proof; bytes that differ are
# named at the end), the weights of both opinions in WORK/opinions.json.
# "folds" trains three more, each without a third of the makers of photographs and without the set
# lamps, and sets the scale of "photographed" from what they say of what they did not see.
# To use them: copy WORK/first/alone.* and in-row.* here, and from opinions.json what README.md says to
# models/grade.
set -eu
cd "$(dirname "$0")/../.."
WORK=${1:-/tmp/leadlight-reader}
STEP=${2:-all}
RUN=${LEADLIGHT:-./leadlight}
PYTHON=${PYTHON:-python3}
BENCHMARK=${BENCHMARK:-../shared/benchmark}
REAL=${REAL:-../shared/real}
PARTS=${PARTS:-$(nproc)}
BENCH=${BENCH:-2000}
OTHER=${OTHER:-1000}
CALIBRATE=${CALIBRATE:-240}
KEEP=${KEEP:-280}
STEPS=${STEPS:-11000}
FOLD_STEPS=${FOLD_STEPS:-5000}
EACH=${EACH:-25} # scenes a part to learn from
FEW=${FEW:-20}   # scenes a part to count

mkdir -p "$WORK"

# NAME SEED PART SCENES MIX [learn]: a part of a set and its cuts; of those to learn from each picture is
# varied once, and every fourth row cut at a wrong place, too, to learn what is no joint.
part() {
  from="$WORK/$1/$3"
  "$RUN" scene set "$5" --count "$4" --from $(($3 * $4)) --seed "$2" --threads 1 --out "$from"
  if [ $# -eq 5 ]; then
    "$RUN" reader patches "$from" --threads 1 --out "$WORK/patches/$1/$3"
  else
    "$RUN" reader patches "$from" --threads 1 --astray --out "$WORK/patches/$1/$3"
    "$PYTHON" models/joint/vary.py "$from" "$from-varied" 1 $((100 + $3)) 1
    "$RUN" reader patches "$from-varied" --threads 1 --astray --out "$WORK/patches/$1/v$3"
  fi
  rm -rf "$from" "$from-varied"
}

# MIX: the same with fewer pixels, since cuts have 32 to a pitch: more scenes in the same time.
smaller() {
  "$PYTHON" -c 'import json, sys
mix = json.load(open(sys.argv[1]))
mix["px_per_pitch"] = [10, 15, 45, 60]
json.dump(mix, open(sys.argv[2], "w"))' "models/scene/$1.json" "$WORK/$1.json"
  echo "$WORK/$1.json"
}

# Parts of all drawn sets, one a line.
jobs() {
  parts calibrate 202 "$CALIBRATE" "$FEW" models/scene/mix-range.json
  parts calibrate-bench 404 $((CALIBRATE * 2 / 3)) "$FEW" models/scene/mix-bench.json
  parts keep 303 "$KEEP" "$FEW" models/scene/mix-range.json
  parts keep-bench 505 $((KEEP * 4 / 7)) "$FEW" models/scene/mix-bench.json
  parts bench 101 "$BENCH" "$EACH" "$(smaller mix-bench)" learn
  parts learn 121 "$OTHER" "$EACH" "$(smaller mix-learn)" learn
  parts range 131 "$OTHER" "$EACH" "$(smaller mix-range)" learn
  parts metal 141 "$OTHER" "$EACH" "$(smaller mix-metal)" learn
}

# NAME SEED COUNT EACH MIX [learn]
parts() {
  at=0
  while [ $((at * $4)) -lt "$3" ]; do
    echo "$1 $2 $at $4 $5${6:+ $6}"
    at=$((at + 1))
  done
}

# SET REST: the pictures of a path-traced set whose number divided by two leaves REST.
half() {
  mkdir -p "$WORK/$1-$2"
  for file in "$BENCHMARK/$1"/*; do
    number=$(basename "$file" | tr -cd 0-9)
    if [ $((1$number % 2)) -eq "$2" ]; then
      cp "$file" "$WORK/$1-$2"
    fi
  done
}

# FROM NAME VARIANTS: cuts of a path-traced set, to learn from.
vary() {
  variant=0
  while [ $variant -lt "$3" ]; do
    "$PYTHON" models/joint/vary.py "$1" "$WORK/$2/$variant" 1 $((7 + variant)) $variant
    "$RUN" reader patches "$WORK/$2/$variant" --threads 1 --astray --out "$WORK/patches/$2/$variant" &
    variant=$((variant + 1))
  done
  wait
}

# FROM NAME: cuts of a set, only to count.
count() {
  "$RUN" reader patches "$1" --threads 1 --out "$WORK/patches/$2/0"
}

# Pictures that the program did not draw.
given() {
  if [ -d "$BENCHMARK" ]; then
    vary "$BENCHMARK/more" more 8
    vary "$BENCHMARK/lamps" lamps 4
    mkdir -p "$WORK/nudge-shots" # of nine shots of a row, nearly alike, three
    cp "$BENCHMARK/nudge/"*-[aei].* "$WORK/nudge-shots"
    vary "$WORK/nudge-shots" nudge 2
    for set in whole-bad rough; do
      half $set 0
      half $set 1
      vary "$WORK/$set-0" $set 8
      count "$WORK/$set-1" $set-odd
    done
    count "$BENCHMARK/lamps" lamps-plain
    count "$BENCHMARK/rendered" rendered
  fi
  if [ -d "$REAL" ]; then
    count "$REAL" real
  fi
}

pictures() {
  mkdir -p "$WORK/patches"
  "$RUN" --version # builds the program once, before many start it
  given >"$WORK/log-given" 2>&1
  jobs | xargs -P "$PARTS" -L 1 models/reader/make.sh "$WORK" part >"$WORK/log-drawn" 2>&1
}

# OPTION NAME SET: an option for each part of a set, by number.
each() {
  if [ -d "$WORK/patches/$3" ]; then
    ls "$WORK/patches/$3" | sort -V | sed "s|^|$1 $2$WORK/patches/$3/|"
  fi
}

# OUT STEPS SETS [MORE OPTIONS]
train() {
  out=$1
  steps=$2
  sets=$3
  shift 3
  source="models/reader/make.sh: $BENCH scenes of mix-bench, seed 101, $OTHER each of mix-learn, 121, \
mix-range, 131, and mix-metal, 141, each once more varied, and $sets; scales from $CALIBRATE of mix-range, \
seed 202, and $((CALIBRATE * 2 / 3)) of mix-bench, seed 404; $steps steps"
  # shellcheck disable=SC2046 # a part's path has no blanks
  set -- "$@" $(each --fit bench= bench) $(each --fit scenes= learn) $(each --fit scenes= range) \
    $(each --fit metal= metal) $(for set in $sets; do each --fit $set= $set; done) \
    $(each --calibrate "" calibrate) $(each --calibrate "" calibrate-bench) \
    $(for set in keep keep-bench rendered whole-bad-odd rough-odd lamps-plain real; do
      each --test $set= $set
    done)
  [ -d "$REAL" ] && set -- "$@" --notes "$REAL"
  "$PYTHON" models/reader/train.py "$@" --out "$WORK/$out" --steps "$steps" --source "$source"
}

SETS="lamps more nudge whole-bad rough real"
FOLD_SETS="more nudge whole-bad rough real"

twice() {
  train first "$STEPS" "$SETS"
  train again "$STEPS" "$SETS"
  for net in alone in-row; do
    cmp "$WORK/first/$net.onnx" "$WORK/again/$net.onnx" || echo "compare the figures.json" >&2
  done
  "$PYTHON" models/reader/weigh.py --out "$WORK/opinions.json" \
    --source "models/reader/weigh.py on $CALIBRATE pictures of models/scene/mix-range.json, seed 202, \
and $((CALIBRATE * 2 / 3)) of mix-bench.json, seed 404, from which neither opinion learned" \
    --fit "$WORK/first/read-calibrate.csv" --test "keep=$WORK/first/read-keep.csv"
}

FOLD_1=rjmendez/rjmendez.github.io,borti4938/n64adv2_pcb,emard/ulx3s,c0pperdragon/A-VideoBoard
FOLD_1=$FOLD_1,q3k/chubby75
FOLD_2=masterzen/blog,cdhooper/kicksmash32,adafruit/Adafruit-DVI-Breakout-Board-PCB
FOLD_2=$FOLD_2,wagiminator/Development-Boards
FOLD_3=OpenElectronicsLab/presentations,wuxx/Colorlight-FPGA-Projects,flashrom/flashrom
FOLD_3=$FOLD_3,zaxour/TurboNanza

folds() {
  train fold1 "$FOLD_STEPS" "$FOLD_SETS" --without "$FOLD_1"
  train fold2 "$FOLD_STEPS" "$FOLD_SETS" --without "$FOLD_2"
  train fold3 "$FOLD_STEPS" "$FOLD_SETS" --without "$FOLD_3"
  "$PYTHON" models/reader/photographed.py --reader "$WORK/first/alone.json" \
    --fold "$WORK/fold1" --without "$FOLD_1" --fold "$WORK/fold2" --without "$FOLD_2" \
    --fold "$WORK/fold3" --without "$FOLD_3"
}

case $STEP in
part)
  shift 2
  part "$@"
  ;;
pictures) pictures ;;
train) twice ;;
folds) folds ;;
*)
  pictures
  twice
  folds
  ;;
esac
