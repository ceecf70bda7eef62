"""Compares two folders of JSON documents number by number.

Usage: compare_answers.py BEFORE AFTER [TOLERANCE]

Prints every number that differs by more than TOLERANCE (relative, 1e-9 if not given), every text that differs and every
key that only one side has; exits with 1 if there is any.
"""

import json
import os
import sys


def leaves(value, path=""):
    if isinstance(value, dict):
        for key, child in value.items():
            yield from leaves(child, path + "." + key)
    elif isinstance(value, list):
        for index, child in enumerate(value):
            yield from leaves(child, "%s[%d]" % (path, index))
    else:
        yield path, value


def number(value):
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def compare(name, before, after, tolerance):
    count = 0
    for path in list(before) + [p for p in after if p not in before]:
        if path not in after or path not in before:
            print("%s%s only %s" % (name, path, "before" if path in before else "after"))
        elif number(before[path]) and number(after[path]):
            old, new = before[path], after[path]
            if abs(new - old) <= tolerance * max(abs(old), abs(new), 1e-9):
                continue
            print("%s%s %.12g -> %.12g (%+.2e)" % (name, path, old, new, (new - old) / (abs(old) or 1)))
        elif before[path] != after[path]:
            print("%s%s %r -> %r" % (name, path, before[path], after[path]))
        else:
            continue
        count += 1
    return count


def main():
    old_folder, new_folder = sys.argv[1:3]
    tolerance = float(sys.argv[3]) if len(sys.argv) > 3 else 1e-9
    count = documents = 0
    for name in sorted(set(os.listdir(old_folder)) | set(os.listdir(new_folder))):
        sides = []
        for folder in (old_folder, new_folder):
            try:
                with open(os.path.join(folder, name), encoding="utf-8") as file:
                    sides.append(dict(leaves(json.load(file))))
            except FileNotFoundError:
                sides.append({})
        documents += 1
        count += compare(name, sides[0], sides[1], tolerance)
    print("%d documents, %d differences" % (documents, count))
    sys.exit(1 if count else 0)


if __name__ == "__main__":
    main()
