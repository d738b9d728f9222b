#!/usr/bin/env bash
# How long whole commands take, the start of the program included: start-times.sh PROGRAM...; medians of 15 starts each, on the clock and in user and system
# CPU time, and the load of the machine, because a clock tells nothing on a busy one. For docs/performance.md; no test asks for a time. Programs take turns,
# so that a busy minute is the same for each. STARTS=40 asks for more starts.
set -euo pipefail
[ $# -gt 0 ] || { echo "start-times.sh PROGRAM..." >&2; exit 2; }
root=$(cd "$(dirname "$0")/.." && pwd)
starts=${STARTS:-15}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
programs=()
for program in "$@"; do programs+=("$(realpath "$program")"); done
cp -r "$root/scenarios" "$work/"
cd "$work"
TIMEFORMAT='%R %U %S'

median() { sort -n | awk '{ v[NR] = $1 } END { print NR % 2 ? v[(NR + 1) / 2] : (v[NR / 2] + v[NR / 2 + 1]) / 2 }'; }

measure() {
  local name="$1" i p
  shift
  for ((i = 0; i <= starts; i++)); do
    for p in "${!programs[@]}"; do
      { time "${programs[p]}" "$@" > told.txt 2> faults.txt; } 2> time.txt || { cat faults.txt >&2; exit 1; }
      # The first start reads the program from the disk.
      [ "$i" -eq 0 ] || cat time.txt >> "$p.txt"
    done
  done
  for p in "${!programs[@]}"; do
    printf '%-38s %-10s clock %4.0f ms   CPU %4.0f ms   least %4.0f, %4.0f ms\n' "$name" "program $((p + 1))" \
      "$(awk '{ print $1 * 1000 }' "$p.txt" | median)" "$(awk '{ print ($2 + $3) * 1000 }' "$p.txt" | median)" \
      "$(awk '{ print $1 * 1000 }' "$p.txt" | sort -n | head -n 1)" "$(awk '{ print ($2 + $3) * 1000 }' "$p.txt" | sort -n | head -n 1)"
    rm "$p.txt"
  done
}

for p in "${!programs[@]}"; do echo "program $((p + 1)): $("${programs[p]}" --version), $(du -h "${programs[p]}" | cut -f1) ($1)"; shift; done
echo "$starts starts each, $(nproc) processors, load $(cut -d' ' -f1-3 /proc/loadavg)"
measure "--version" --version
measure "check small-walker" check scenarios/small-walker.toml
for walker in small large; do
  measure "retrieve $walker-walker 10 s, --json" retrieve "scenarios/$walker-walker.toml" --set "retrieve.duration=10 s" --plots none --json
  measure "retrieve $walker-walker 10 s, files" retrieve "scenarios/$walker-walker.toml" --set "retrieve.duration=10 s" --plots none --out out
done
echo "load at the end $(cut -d' ' -f1-3 /proc/loadavg)"
