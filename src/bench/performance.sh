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
import math, os, subprocess, time
classes, folder, largest = os.environ["classes"], os.environ["folder"], int(os.environ["largest"])
run = "target/ringout"
def timed(command, times=3, env=None, codes=(0,)):
    best = 1e9
    for _ in range(times):
        start = time.time()
        ran = subprocess.run(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE, text=True,
                             env={**os.environ, **(env or {})})
        best = min(best, time.time() - start)
        # A run that is refused is quick: it must not pass for one that did its work.
        if ran.returncode not in codes:
            raise SystemExit(f"{command} ended with {ran.returncode}: {ran.stderr[:500]}")
    return best
def unit(wires, readings, form):
    path = f"{folder}/{wires}-{readings}-{form}"
    ending = ".xlsx" if form == "xlsx" else ""
    if not os.path.exists(f"{path}/readings{ending}"):
        subprocess.run(["java", "-Xmx4g", "-cp", classes, "dev.ringout.benchmarks.BigUnit", path, str(wires), str(readings), form], check=True)
    return [f"{path}/{name}{ending}" for name in ("harness", "readings", "harness-next")]
def row(what, seconds, floor, most):
    ratio = seconds / floor
    print(f"| {what} | {seconds:.2f} s | {floor:.3f} s | {ratio:.1f} | {most} |", flush=True)
print("| what | takes | beside | times | at most |\n| --- | --- | --- | --- | --- |")
hello = timed(["java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", "target/test-classes", "dev.ringout.benchmarks.Floor", "hello"], 7)
small = unit(50, 0, "xlsx")
row("`ringout --version`, beside a bare Java start", timed([run, "--version"], 7), hello, 5)
row("`check` of 50 wires, beside the same", timed([run, "check", *small[:2]], 7, codes=(1,)), hello, 8)
bare = ["java", "-Xmx1g", "-XX:+UseSerialGC", "-cp", classes]
def check_of(form):
    return timed([run, "check", *unit(100000, 1000000, form)[:2]], 3, {"RINGOUT_JAVA_OPTS": "-Xmx1g"}, codes=(1,))
what = "`check` of 100,000 wires and 1,000,000 readings"
book = unit(100000, 1000000, "xlsx")[:2]
check = check_of("xlsx")
row(what + " (`.xlsx`) in 1 GiB, beside a bare scan of the sheets by Java's own XML reader", check, timed([*bare, "dev.ringout.benchmarks.Floor", "own", *book]), 4)
row("the same, beside a bare scan by the faster reader that is used", check, timed([*bare, "dev.ringout.benchmarks.Floor", "fast", *book]), "")
wires, readings = unit(100000, 1000000, "csv")[:2]
tables = [f"{wires}/Wires.csv", f"{readings}/Continuity.csv", f"{readings}/Insulation.csv"]
parse = timed([*bare, "dev.ringout.benchmarks.Floor", "fast", *tables, f"{wires}/Links.csv"])
row(what + " (`.csv`) in 1 GiB, beside a bare parse", check_of("csv"), parse, 4)
row("the barest check of them that can be thought of, beside the same", timed([*bare, "dev.ringout.benchmarks.BarestCheck", *tables]), parse, "")
print("\n| wires | `check` | `plan` | `diff` | `review` |\n| --- | --- | --- | --- | --- |")
sizes, all_times = [], {}
size = 1000
memory = "-Xmx%dg" % (3 if largest < 1000000 else 12)
while size <= largest:
    harness, readings, following = unit(size, 0, "csv")
    times = [timed([run, *c], 1 if size > 20000 else 2, {"RINGOUT_JAVA_OPTS": memory}, (0, 1, 2)) for c in (
        ["check", harness, readings], ["plan", harness], ["diff", harness, following], ["review", harness])]
    sizes.append(size); all_times[size] = times
    print(f"| {size:,} | " + " | ".join(f"{t:.2f} s" for t in times) + " |", flush=True)
    size *= 10
fits = []
for c in range(4):
    last, before = sizes[-1], sizes[-2]
    start = timed([run, "--version"], 1)
    fits.append(math.log((all_times[last][c] - start) / (all_times[before][c] - start)) / math.log(last / before))
nlogn = math.log(sizes[-1] * math.log(sizes[-1]) / (sizes[-2] * math.log(sizes[-2]))) / math.log(sizes[-1] / sizes[-2])
print("| exponent, last step | " + " | ".join(f"{f:.2f}" for f in fits) + f" |\n\n(n log n would be {nlogn:.2f})\n")
print(subprocess.run(["java", "-Xmx3g", "-cp", classes, "dev.ringout.benchmarks.Connectivity", "1000000", "900000"],
                     capture_output=True, text=True).stdout)
P
