#!/bin/bash
# What the bench's page takes at a large unit, in a real browser with a practice meter on a socket: from a value to
# its tone, to its explanation, thousands of typed values; and the program alone: its first page, its memory when idle.
# From the project's root after `mvn package`, with chromium and chromium-driver:
#   src/bench/bench-delay.sh [WIRES] [TOUCHES] [TYPED] [FOLDER]
set -eu
wires=${1:-2000}
touches=${2:-200}
typed=${3:-4000}
folder=${4:-target/bench-delay}
cp=${CP:-target/classes:target/test-classes:target/lib/*}
ringout=${RINGOUT:-target/ringout}
[ -f "$folder/harness.xlsx" ] || java -cp "$cp" dev.ringout.benchmarks.BigUnit "$folder" "$wires" 0 xlsx
rm -f "$folder"/*.db*

java -Xmx512m -cp "$cp" dev.ringout.page.BenchDelays "$folder/harness.xlsx" "$touches" "$typed" "$folder"

python3 - "$folder" $ringout <<'P'
import re, subprocess, sys, time, urllib.request, http.cookiejar, json
folder, *program = sys.argv[1:]

def start():
    began = time.time()
    run = subprocess.Popen([*program, "bench", f"{folder}/harness.xlsx", "--no-browser", "--store", f"{folder}/idle.db"],
                           stdout=subprocess.PIPE, text=True)
    address = re.search(r"http\S+", run.stdout.readline()).group()
    said = time.time()
    opener = urllib.request.build_opener(urllib.request.HTTPCookieProcessor(http.cookiejar.CookieJar()))
    opener.open(address).read()
    return run, opener, address, said - began, time.time() - began

for attempt in range(4):
    run, opener, address, said, page = start()
    if attempt < 3:
        run.kill(); run.wait()
    print(f"command to address {said * 1000:.0f} ms, to first page {page * 1000:.0f} ms")
home = address.split("/?")[0]

def post(path, **body):
    request = urllib.request.Request(home + path, json.dumps(body).encode(), {"Content-Type": "application/json", "Origin": home})
    return json.load(opener.open(request))

lists = json.load(opener.open(home + "/api/units"))["lists"]
post("/api/session/start", list=lists[0]["id"], serial="3", tester="R. Adeyemi")
step = json.load(opener.open(home + "/api/state"))["session"]["step"]["id"]
post("/api/session/take", step=step, typed="0.05")
time.sleep(20)
status = open(f"/proc/{run.pid}/status").read()
for name in ("VmRSS", "VmHWM"):
    kib = int(re.search(name + r":\s+(\d+)", status).group(1))
    print(f"{name} of the program, idle with the unit: {kib / 1024:.0f} MiB")
run.kill()
P
