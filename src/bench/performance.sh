#!/bin/sh
# One run, one table of ratios: start, reading against its floor, growth, connectivity. Run from the project's root
# after `mvn package`; docs/explanation/performance.md holds the last table.
#   src/bench/performance.sh [FOLDER] [LARGEST]
set -eu
folder=${1:-target/bench-performance}
largest=${2:-100000}
classes=target/test-classes:target/classes:$(ls target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')
export classes folder largest
python3 - <<'P'
import math, os, subprocess, time, resource
classes, folder, largest = os.environ["classes"], os.environ["folder"], int(os.environ["largest"])
run = "target/ringout"
def timed(command, times=3, env=None):
    best, code = 1e9, 0
    for _ in range(times):
        start = time.time()
        code = subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                              env={**os.environ, **(env or {})}).returncode
        best = min(best, time.time() - start)
    return best, code
def unit(wires, readings=0):
    path = f"{folder}/{wires}-{readings}"
    if not os.path.exists(path + "/readings.xlsx"):
        subprocess.run(["java", "-Xmx3g", "-cp", classes, "dev.ringout.bench.BigUnit", path, str(wires), str(readings)], check=True)
    return path
def row(what, seconds, floor, most, code=""):
    ratio = seconds / floor
    print(f"| {what} | {seconds:.2f} s | {floor:.3f} s | {ratio:.1f} | {most} |", flush=True)
print("| what | takes | beside | times | at most |\n| --- | --- | --- | --- | --- |")
floor = ["java", "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", classes, "dev.ringout.bench.Floor"]
hello, _ = timed(["java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", "target/test-classes", "dev.ringout.bench.Floor", "hello"], 7)
small = unit(50)
row("`ringout --version`, beside a bare Java start", timed([run, "--version"], 7)[0], hello, 5)
row("`check` of 50 wires, beside the same", timed([run, "check", small + "/harness.xlsx", small + "/readings.xlsx"], 7)[0], hello, 8)
big = unit(largest, 10 * largest)
one_g = {"RINGOUT_JAVA_OPTS": "-Xmx1g"}
scan, _ = timed(["java", "-Xmx1g", "-cp", classes, "dev.ringout.bench.Floor", big + "/harness.xlsx", big + "/readings.xlsx"])
check, code = timed([run, "check", big + "/harness.xlsx", big + "/readings.xlsx"], 2, one_g)
row(f"`check` of {largest:,} wires and {10 * largest:,} readings in 1 GiB (exit {code}), beside a bare scan of the two workbooks", check, scan, 4)
print("\n| wires | `check` | `plan` | `diff` | `review` |\n| --- | --- | --- | --- | --- |")
sizes, all_times = [], {}
size = 1000
while size <= largest:
    path = unit(size)
    times = [timed([run, *c], 1 if size > 20000 else 2, {"RINGOUT_JAVA_OPTS": "-Xmx3g"})[0] for c in (
        ["check", path + "/harness.xlsx", path + "/readings.xlsx"], ["plan", path + "/harness.xlsx"],
        ["diff", path + "/harness.xlsx", path + "/harness-next.xlsx"], ["review", path + "/harness.xlsx"])]
    sizes.append(size); all_times[size] = times
    print(f"| {size:,} | " + " | ".join(f"{t:.2f} s" for t in times) + " |", flush=True)
    size *= 10
fits = []
for c in range(4):
    last, before = sizes[-1], sizes[-2]
    start = timed([run, "--version"], 1)[0]
    fits.append(math.log((all_times[last][c] - start) / (all_times[before][c] - start)) / math.log(last / before))
nlogn = math.log(sizes[-1] * math.log(sizes[-1]) / (sizes[-2] * math.log(sizes[-2]))) / math.log(sizes[-1] / sizes[-2])
print("| exponent, last step | " + " | ".join(f"{f:.2f}" for f in fits) + f" |\n\n(n log n would be {nlogn:.2f})\n")
print(subprocess.run(["java", "-Xmx3g", "-cp", classes, "dev.ringout.bench.Connectivity", "1000000", "900000"],
                     capture_output=True, text=True).stdout)
P
