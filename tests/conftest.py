"""What the tests of several rooms share: a source checked from its text."""

from __future__ import annotations

import gc
from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, settings

from loopwright.compile import Checked, check_source
from loopwright.notation.source import Source

# The same examples on every machine and every day; no deadline, since a slow machine is no bug.
settings.register_profile(
    "loopwright",
    derandomize=True,
    deadline=None,
    max_examples=60,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
settings.load_profile("loopwright")


# Nothing that is collected (eight thousand tests, and the libraries they want) is ever given up:
# it is not searched for what could be, neither while it grows nor later.
gc.disable()


def pytest_collection_finish() -> None:
    gc.collect()
    gc.freeze()
    gc.set_threshold(10_000, 20, 50)  # the console script's is higher
    gc.enable()


@pytest.fixture(scope="session")
def check() -> Callable[..., Checked]:
    """``check(text)``: the text after every rule, as the file ``cloth.loop``."""

    def checked(text: str, name: str = "cloth.loop") -> Checked:
        return check_source(Source.of(name, text))

    return checked
