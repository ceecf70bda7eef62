# Runs in a process of its own (CoolPropWorkerProcess.java), before import_coolprop.py and a call of main(); answers until
# standard input ends, which is when Penstock ends. Frames in both directions are little-endian:
#   first answer   version of Python ("python3.11") or, after a minus sign, why CoolProp cannot be imported, as text
#   question       kind, state, pair, mask of outputs, count (5 int32), then OPEN: count bytes of a fluid's name;
#                  MOVE: count pairs of float64; READ: nothing; CLOSE: nothing, and no answer
#   answer         number of values, length of text (2 int32), values (float64), text (UTF-8)
# A value that CoolProp does not give is NaN. One state has a text: for each such value the number of the output, or -1 for
# the whole state, a space, and CoolProp's own message, ended by an ASCII record separator.
import os
import struct
import sys

OPEN, CLOSE, MOVE, READ = range(4)
HEAD = struct.Struct("<5i")
NAN = float("nan")


def take(size):
    """Exactly size bytes of standard input, or None at its end."""
    data = os.read(0, size)
    while len(data) < size:
        more = os.read(0, size - len(data))
        if not more:
            return None
        data += more
    return data


def send(values, text=""):
    text = text.encode("utf-8")
    frame = memoryview(struct.pack("<2i%dd" % len(values), len(values), len(text), *values) + text)
    while frame:
        frame = frame[os.write(pipe, frame) :]


def reader(core, name):
    keys = [getattr(core, part) for part in name.split("/")]
    if len(keys) == 1:
        return lambda state: state.keyed_output(keys[0])
    return lambda state: state.first_partial_deriv(*keys)


def read(state, wanted, values, problems):
    for place, function in wanted:
        try:
            values.append(function(state))
        except Exception as error:
            values.append(NAN)
            problems.append("%d %s\x1e" % (place, error))


def serve(core, pairs, readers):
    states = {}
    by_mask = {}
    opened = 0
    while True:
        head = take(HEAD.size)
        if not head:
            return
        kind, number, pair, mask, count = HEAD.unpack(head)
        if kind == CLOSE:
            states.pop(number, None)
            continue
        values, problems = [], []
        if kind == OPEN:
            name = take(count).decode("utf-8")
            try:
                states[opened] = core.AbstractState("HEOS", name)
                values.append(opened)
                opened += 1
            except Exception as error:
                problems.append("-1 %s\x1e" % error)
            send(values, "".join(problems))
            continue
        state = states[number]
        wanted = by_mask.get(mask)
        if wanted is None:
            wanted = by_mask[mask] = [(i, f) for i, f in enumerate(readers) if mask >> i & 1]
        if kind == READ:
            read(state, wanted, values, problems)
        else:
            numbers = struct.unpack("<%dd" % (2 * count), take(16 * count))
            update, chosen, bad = state.update, pairs[pair], [NAN] * len(wanted)
            for i in range(0, 2 * count, 2):
                try:
                    update(chosen, numbers[i], numbers[i + 1])
                except Exception as error:
                    # A failed search can leave a phase imposed, which would falsify later states.
                    state.unspecify_phase()
                    values += bad
                    problems.append("-1 %s\x1e" % error)
                else:
                    read(state, wanted, values, problems)
        send(values, "".join(problems) if count == 1 or kind == READ else "")


def main():
    send([], "-" + problem if problem else "python%d.%d" % sys.version_info[:2])
    if not problem:
        core = sys.modules["CoolProp.CoolProp"]
        words = names.split()
        pairs = [getattr(core, word) for word in words if word.endswith("_INPUTS")]
        readers = [reader(core, word) for word in words if not word.endswith("_INPUTS")]
        serve(core, pairs, readers)


# Frames go to the pipe alone: whatever else is printed must not come between them.
pipe = os.dup(1)
os.dup2(2, 1)
if os.name == "nt":
    import msvcrt

    msvcrt.setmode(0, os.O_BINARY)
    msvcrt.setmode(pipe, os.O_BINARY)
