#!/bin/sh
# Time and peak memory of reading one wire list in each format, and of a PDF of it: the tables of
# docs/explanation/performance.md. Run from the project's root after `mvn package`:
#   src/bench/readers.sh [FOLDER] [WIRES]...
set -eu
folder=${1:-target/bench-readers}
[ $# -gt 0 ] && shift
[ $# -gt 0 ] || set -- 1000 10000 100000
classes=${CLASSES:-target/test-classes:target/classes:$(ls target/lib/*.jar | grep -v ringout.jar | tr '\n' ':')}
export classes
mkdir -p "$folder"
python3 - "$folder" "$@" <<'P'
import os, resource, subprocess, sys, time
folder, sizes, classes = sys.argv[1], [int(n) for n in sys.argv[2:]], os.environ["classes"]
def run(heap, *words):
    start = time.time()
    process = subprocess.Popen(["java", "-Xmx" + heap, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp", classes, *words], stdout=subprocess.DEVNULL)
    _, status, usage = os.wait4(process.pid, 0)
    if os.waitstatus_to_exitcode(status) > 2:
        raise SystemExit(f"{words} ended with {os.waitstatus_to_exitcode(status)}")
    return time.time() - start, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024
print("| wires | " + " | ".join(f"`.{f}`" for f in ("csv", "tsv", "xlsx", "xls", "ods")) + " |\n| --- |" + " --- |" * 5)
for n in sizes:
    row = []
    for form in ("csv", "tsv", "xlsx", "xls", "ods"):
        # A sheet of the older workbooks ends at 65,536 rows.
        wires = min(n, 60000) if form == "xls" else n
        file = f"{folder}/{wires}.{form}"
        if not os.path.exists(file):
            run("2g", "dev.ringout.benchmarks.OneList", file, str(wires))
        _, cpu, peak = min(run("512m", "dev.ringout.benchmarks.ReadOnly", file) for _ in range(3 if n <= 10000 else 2))
        row.append(f"{cpu:.2f} s, {peak:.0f} MiB" + ("" if wires == n else f" ({wires:,})"))
    print(f"| {n:,} | " + " | ".join(row) + " |", flush=True)
P
