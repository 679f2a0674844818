"""The truth behind the example: one sump whose water and concentrate are kept apart."""

from __future__ import annotations

from dataclasses import dataclass, field


@dataclass
class Account:
    """Litres that went in and out since the start, to close the balance with."""

    water_in_l: float = 0.0
    concentrate_in_l: float = 0.0
    evaporated_l: float = 0.0
    water_out_l: float = 0.0
    concentrate_out_l: float = 0.0


@dataclass
class Sump:
    """What is really in it. Volumes add up: the balance of the calculations themselves."""

    water_l: float
    concentrate_l: float
    account: Account = field(default_factory=Account)

    @property
    def volume_l(self) -> float:
        """Both together."""
        return self.water_l + self.concentrate_l

    @property
    def strength_pct(self) -> float:
        """Per cent by volume."""
        return 100 * self.concentrate_l / self.volume_l

    def evaporate(self, litres_l: float) -> None:
        """Water alone leaves."""
        gone_l = min(litres_l, self.water_l / 2)
        self.water_l -= gone_l
        self.account.evaporated_l += gone_l

    def take_out(self, litres_l: float) -> None:
        """Coolant leaves as it is: on parts and chips, or by the drum."""
        share = min(litres_l / self.volume_l, 1.0)
        water_l, concentrate_l = self.water_l * share, self.concentrate_l * share
        self.water_l -= water_l
        self.concentrate_l -= concentrate_l
        self.account.water_out_l += water_l
        self.account.concentrate_out_l += concentrate_l

    def skim(self, share: float) -> None:
        """Oil alone leaves: with the skimmer, on chips and fine swarf."""
        gone_l = self.concentrate_l * share
        self.concentrate_l -= gone_l
        self.account.concentrate_out_l += gone_l

    def pour(self, water_l: float, concentrate_l: float) -> None:
        """A bucket goes in."""
        self.water_l += water_l
        self.concentrate_l += concentrate_l
        self.account.water_in_l += water_l
        self.account.concentrate_in_l += concentrate_l
