#!/bin/sh
# Trains the second reader from nothing, on a machine with a JDK, Maven, Python, and best a GPU:
#
#     models/reader/make.sh [WORK] [pictures|train|folds|all]
#
# Pictures are drawn by the program itself, from seeds, so they are the same anywhere. BENCHMARK is a
# folder of path-traced sets with truth, REAL one of annotated photos; a set that is not there is left
# out. Of whole-bad and rough the even-numbered pictures are learned from, the odd ones and all of
# rendered only counted. PARTS processes work side by side, with two threads each. Python needs
# PyTorch, onnx, numpy, pandas and OpenCV. Networks land in WORK/first and WORK/again (trained twice, as
# proof; bytes that differ are named at the end), the weights of both opinions in WORK/opinions.json.
# "folds" trains three more, each without a third of the makers of photographs and without the set
# lamps, and sets the scale of "photographed" from what they say of what they did not see.
# To use them: copy WORK/first/reader.onnx and reader.json here as alone.onnx and alone.json, and
# opinions.json to models/grade.
set -eu
cd "$(dirname "$0")/../.."
WORK=${1:-/tmp/leadlight-reader}
STEP=${2:-all}
RUN=${LEADLIGHT:-./leadlight}
PYTHON=${PYTHON:-python3}
BENCHMARK=${BENCHMARK:-../shared/benchmark}
REAL=${REAL:-../shared/real}
CORES=$(nproc)
PARTS=${PARTS:-$((CORES / 2 > 0 ? CORES / 2 : 1))}
FIT=${FIT:-2240}
CALIBRATE=${CALIBRATE:-240}
KEEP=${KEEP:-400}
STEPS=${STEPS:-12000}
FOLD_STEPS=${FOLD_STEPS:-3000}

mkdir -p "$WORK"

# NAME SEED COUNT MIX: a set in PARTS parts, then its patches, each part as soon as it is drawn.
draw() {
  each=$((($3 + PARTS - 1) / PARTS))
  part=0
  while [ $part -lt "$PARTS" ]; do
    (
      "$RUN" scene set "$4" --count $each --from $((part * each)) --seed "$2" --threads 2 \
        --out "$WORK/$1/$part"
      "$RUN" reader patches "$WORK/$1/$part" --threads 2 --out "$WORK/patches/$1/$part" $ASTRAY
      if [ -n "$ASTRAY" ]; then
        "$PYTHON" models/joint/vary.py "$WORK/$1/$part" "$WORK/varied/$part" 1 $((100 + part)) 1
        "$RUN" reader patches "$WORK/varied/$part" --threads 2 $ASTRAY \
          --out "$WORK/patches/varied/$part"
      fi
    ) >"$WORK/log-$1-$part" 2>&1 &
    part=$((part + 1))
  done
  wait
  for part in "$WORK/$1"/*; do
    if [ ! -s "$WORK/patches/$1/$(basename "$part")/joints.bin" ]; then
      echo "no patches of $part; see $WORK/log-$1-$(basename "$part")" >&2
      exit 1
    fi
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

# FROM NAME VARIANTS: patches of a path-traced set, to learn from.
vary() {
  "$PYTHON" models/joint/vary.py "$1" "$WORK/$2" "$3"
  "$RUN" reader patches "$WORK/$2" --threads 4 --astray --out "$WORK/patches/$2"
}

# FROM NAME: patches of a set, only to count.
count() {
  "$RUN" reader patches "$1" --threads 4 --out "$WORK/patches/$2"
}

# Pictures that the program did not draw.
given() {
  if [ -d "$BENCHMARK" ]; then
    vary "$BENCHMARK/more" more 8 &
    vary "$BENCHMARK/lamps" lamps 4 &
    mkdir -p "$WORK/nudge-shots" # of nine shots of a row, nearly alike, three
    cp "$BENCHMARK/nudge/"*-[aei].* "$WORK/nudge-shots"
    vary "$WORK/nudge-shots" nudge 2 &
    for set in whole-bad rough; do
      half $set 0
      half $set 1
      vary "$WORK/$set-0" $set 8 &
      count "$WORK/$set-1" $set-odd
    done
    count "$BENCHMARK/lamps" lamps-plain
    count "$BENCHMARK/rendered" rendered
  fi
  if [ -d "$REAL" ]; then
    count "$REAL" real
  fi
  wait
}

pictures() {
  mkdir -p "$WORK/patches"
  "$RUN" --version # builds the program once, before many start it
  given >"$WORK/log-given" 2>&1 &
  ASTRAY=
  all=$PARTS
  PARTS=$((all / 4 > 0 ? all / 4 : 1)) # small sets side by side: starting Java costs, too
  draw calibrate 202 "$CALIBRATE" models/scene/mix-range.json &
  small=$!
  draw calibrate-bench 404 $((CALIBRATE * 2 / 3)) models/scene/mix-bench.json &
  small="$small $!"
  draw keep 303 "$KEEP" models/scene/mix-range.json &
  small="$small $!"
  draw keep-bench 505 $((KEEP / 2)) models/scene/mix-bench.json &
  small="$small $!"
  PARTS=$all
  ASTRAY=--astray # rows at wrong places, to learn what is no joint
  draw fit 101 "$FIT" models/scene/mix-bench.json
  for set in $small; do
    wait "$set"
  done
}

# OUT STEPS SETS [MORE OPTIONS]
train() {
  out=$1
  steps=$2
  sets=$3
  shift 3
  set -- "$@" --out "$WORK/$out" --steps "$steps" --source "models/reader/make.sh: $FIT scenes of \
mix-bench, seed 101, each once more varied, and $sets; scales from $CALIBRATE of mix-range, seed 202, \
and $((CALIBRATE * 2 / 3)) of mix-bench, seed 404; $steps steps"
  for part in "$WORK"/patches/fit/* "$WORK"/patches/varied/*; do
    set -- "$@" --fit "scenes=$part"
  done
  for name in $sets; do
    [ -d "$WORK/patches/$name" ] && set -- "$@" --fit "$name=$WORK/patches/$name"
  done
  [ -d "$REAL" ] && set -- "$@" --notes "$REAL"
  for part in "$WORK"/patches/calibrate/* "$WORK"/patches/calibrate-bench/*; do
    set -- "$@" --calibrate "$part"
  done
  for name in keep keep-bench; do
    for part in "$WORK/patches/$name"/*; do
      set -- "$@" --test "$name=$part"
    done
  done
  for name in rendered whole-bad-odd rough-odd lamps-plain real; do
    [ -d "$WORK/patches/$name" ] && set -- "$@" --test "$name=$WORK/patches/$name"
  done
  "$PYTHON" models/reader/train.py "$@"
}

SETS="more lamps nudge whole-bad rough real"
FOLD_SETS="more nudge whole-bad rough real"

twice() {
  train first "$STEPS" "$SETS"
  train again "$STEPS" "$SETS"
  cmp "$WORK/first/reader.onnx" "$WORK/again/reader.onnx" || echo "compare the two figures.json" >&2
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
  "$PYTHON" models/reader/photographed.py --reader "$WORK/first/reader.json" \
    --fold "$WORK/fold1" --without "$FOLD_1" --fold "$WORK/fold2" --without "$FOLD_2" \
    --fold "$WORK/fold3" --without "$FOLD_3"
}

case $STEP in
pictures) pictures ;;
train) twice ;;
folds) folds ;;
*)
  pictures
  twice
  folds
  ;;
esac
