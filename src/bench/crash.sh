#!/bin/sh
# Kills every writing command at a random moment, again and again, and looks at what is left: the old file whole, or
# the new one whole, and nothing half. Run from the project's root after `mvn package`:
#   src/bench/crash.sh [TIMES]
set -eu
times=${1:-200}
python3 - "$times" <<'P'
import os, random, shutil, signal, subprocess, sys, tempfile, time, zipfile
random.seed(1)
times = int(sys.argv[1])
sample = "harness-samples/swing-bridge/"
box, c, readings = sample + "junction-box.xlsx", sample + "junction-box-c.xlsx", sample + "point-to-point.xlsx"
folder = tempfile.mkdtemp()
key = os.path.join(folder, "key")
run = "target/ringout"
subprocess.run([run, "report", "--new-key", key], check=True, stdout=subprocess.DEVNULL)
commands = {
    "plan.xlsx": ["plan", box], "plan.pdf": ["plan", box], "work.html": ["work", box], "work.pdf": ["work", box],
    "work": ["work", box], "diff.xlsx": ["diff", box, c], "check.txt": ["check", box, readings],
    "lot.xlsx": ["lot", box, readings, sample + "point-to-point-clean.xlsx"], "imported.xlsx": ["import", sample + "as-received/net-table.csv"], "found.xlsx": ["asfound", readings],
    "record.html": ["report", box, readings, "--seal", key], "record.xlsx": ["report", box, readings, "--seal", key],
}
def content(path):
    if os.path.isdir(path):
        return {n: open(os.path.join(path, n), "rb").read() for n in sorted(os.listdir(path))}
    return open(path, "rb").read()
whole, took = {}, {}
for name, command in commands.items():
    path = os.path.join(folder, name)
    start = time.time()
    subprocess.run([run, *command, "-o", path], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    took[name] = time.time() - start
    whole[name] = content(path)
bad, killed, left = [], 0, 0
for i in range(times):
    name = random.choice(list(commands))
    path = os.path.join(folder, name)
    old = random.random() < 0.5
    if old and not os.path.isdir(path):
        open(path, "wb").write(b"the old one")
    before = content(path)
    process = subprocess.Popen([run, *commands[name], "-o", path, "--force"], start_new_session=True,
                               stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    time.sleep(random.uniform(0.3, 1.1) * took[name])
    if process.poll() is None:
        os.killpg(process.pid, signal.SIGKILL)
        killed += 1
    process.wait()
    after = content(path)
    if isinstance(after, dict):
        ok = all(after.get(n) in (before.get(n), whole[name].get(n)) for n in before)
    else:
        ok = after in (before, whole[name])
    if not ok:
        bad.append(name)
    left += sum(n.startswith(".ringout") for n in os.listdir(folder))
    for n in os.listdir(folder):
        if n.startswith(".ringout"):
            p = os.path.join(folder, n)
            shutil.rmtree(p) if os.path.isdir(p) else os.unlink(p)
print(f"{times} runs, {killed} killed before they ended, {len(bad)} files neither old nor new {bad};"
      f" {left} unfinished files left beside, by their names .ringout….part")
shutil.rmtree(folder)
sys.exit(1 if bad else 0)
P
