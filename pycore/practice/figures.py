"""The numbers between dip and recipe, and what the common slips make of them."""

from __future__ import annotations

from dataclasses import dataclass

from pycore.recipe.balance import fill_strength_pct

STEPS = ("volume", "strength", "room", "take_out", "top_up")


@dataclass(frozen=True)
class Figures:
    """What one works with: measured, set and worked out; L, mm, Brix, per cent by volume.

    dipped_l and read_pct are what dip and reading say; volume_l, strength_pct and room_l are what
    the next steps go on with, which may be a person's own numbers.
    """

    dipped_l: float
    read_pct: float
    depth_mm: float
    full_depth_mm: float
    full_volume_l: float
    reading_brix: float
    factor: float
    aim_pct: float
    strong_pct: float
    volume_l: float
    strength_pct: float
    room_l: float

    @property
    def top_up_pct(self) -> float | None:
        """Strength of the fill that lands on the aim; None where nothing fits in."""
        if self.room_l <= 0:
            return None
        return fill_strength_pct(self.volume_l, self.strength_pct, self.room_l, self.aim_pct)

    @property
    def take_out_l(self) -> float | None:
        """What has to come out of a full sump so that the strongest mix brings it to the aim.

        X (strong - now) = V (aim - now), since what comes out takes its own concentrate along.
        None where the strongest mix is no stronger than the sump.
        """
        gain_pct = self.strong_pct - self.strength_pct
        if gain_pct <= 0:
            return None
        return self.volume_l * (self.aim_pct - self.strength_pct) / gain_pct

    def at(self, step: str) -> float | None:
        """The number of a step, from the figures before it; None where the step has none."""
        return {
            "volume": self.dipped_l,
            "strength": self.read_pct,
            "room": self.full_volume_l - self.volume_l,
            "take_out": self.take_out_l,
            "top_up": self.top_up_pct,
        }[step]

    def slips(self, step: str) -> dict[str, float]:
        """What each common slip gives at a step, by its code."""
        return {
            "volume": self._slips_of_volume,
            "strength": self._slips_of_strength,
            "room": self._slips_of_room,
            "take_out": self._slips_of_take_out,
            "top_up": self._slips_of_top_up,
        }[step]()

    def _slips_of_volume(self) -> dict[str, float]:
        return {
            "room_as_volume": self.room_l,
            "depth_as_volume": self.depth_mm,
            "share_as_volume": 100 * self.depth_mm / self.full_depth_mm,
        }

    def _slips_of_strength(self) -> dict[str, float]:
        return {
            "factor_forgotten": self.reading_brix,
            "factor_divided": self.reading_brix / self.factor,
        }

    def _slips_of_room(self) -> dict[str, float]:
        return {
            "volume_as_room": self.volume_l,
            "depth_as_room": self.full_depth_mm - self.depth_mm,
        }

    def _slips_of_take_out(self) -> dict[str, float]:
        missing_l = self.volume_l * (self.aim_pct - self.strength_pct)
        return {
            "goes_out_too": missing_l / self.strong_pct,
            "concentrate_alone": missing_l / 100,
        }

    def _slips_of_top_up(self) -> dict[str, float]:
        needed_pct = self.top_up_pct
        if needed_pct is None:
            return {}
        shortfall_pct = self.aim_pct - self.strength_pct
        slips = {
            "aim_as_top_up": self.aim_pct,
            "wrong_way": 2 * self.aim_pct - needed_pct,
            "shortfall_as_top_up": shortfall_pct,
            "sump_only": self.volume_l * shortfall_pct / self.room_l,
            "sump_forgotten": self.full_volume_l * self.aim_pct / self.room_l,
        }
        if needed_pct < 100:
            slips["of_water"] = 100 * needed_pct / (100 - needed_pct)
        return slips
