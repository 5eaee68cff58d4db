#!/usr/bin/env bash
# Makes the pictures of the README from the demo book. Needs Chromium and a Release build (./check.sh makes both).
set -euo pipefail
cd "$(dirname "$0")/../.."
books=$(mktemp -d)
program=$(ls src/Gudgeon/bin/Release/net10.0/*/gudgeon)
"$program" journal import demo/hill-climb.jsonl --as demo --books "$books"
"$program" serve --port 5077 --books "$books" >/dev/null &
server=$!
trap 'kill $server; rm -rf "$books"' EXIT
sleep 4
shot() {
  chromium --headless --no-sandbox --disable-gpu --no-first-run --disable-background-networking --hide-scrollbars \
    --user-data-dir="$(mktemp -d)" --window-size="$3" --screenshot="docs/pictures/$2" "http://127.0.0.1:5077/books/demo/$1" >/dev/null 2>&1
}
shot strip strip.png 1366,900
shot refit refit.png 1366,900
