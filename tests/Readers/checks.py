"""Counts what held and says what did not. Every reader is a module with check(folder, checks)."""
import json
import pathlib
import sys


class Checks:
    def __init__(self):
        self.passed = 0
        self.failures = []

    def that(self, holds, where, message):
        """One fact. A comparison with NaN is false, so NaN never passes."""
        if holds:
            self.passed += 1
        else:
            self.failures.append(f"{where}: {message}")
        return bool(holds)

    def near(self, found, stated, tolerance, where, what):
        difference = abs(found - stated)
        return self.that(difference <= tolerance, where,
                         f"{what}: read {found:.9g}, stated {stated:.9g}, difference {difference:.3g} over {tolerance:.3g}")

    def report(self):
        for failure in self.failures:
            print("FAIL", failure)
        print(f"{self.passed} passed, {len(self.failures)} failed")
        return 1 if self.failures else 0


def summary_of(folder):
    return json.loads((pathlib.Path(folder) / "summary.json").read_text(encoding="utf-8"))


def flat_file(part):
    """A part is either cut from sheet or marked through a wrap; never both."""
    return part["files"].get("flat") or part["files"].get("wrap")


def run_reader(check):
    checks = Checks()
    for folder in sys.argv[1:]:
        check(pathlib.Path(folder), checks)
    sys.exit(checks.report())
