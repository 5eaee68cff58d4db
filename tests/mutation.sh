#!/usr/bin/env bash
# usage: tests/mutation.sh [folders or files of src/Gudgeon.Sums ...]
# Changes the sums one sign at a time and counts how many changes the tests catch; below 85 % it fails. Without any: all sums.
# Stryker makes the changes, bench/Gudgeon.Mutation tries them: many a second, and with static fields set up anew where a change needs it.
# Example: tests/mutation.sh Fits Metrology/Verdict.cs
set -euo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1
out=$PWD/out/mutation
own=tests/Gudgeon.Sums.Tests

# The changes depend on the sums alone: while those stay the same, better tests can be tried at once.
stamp=$(find src/Gudgeon.Sums .config bench/Gudgeon.Mutation.HandOver -name bin -prune -o -name obj -prune -o -type f -print0 | sort -z | xargs -0 sha256sum | sha256sum)
if [ "$stamp" != "$(cat "$out/stamp" 2>/dev/null)" ]; then
  rm -rf "$out"
  mkdir -p "$out/copy"
  # Stryker swaps the changed assembly in for the built one, so it works on a copy. It tries every change itself too, slowly, with the tests it is given:
  # the one of bench/Gudgeon.Mutation.HandOver, which keeps the changed assembly.
  handover=bench/Gudgeon.Mutation.HandOver
  tar -c --exclude=bin --exclude=obj .config .editorconfig BannedSymbols.txt Directory.* global.json src/Gudgeon.Sums $handover | tar -x -C "$out/copy"
  # The catalogue's lists are words and published numbers: a changed word is no changed sum.
  (cd "$out/copy/$handover" && dotnet tool restore >/dev/null && GUDGEON_CHANGED_SUMS=$out/Gudgeon.Sums.dll dotnet stryker --test-runner mtp \
    --project Gudgeon.Sums.csproj --configuration Release --mutate '**/*.cs' --mutate '!**/*Sums.cs' --reporter json --break-at 0 --skip-version-check \
    -O "$out/stryker" >"$out/stryker.txt") || { cat "$out/stryker.txt"; exit 2; }
  echo "$stamp" >"$out/stamp"
fi

dotnet build $own -c Release -v q -clp:NoSummary
dotnet build bench/Gudgeon.Mutation -c Release -v q -clp:NoSummary
rm -rf "$out/tests"
cp -r $own/bin/Release/net10.0 "$out/tests"
cp "$out/Gudgeon.Sums.dll" "$out/tests/"
exec bench/Gudgeon.Mutation/bin/Release/net10.0/Gudgeon.Mutation "$out/stryker/reports/mutation-report.json" "$out/tests" "$out" "$@"
