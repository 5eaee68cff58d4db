#!/usr/bin/env bash
# Builds everything with warnings as errors and runs every test, the browser's included. Installs what is missing on a Debian machine.
set -uo pipefail
cd "$(dirname "$0")" || exit 1
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 TESTINGPLATFORM_TELEMETRY_OPTOUT=1

if ! command -v chromium >/dev/null 2>&1; then
  echo "Installing Chromium for the browser tests"
  if [ "$(id -u)" = 0 ]; then as=; else as=sudo; fi
  $as apt-get update -qq && $as apt-get install -y -qq chromium >/dev/null || { echo "Chromium could not be installed: install it by hand and run this again"; exit 1; }
fi

log=$(mktemp)
trap 'rm -f "$log"' EXIT
dotnet restore Gudgeon.slnx -v q || exit 1
dotnet format whitespace Gudgeon.slnx --no-restore --verify-no-changes || { echo "Not formatted: run dotnet format whitespace Gudgeon.slnx"; exit 1; }
dotnet build Gudgeon.slnx -c Release --no-restore -v q -clp:NoSummary || { echo "The build failed"; exit 1; }
dotnet test --solution Gudgeon.slnx -c Release --no-build 2>&1 | tee "$log"
status=${PIPESTATUS[0]}
awk '/^ *total:/{t=$2} /^ *failed:/{f=$2} /^ *succeeded:/{p=$2} /^ *skipped:/{s=$2} END{printf "%d passed, %d failed, %d skipped\n", p, f, s}' "$log"
exit "$status"
