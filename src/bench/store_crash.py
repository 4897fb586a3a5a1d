"""See store-crash.sh."""
import glob, os, pwd, random, re, shutil, signal, socket, subprocess, sys, tempfile, time

class_path, kills, cuts, writers = sys.argv[1], int(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4])
random.seed(26)
java = ["java", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-Xmx128m", "-cp", class_path,
        "dev.ringout.benchmarks.StoreWriter"]
folder = tempfile.mkdtemp()
os.chmod(folder, 0o755)

def run(*words):
    return subprocess.run([*java, *words], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, env=env)

env = dict(os.environ)

def acks(text):
    return [line.split()[1] for line in text.splitlines() if line.startswith("ack ") and len(line.split()) == 2 and len(line) == 40]

def holds(store):
    got = run("holds", store)
    if "findings 0" not in got.stdout:
        return None
    return [line.split()[1:] for line in got.stdout.splitlines() if line.startswith("has ")]

def judge(store, acknowledged):
    held = holds(store)
    if held is None:
        return "not whole"
    ids = [one[0] for one in held]
    if len(ids) != len(set(ids)):
        return "twice"
    if any(one[1] != "41" for one in held):
        return "in part"
    return "lost" if set(acknowledged) - set(ids) else ""

def kill_writers(name, store, times):
    acknowledged, bad, next_one, killed = [], [], 1, 0
    for i in range(times):
        process = subprocess.Popen([*java, "add", store, "k", str(next_one), str(next_one + 100000)],
                                   stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, env=env, start_new_session=True)
        wanted = random.randint(0, 12)
        out = ""
        while out.count("\n") < wanted:
            line = process.stdout.readline()
            if not line:
                break
            out += line
        time.sleep(random.random() * 0.02)
        os.killpg(process.pid, signal.SIGKILL)
        killed += 1
        out += process.stdout.read()
        process.wait()
        acknowledged += acks(out)
        next_one += len(acks(out))  # the one that may or may not be there is added again: it must not be there twice
        if i % 20 == 19 or i == times - 1:
            why = judge(store, acknowledged)
            if why:
                bad.append(why)
    print(f"{name}: {killed} writers killed, {len(set(acknowledged))} tests acknowledged, not as they should be: {bad or 'none'}", flush=True)

# --- SQLite: kills, and power cuts by replay -------------------------------------------------------------------------------
store = os.path.join(folder, "kills.db")
run("make", store)
kill_writers("SQLite", store, kills)

HEX = re.compile(r"\\x([0-9a-f]{2})")

def traced(count):
    """The writes of a bench in the order in which they were made, its acknowledgements among them."""
    there = os.path.join(folder, "traced")
    shutil.rmtree(there, ignore_errors=True)
    os.mkdir(there)
    path = os.path.join(there, "s.db")
    run("make", path)
    before = {n: open(os.path.join(there, n), "rb").read() for n in os.listdir(there)}
    log = os.path.join(folder, "trace.txt")
    subprocess.run(["strace", "-f", "-y", "-xx", "-s", "1000000", "-o", log,
                    "-e", "trace=pwrite64,write,ftruncate,fsync,fdatasync,unlink", *java, "add", path, "p", "1", str(count)],
                   stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, env=env)
    events, waiting = [], {}
    for line in open(log, errors="replace"):
        pid, rest = line.split(None, 1)
        if rest.rstrip().endswith("<unfinished ...>"):
            waiting[pid] = rest.rsplit("<unfinished", 1)[0]
            continue
        resumed = re.match(r"<\.\.\. \w+ resumed>(.*)", rest, re.S)
        if resumed:
            rest = waiting.pop(pid, "") + resumed.group(1)
        call = re.match(r"(\w+)\((.*)\)\s+= (-?\d+)", rest, re.S)
        if not call or int(call.group(3)) < 0:
            continue
        name, words = call.group(1), call.group(2)
        where = re.match(r"\d+<([^>]*)>", words)
        decoded = HEX.sub(lambda m: chr(int(m.group(1), 16)), where.group(1)) if where else ""
        if name in ("pwrite64", "ftruncate", "fsync", "fdatasync") and there in decoded and not decoded.endswith("-shm"):
            file = os.path.basename(decoded)
            if name == "pwrite64":
                data = bytes(int(h, 16) for h in HEX.findall(words.split(", ", 1)[1]))
                events.append(("write", file, int(words.rsplit(", ", 1)[1]), data))
            elif name == "ftruncate":
                events.append(("size", file, int(words.rsplit(", ", 1)[1])))
            else:
                events.append(("sync", file))
        elif name == "write" and words.startswith("1<"):
            text = bytes(int(h, 16) for h in HEX.findall(words.split(", ", 1)[1])).decode(errors="replace")
            events += [("ack", one) for one in acks(text)]
    return before, events

def apply(content, event):
    if event[0] == "write":
        _, _, at, data = event
        content.extend(b"\0" * max(0, at + len(data) - len(content)))
        content[at:at + len(data)] = data
    else:
        size = event[2]
        del content[size:]
        content.extend(b"\0" * (size - len(content)))

def cut(before, events, at, honest=True):
    """What is on the disk when the power goes at a moment: all that was synced, and of the rest any part, torn at 512 bytes.
    A disk that is not honest forgets what it was told to keep: so it is seen that a loss would be seen."""
    files = {name: bytearray(data) for name, data in before.items()}
    pending, acknowledged = {}, []
    for event in events[:at]:
        if event[0] == "ack":
            acknowledged.append(event[1])
        elif event[0] == "sync":
            if not honest:
                continue
            for old in pending.pop(event[1], []):
                apply(files.setdefault(event[1], bytearray()), old)
        else:
            pending.setdefault(event[1], []).append(event)
    for name, some in pending.items():
        for event in some:
            fate = random.random()
            if fate < 0.4:
                apply(files.setdefault(name, bytearray()), event)
            elif fate < 0.7 and event[0] == "write" and len(event[3]) > 512:
                kept = 512 * random.randint(0, len(event[3]) // 512)
                apply(files.setdefault(name, bytearray()), ("write", name, event[2], event[3][:kept]))
    return files, acknowledged

if cuts:
    before, events = traced(120)
    bad, total, seen = [], 0, 0
    for i in range(cuts + 10):
        honest = i < cuts
        files, acknowledged = cut(before, events, random.randint(len(events) // 10, len(events)), honest)
        there = os.path.join(folder, "cut")
        shutil.rmtree(there, ignore_errors=True)
        os.mkdir(there)
        for name, data in files.items():
            open(os.path.join(there, name), "wb").write(data)
        why = judge(os.path.join(there, "s.db"), acknowledged)
        if not honest:
            seen += 1 if why else 0
        else:
            total += len(acknowledged)
            if why:
                bad.append(why)
    print(f"SQLite: {cuts} power cuts in {len(events)} traced writes, {total} tests acknowledged before them, not as they should be:"
          f" {bad or 'none'}; on a disk that forgets what it was told to keep, {seen} of 10 cuts lose something", flush=True)

# --- PostgreSQL -------------------------------------------------------------------------------------------------------------
bins = sorted(glob.glob("/usr/lib/postgresql/*/bin"))
if bins:
    bin_ = bins[-1]
    data = os.path.join(folder, "data")
    root = os.getuid() == 0
    who = pwd.getpwnam("postgres") if root else None
    if root:
        os.chown(folder, who.pw_uid, who.pw_gid)
    demote = (lambda: (os.setgid(who.pw_gid), os.setuid(who.pw_uid))) if root else None
    def pg(*words):
        subprocess.run(words, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, preexec_fn=demote, cwd="/")
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    pg(f"{bin_}/initdb", "-D", data, "-U", "owner", "-A", "trust", "-E", "UTF8", "--no-locale")
    def start():
        pg(f"{bin_}/pg_ctl", "-D", data, "-w", "-l", f"{data}/log", "-o",
           f"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c max_connections=60", "start")
    start()
    store = f"postgresql://owner@127.0.0.1:{port}/postgres"
    run("make", store)
    kill_writers("PostgreSQL", store, kills)

    def kill_server():
        # Postmaster and all it started, at once and without a word: nothing of them writes any more.
        master = open(f"{data}/postmaster.pid").readline().strip()
        children = subprocess.run(["pgrep", "-P", master], stdout=subprocess.PIPE, text=True).stdout.split()
        for pid in [master, *children]:
            try:
                os.kill(int(pid), signal.SIGKILL)
            except ProcessLookupError:
                pass
        time.sleep(0.2)
        if os.path.exists(f"{data}/postmaster.pid"):
            os.unlink(f"{data}/postmaster.pid")

    acknowledged, bad, next_one = [], [], 1
    for i in range(cuts):
        process = subprocess.Popen([*java, "add", store, "s", str(next_one), str(next_one + 100000)],
                                   stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True, env=env)
        out, wanted = "", random.randint(1, 10)
        while out.count("\n") < wanted:
            line = process.stdout.readline()
            if not line:
                break
            out += line
        time.sleep(random.random() * 0.02)
        kill_server()
        out += process.stdout.read()
        process.wait()
        acknowledged += acks(out)
        next_one += len(acks(out))
        start()
        if i % 20 == 19 or i == cuts - 1:
            why = judge(store, acknowledged)
            if why:
                bad.append(why)
    print(f"PostgreSQL: the server killed {cuts} times, {len(set(acknowledged))} tests acknowledged, not as they should be: {bad or 'none'}", flush=True)

    if writers:
        acknowledged, killed, each = set(), 0, 40
        running = {}
        todo = {w: 1 for w in range(writers)}
        outs = {w: tempfile.TemporaryFile("w+") for w in range(writers)}
        def launch(w):
            outs[w].seek(0); outs[w].truncate()
            running[w] = subprocess.Popen([*java, "add", store, f"w{w % 5}-", str(todo[w]), str(each)],
                                          stdout=outs[w], stderr=subprocess.DEVNULL, env=env)
        def collect(w):
            outs[w].seek(0)
            got = acks(outs[w].read())
            acknowledged.update(got)
            todo[w] += len(got)
        for w in todo:
            launch(w)
        until = time.time() + 600
        while running and time.time() < until:
            time.sleep(random.uniform(0.1, 0.5))
            w = random.choice(list(running))
            if running[w].poll() is None and killed < 3 * writers:
                running[w].kill()
                killed += 1
            for w in list(running):
                if running[w].poll() is not None:
                    collect(w)
                    if todo[w] <= each:
                        launch(w)
                    else:
                        del running[w]
        for one in running.values():
            one.kill()
        # Each sheet is brought in by four writers at once: five prefixes, each by as many.
        print(f"PostgreSQL: {writers} writers at once, {killed} killed, {len(acknowledged)} tests acknowledged (each brought in by {writers // 5}),"
              f" not as they should be: {judge(store, acknowledged) or 'none'}; left unfinished: {len(running)}", flush=True)
    pg(f"{bin_}/pg_ctl", "-D", data, "-m", "fast", "stop")
shutil.rmtree(folder, ignore_errors=True)
