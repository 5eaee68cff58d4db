#!/usr/bin/env bash
# usage: tests/mutation.sh [files of src/Gudgeon.Sums ...]
# Changes the sums one sign at a time and counts how many changes the tests catch. Without files: metrology and statistics.
# Example: tests/mutation.sh 'Metrology/Verdict.cs' 'Metrology/Limits.cs'
set -euo pipefail
cd "$(dirname "$0")/Gudgeon.Sums.Tests"
dotnet tool restore >/dev/null
files=("$@")
[ ${#files[@]} -gt 0 ] || files=('Metrology/*.cs' 'Statistics/*.cs')
mutate=()
for file in "${files[@]}"; do mutate+=(--mutate "**/$file"); done
# The catalogue's lists are words and published numbers: a changed word is no changed sum.
dotnet stryker --test-runner mtp --project Gudgeon.Sums.csproj "${mutate[@]}" --mutate '!**/*Sums.cs' \
  --reporter cleartext --reporter json --break-at 85 --threshold-low 85 --threshold-high 95 --concurrency 2
