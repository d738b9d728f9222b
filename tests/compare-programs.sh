#!/usr/bin/env bash
# Runs two built programs side by side and compares every byte they print and write: compare-programs.sh PROGRAM OTHER [quick].
# Every command, every shipped scenario; "quick" takes one scenario and no study. What differs is named, and the exit code is 1.
set -uo pipefail
one=$(realpath "$1") other=$(realpath "$2") quick=${3:-}
root=$(cd "$(dirname "$0")/.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
runs=0 different=0

# Progress tells the time, which is nobody's result. Each program works in a folder of its own that holds the same files, so that no path can differ.
for side in one other; do
  mkdir "$work/$side"
  cp -r "$root/scenarios" "$work/$side/"
done

both() {
  local name="$1" side
  shift
  for side in one other; do
    (cd "$work/$side" && "${!side}" "$@" > "$name.out.txt" 2> "$name.log"; echo $? >> "$name.out.txt"
      grep -v ' s left$' "$name.log" > "$name.err.txt"; rm "$name.log")
  done
  runs=$((runs + 1))
  if ! diff -rq "$work/one" "$work/other" > "$work/diff.txt"; then
    different=$((different + 1))
    echo "different: $*"
    sed "s|$work/||g" "$work/diff.txt"
  fi
  # Compared files are gone, so that the next difference is the next command's.
  rm -rf "$work"/{one,other}/{out,*.txt}
}

scenarios=("$root"/scenarios/*.toml)
[ -z "$quick" ] || scenarios=("$root/scenarios/small-walker.toml")
both version --version
both help help
both slip retreive scenarios/small-walker.toml
both missing check scenarios/none.toml
both start start walker --mass "1/2 oz" --rod "7 ft medium-heavy fast" --line "30 lb braid" --leader "15 in nylon"
for list in "" lures rods lines leaders reels hands styles water; do
  both "list-$list" list ${list:+"$list"}
done
both bend bend scenarios/bend-test.csv
both fit fit scenarios/pool-measured.csv
for file in "${scenarios[@]}"; do
  name=$(basename "$file" .toml)
  both "check-$name" check "scenarios/$name.toml" --effective
  both "retrieve-$name" retrieve "scenarios/$name.toml"
  both "trim-$name" trim "scenarios/$name.toml"
  both "pool-$name" pool "scenarios/$name.toml"
  both "cast-$name" cast "scenarios/$name.toml" --json --out out/cast
  [ -z "$quick" ] || continue
  both "sweep-$name" sweep "scenarios/$name.toml" --vary "retrieve.cadence=1 /s,2 /s" --vary "line.material=braid,nylon" --set "retrieve.duration=8 s" --threads 1
done
if [ -z "$quick" ]; then
  both doubt retrieve scenarios/small-walker.toml --set "retrieve.duration=5 s" --doubt 8
  both page page scenarios/small-walker.toml --quick --out out/page
  both compare compare scenarios/small-walker.toml scenarios/small-walker-nylon.toml
  both cadence cadence scenarios/small-walker.toml --from "1.5 /s" --to "2.5 /s" --nodes 10 --step "2 ms" --warm-up "3 s" --twitches 6 --starts 1
fi
echo "$runs runs, $different different"
[ "$different" -eq 0 ]
