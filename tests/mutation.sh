#!/usr/bin/env bash
# usage: tests/mutation.sh [folders or files of src/Gudgeon.Sums ...]
# Changes the sums one sign at a time and counts how many changes the tests catch. Without any: every folder, which takes hours.
# Example: tests/mutation.sh Fits 'Metrology/Verdict.cs'
set -euo pipefail
cd "$(dirname "$0")/Gudgeon.Sums.Tests"
dotnet tool restore >/dev/null
files=("$@")
[ ${#files[@]} -gt 0 ] || files=(Fasteners Fits Fluids Lifting Metrology Motion Quantities Shapes Springs Statistics)
mutate=()
for file in "${files[@]}"; do
  case "$file" in
    *.cs) mutate+=(--mutate "**/$file") ;;
    *) mutate+=(--mutate "**/$file/*.cs") ;;
  esac
done
# The catalogue's lists are words and published numbers: a changed word is no changed sum.
dotnet stryker --test-runner mtp --project Gudgeon.Sums.csproj "${mutate[@]}" --mutate '!**/*Sums.cs' \
  --reporter cleartext --reporter json --break-at 85 --threshold-low 85 --threshold-high 95 --concurrency 2
