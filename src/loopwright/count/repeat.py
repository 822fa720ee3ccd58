"""Rows repeated: solved by arithmetic where they add evenly, walked where they multiply."""

from __future__ import annotations

from loopwright.count.affine import Affine, Range
from loopwright.count.live import Live, total, unworked
from loopwright.count.row import ONCE, Misfit, Outcome, work_row
from loopwright.count.tape import Tape
from loopwright.model.pattern import Row
from loopwright.notation.bounds import MAX_GEOMETRIC, MAX_NUMBER
from loopwright.record import dataclass, replace

Pair = tuple[Row, Tape]


@dataclass(frozen=True, slots=True)
class Entry:
    """A row in a chunk: its counts before and after as functions of the repeat (from 0).

    `turns` where the work is turned before the end of the row, which in the round changes sides.
    """

    row: Row
    start: Affine
    end: Affine
    fills: tuple[Affine, ...]
    yarn: tuple[float, float]
    misfit: bool
    turns: bool = False


@dataclass(frozen=True, slots=True)
class Chunk:
    """`entries` worked `reps` times; `after` is what hangs then.

    Rows of a repeat that is not finished are a chunk of their own.
    """

    entries: tuple[Entry, ...]
    reps: int
    after: Live

    @property
    def rows(self) -> int:
        return len(self.entries) * self.reps


@dataclass(frozen=True, slots=True)
class Snag:
    """A row that did not fit: in which repeat (from 0), at which place among the rows."""

    kind: str
    row: Row
    tape: Tape
    index: int
    repeat: int
    misfit: Misfit


class Repeater:
    """Works rows over states; remembers single rows, since equal lines meet equal counts."""

    def __init__(self) -> None:
        self._memo: dict[tuple[int, Live], Outcome] = {}
        self._kept: list[Tape] = []

    def once(self, tape: Tape, state: Live) -> Outcome:
        """One row over plain counts."""
        key = (id(tape), state)
        found = self._memo.get(key)
        if found is None:
            found = self._memo[key] = work_row(tape, state)
            self._kept.append(tape)
        return found

    def run(
        self,
        pairs: list[Pair],
        state: Live,
        reps: int,
        part: int,
        in_round: bool,
        following: Tape | None,
    ) -> tuple[list[Chunk], list[Snag]]:
        """Work `pairs` over `state` `reps` times and `part` rows more.

        `following` is the row that comes after, which helps to guess a count behind a snag.
        Gives the chunks (more than one only where the rows multiply their stitches) and the
        snags, at most one a row. Never raises.
        """
        if len(pairs) == 1 and reps == 1 and part == 0:
            return self._single(pairs[0], state, in_round, following)
        turns = any(tape.turns for _, tape in pairs)
        odd = (turns or not in_round) and len(pairs) % 2 == 1
        parted = not state.is_plain or turns or any(tape.marked for _, tape in pairs)
        if odd and reps > 1 and parted:
            return self._in_twos(pairs, state, reps, part, in_round, following)
        chunks, snags = self._whole(pairs, state, reps, in_round, following)
        if part:
            state = chunks[-1].after if chunks else state
            entries, after, found = self.sweep(pairs[:part], state, ONCE, in_round, following)
            self._collect(snags, found, reps)
            chunks.append(Chunk(entries, 1, after))
        return chunks, snags

    def until(
        self, pairs: list[Pair], state: Live, target: int, in_round: bool
    ) -> tuple[int | None, tuple[int, int]]:
        """How many repeats lead to `target` stitches in all, at least one; None if none does.

        Beside it the counts just before and just after the target is passed (or the count that
        is reached for ever).
        """
        count = total(state).fixed
        reps = 0
        while reps < MAX_GEOMETRIC:
            _, after, found = self.sweep(pairs, state, ONCE, in_round, None)
            reps += 1
            if found:
                return reps, (count, count)  # worked so far, that row says what is wrong
            new = total(after).fixed
            if new == target:
                return reps, (count, new)
            change = new - count
            if change == 0 or (target - new) * change < 0 or new > MAX_NUMBER:
                return None, (count, new)
            even = self._evenly(pairs, state, after, 3, in_round)
            if even is not None and even[2] == 3:
                more, rest = divmod(target - new, change)
                if rest == 0:
                    return reps + more, (new, target)
                near = new + more * change
                return None, (near, near + change)
            state, count = after, new
        return None, (count, count)

    # --- inside -----------------------------------------------------------------------------------

    def _single(
        self, pair: Pair, state: Live, in_round: bool, following: Tape | None
    ) -> tuple[list[Chunk], list[Snag]]:
        row, tape = pair
        outcome = self.once(tape, state)
        if outcome.misfit is not None:
            entries, after, found = self.sweep([pair], state, ONCE, in_round, following)
            return [Chunk(entries, 1, after)], found
        after = outcome.after(state, in_round)
        entry = Entry(
            row, total(state), total(after), outcome.fills, outcome.yarn, False, tape.turns
        )
        return [Chunk((entry,), 1, after)], []

    def _in_twos(
        self,
        pairs: list[Pair],
        state: Live,
        reps: int,
        part: int,
        in_round: bool,
        following: Tape | None,
    ) -> tuple[list[Chunk], list[Snag]]:
        """Two repeats as one: markers are met from the other end in every second repeat."""
        length = len(pairs)
        rest = reps % 2 * length + part
        chunks, snags = self.run(pairs * 2, state, reps // 2, rest, in_round, following)
        return chunks, [
            replace(
                snag,
                index=snag.index % length,
                repeat=2 * snag.repeat + snag.index // length,
            )
            for snag in snags
        ]

    def _whole(
        self,
        pairs: list[Pair],
        state: Live,
        reps: int,
        in_round: bool,
        following: Tape | None,
    ) -> tuple[list[Chunk], list[Snag]]:
        """Whole repeats: as many at once as add evenly, else one by one."""
        chunks: list[Chunk] = []
        snags: list[Snag] = []
        done = walked = 0
        while done < reps:
            left = reps - done
            entries, after, found = self.sweep(pairs, state, ONCE, in_round, following)
            self._collect(snags, found, done)
            if left == 1 or found:
                # Behind a snag every repeat would only say it again.
                chunks.append(Chunk(entries, left, after))
                break
            even = self._evenly(pairs, state, after, left, in_round)
            if even is not None:
                more, state, worked = even
                chunks.append(Chunk(more, worked, state))
                done += worked
                continue
            chunks.append(Chunk(entries, 1, after))
            state = after
            done += 1
            walked += 1
            if walked > MAX_GEOMETRIC or total(state).fixed > MAX_NUMBER:
                row, tape = pairs[0]
                misfit = Misfit("grown", 0, total(state).fixed, 0, 0, 0, 0, 1, True, None)
                snags.append(Snag("grown", row, tape, 0, done, misfit))
                break
        return chunks, snags

    def _collect(self, snags: list[Snag], found: list[Snag], done: int) -> None:
        seen = {snag.row for snag in snags}
        for snag in found:
            if snag.row not in seen:
                seen.add(snag.row)
                snags.append(replace(snag, repeat=snag.repeat + done))

    def sweep(
        self, pairs: list[Pair], state: Live, over: Range, in_round: bool, following: Tape | None
    ) -> tuple[tuple[Entry, ...], Live, list[Snag]]:
        """All the rows once, for every repeat of `over` at once."""
        entries: list[Entry] = []
        snags: list[Snag] = []
        # Rows alike meet the same state again and again; one object stands for equal states, so
        # that what such a row does to it is found by their ids.
        met: dict[tuple[int, int], tuple[Outcome, Live, Affine, Affine]] = {}
        same: dict[Live, Live] = {state: state}
        for index, (row, tape) in enumerate(pairs):
            known = met.get((id(tape), id(state)))
            if known is not None:
                outcome, state, start, end = known
                entries.append(
                    Entry(row, start, end, outcome.fills, outcome.yarn, False, tape.turns)
                )
                continue
            start = total(state)
            outcome = self.once(tape, state) if over is ONCE else work_row(tape, state, over)
            bad = outcome.misfit is not None
            before = state
            if outcome.misfit is not None:
                snags.append(
                    Snag(outcome.misfit.kind, row, tape, index, outcome.misfit.n, outcome.misfit)
                )
                after = following
                if index + 1 < len(pairs):
                    after = pairs[index + 1][1]
                state = _most_likely(row, tape, state, after, in_round)
            else:
                state = outcome.after(state, in_round)
            state = same.setdefault(state, state)
            end = total(state)
            if not bad:
                met[id(tape), id(before)] = (outcome, state, start, end)
            entries.append(Entry(row, start, end, outcome.fills, outcome.yarn, bad, tape.turns))
        return tuple(entries), state, snags

    def _evenly(
        self, pairs: list[Pair], state: Live, after: Live, left: int, in_round: bool
    ) -> tuple[tuple[Entry, ...], Live, int] | None:
        """Up to `left` repeats at once, if each adds what the first added; else None.

        Gives their rows, what hangs after them and how many they are: fewer than `left` where
        the next one meets a row that does not fit.

        A row's map is linear in the stretches between markers, so two equal differences and a
        pass over ``state + k · difference`` that gives the same difference back prove it for
        every k.
        """
        if not after.like(state):
            return None
        _, third, snags = self.sweep(pairs, after, ONCE, in_round, None)
        step = _difference(state, after)
        if snags or not third.like(after) or step != _difference(after, third):
            return None
        grown = state.with_values(
            tuple(Affine(s.fixed, d) for s, d in zip(state.values(), step, strict=True))
        )
        entries, result, snags = self.sweep(pairs, grown, Range(0, left - 1), in_round, None)
        if snags:
            # Up to the repeat before the first misfit all is well.
            left = min(snag.repeat for snag in snags)
            if left < 1:
                return None
            entries, result, snags = self.sweep(pairs, grown, Range(0, left - 1), in_round, None)
        if snags or result != state.with_values(
            tuple(Affine(s.fixed + d, d) for s, d in zip(state.values(), step, strict=True))
        ):
            return None
        end = state.with_values(
            tuple(Affine(s.fixed + left * d) for s, d in zip(state.values(), step, strict=True))
        )
        return entries, end, left


def _difference(before: Live, after: Live) -> tuple[int, ...]:
    """What each number grows by; both have one shape."""
    return tuple(b.fixed - a.fixed for a, b in zip(before.values(), after.values(), strict=True))


def _most_likely(row: Row, tape: Tape, state: Live, following: Tape | None, in_round: bool) -> Live:
    """What probably hangs after a row that does not count out.

    The writer's claim, the count that came in, or the count the row would leave if its fixed
    stitches were all there: the first of them that the next row takes. A row whose steps keep
    the count is taken to keep it.
    """
    came = unworked(state, in_round)
    if not state.is_plain or tape.turns or tape.marked:
        likely = [*_as_meant(tape, state, in_round), came]
        claimed = row.claim.count.values if row.claim is not None and not row.claim.sign else ()
        if len(claimed) == 1:
            likely.sort(key=lambda live: total(live).fixed != claimed[0])
        if following is not None:
            fits = [live for live in likely if work_row(following, live).misfit is None]
            likely = fits or likely
        return likely[0]
    if state.ahead[0].unit:
        return came
    count = state.ahead[0].fixed
    guesses = [count]
    fills = tape.fills
    if fills and fills[0].takes:
        times = max(round((count - tape.fixed_takes) / fills[0].takes), 0)
        guesses.append(tape.fixed_makes + times * fills[0].makes)
    elif not fills:
        guesses.append(count - tape.fixed_takes + tape.fixed_makes)
    if not tape.even:
        guesses.reverse()
    if row.claim is not None and len(row.claim.count.values) == 1:
        said = row.claim.count.values[0]
        signed = {"+": count + said, "-": count - said}.get(row.claim.sign, said)
        guesses.insert(0, signed)
    guesses = [guess for guess in guesses if guess >= 0] or [count]
    if following is not None:
        for guess in guesses:
            if work_row(following, Live.of(guess)).misfit is None:
                return Live.of(guess)
    return Live.of(guesses[0])


def _as_meant(tape: Tape, state: Live, in_round: bool) -> list[Live]:
    """What would hang if each stretch between markers had the stitches the row wants there.

    Beside it, for a row that names no marker, what would hang if the stitches that were missing
    or too many before it still were so behind it. Empty for a row that turns.
    """
    asked = state
    for _ in range(0 if tape.turns else len(state.ahead) + 1):
        outcome = work_row(tape, asked)
        misfit = outcome.misfit
        if misfit is None:
            meant = outcome.after(asked, in_round)
            lack = total(asked).plus(-total(state).fixed)
            last = outcome.made[-1] - lack
            kept = replace(outcome, made=(*outcome.made[:-1], last)).after(asked, in_round)
            return [meant] if tape.marked or last.fixed < 0 else [kept, meant]
        if misfit.kind not in ("short", "over", "uneven") or misfit.segment >= len(state.ahead):
            break
        more = misfit.used - misfit.have
        if misfit.kind == "uneven":
            more = -(-more % misfit.unit)
        parts = list(asked.ahead)
        parts[misfit.segment] = parts[misfit.segment].plus(more)
        asked = Live(tuple(parts), asked.behind, asked.gap)
    return []
