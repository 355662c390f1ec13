#!/usr/bin/env bash
# Builds the tree twice, in two folders, zones, locales and at two times, and compares all that is shipped.
#     src/test/bench/build-twice.sh FOLDER [MAVEN OPTIONS]
# Ends with status 1 if a byte differs, and names the files. FOLDER is emptied first.
set -euo pipefail
home=$(cd "$(dirname "$0")/../../.." && pwd -P)
folder=$1
shift
rm -rf "$folder"
build() {
  mkdir -p "$folder/$1"
  (cd "$home" && git ls-files -z --cached --others --exclude-standard | tar -c --null -T - 2>/dev/null) |
    tar -x -C "$folder/$1"
  (cd "$folder/$1" && shift && "$@" mvn -q -B -Dmaven.test.skip=true "${options[@]}" package </dev/null)
}
options=("$@")
build one env TZ=UTC LC_ALL=C.UTF-8
sleep 2
build two/deeper/down env TZ=Asia/Kolkata LC_ALL=C
sums() { (cd "$folder/$1/target" && find leadlight.jar lib -type f -print0 | sort -z | xargs -0 sha256sum); }
if diff <(sums one) <(sums two/deeper/down); then
  echo "the same bytes: $(sums one | wc -l) files, leadlight.jar $(sums one | grep leadlight.jar | cut -c1-16)"
else
  echo "the builds differ:" >&2
  diff <(unzip -v "$folder/one/target/leadlight.jar") <(unzip -v "$folder/two/deeper/down/target/leadlight.jar") >&2 || true
  exit 1
fi
