#!/bin/sh
# Trains the second reader from nothing, on a machine with a JDK, Maven, Python, and best a GPU:
#
#     models/reader/make.sh [WORK] [pictures|train|all]
#
# Pictures are drawn by the program itself, from seeds, so they are the same anywhere. BENCHMARK is a
# folder of pictures with truth in the style of benchmark/more, REAL one of annotated photos; a set
# that is not there is left out. PARTS processes work side by side, with two threads each. Python needs
# PyTorch, onnx, numpy, pandas and OpenCV. Networks land in WORK/first and WORK/again (trained twice, as
# proof; bytes that differ are named at the end), the weights of both opinions in WORK/opinions.json.
# To use them: copy WORK/first/reader.onnx and reader.json here and opinions.json to models/grade.
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
FIT=${FIT:-4000}
CALIBRATE=${CALIBRATE:-320}
KEEP=${KEEP:-560}
STEPS=${STEPS:-12000}

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
      if [ "$1" = fit ]; then
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

# Pictures that the program did not draw.
given() {
  if [ -d "$BENCHMARK/more" ]; then
    "$PYTHON" models/joint/vary.py "$BENCHMARK/more" "$WORK/more" 12
    "$RUN" reader patches "$WORK/more" --threads 4 --astray --out "$WORK/patches/more"
    "$RUN" reader patches "$BENCHMARK/rendered" --threads 4 --out "$WORK/patches/rendered"
  fi
  if [ -d "$REAL" ]; then
    "$RUN" reader patches "$REAL" --threads 4 --out "$WORK/patches/real"
  fi
}

pictures() {
  mkdir -p "$WORK/patches"
  "$RUN" --version # builds the program once, before many start it
  given >"$WORK/log-given" 2>&1 &
  ASTRAY=
  draw calibrate 202 "$CALIBRATE" models/scene/mix-range.json
  draw keep 303 "$KEEP" models/scene/mix-range.json
  ASTRAY=--astray # rows at wrong places, to learn what is no joint
  draw fit 101 "$FIT" models/scene/mix-learn.json
}

# OUT [MORE OPTIONS]
train() {
  out=$1
  shift
  set -- "$@" --out "$WORK/$out" --steps "$STEPS" --source "models/reader/make.sh: $FIT scenes of \
mix-learn, seed 101, each once more varied; scales from $CALIBRATE of mix-range, seed 202; $STEPS steps"
  for part in "$WORK"/patches/fit/* "$WORK"/patches/varied/*; do
    set -- "$@" --fit "scenes=$part"
  done
  [ -d "$WORK/patches/more" ] && set -- "$@" --fit "more=$WORK/patches/more"
  [ -d "$WORK/patches/real" ] && set -- "$@" --fit "real=$WORK/patches/real"
  for part in "$WORK"/patches/calibrate/*; do
    set -- "$@" --calibrate "$part"
  done
  for part in "$WORK"/patches/keep/*; do
    set -- "$@" --test "keep=$part"
  done
  for name in rendered real; do
    [ -d "$WORK/patches/$name" ] && set -- "$@" --test "$name=$WORK/patches/$name"
  done
  "$PYTHON" models/reader/train.py "$@"
}

twice() {
  train first
  train again
  cmp "$WORK/first/reader.onnx" "$WORK/again/reader.onnx" || echo "compare the two figures.json" >&2
  "$PYTHON" models/reader/weigh.py --out "$WORK/opinions.json" \
    --source "models/reader/weigh.py on $CALIBRATE pictures of mix-range, seed 202" \
    --fit "$WORK/first/read-calibrate.csv" --test "keep=$WORK/first/read-keep.csv"
}

case $STEP in
pictures) pictures ;;
train) twice ;;
*)
  pictures
  twice
  ;;
esac
