#!/usr/bin/env bash
# usage: [GUDGEON_CONCURRENCY=2] tests/mutation.sh [folders or files of src/Gudgeon.Sums ...]
# Changes the sums one sign at a time and counts how many changes the tests catch. Without any: every folder, which takes hours.
# A subject is tried with the tests of its own folder and those over all sums; without any folder, with every test.
# Example: tests/mutation.sh Fits 'Metrology/Verdict.cs'
set -euo pipefail
cd "$(dirname "$0")/Gudgeon.Sums.Tests"
dotnet tool restore >/dev/null
files=("$@")
if [ ${#files[@]} -eq 0 ]; then
  files=('*')
else
  # Each folder once: two files of one folder must not bring its tests in twice.
  folders=$(printf '%s\n' "${files[@]%%/*}" | sort -u)
  for folder in $folders; do GUDGEON_TESTS="${GUDGEON_TESTS:+$GUDGEON_TESTS;}$folder/**/*.cs"; done
  export GUDGEON_TESTS
fi
mutate=()
for file in "${files[@]}"; do
  case "$file" in
    '*') mutate+=(--mutate '**/*.cs') ;;
    *.cs) mutate+=(--mutate "**/$file") ;;
    *) mutate+=(--mutate "**/$file/*.cs") ;;
  esac
done
# The catalogue's lists are words and published numbers: a changed word is no changed sum.
dotnet stryker --test-runner mtp --project Gudgeon.Sums.csproj "${mutate[@]}" --mutate '!**/*Sums.cs' \
  --reporter cleartext --reporter json --break-at 85 --threshold-low 85 --threshold-high 95 --concurrency "${GUDGEON_CONCURRENCY:-2}"
