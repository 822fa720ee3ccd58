"""Runs a command and prints the most memory it had, in MB: ``python -S memory.py COMMAND…``.

A process of its own, because Linux counts the parent's memory at the start of a child as the
child's; this one has next to none.
"""

from __future__ import annotations

import resource
import subprocess
import sys

subprocess.run(sys.argv[1:], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=True)
most = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss
# Kilobytes on Linux, bytes on macOS.
print(most / (1e6 if sys.platform == "darwin" else 1e3))
