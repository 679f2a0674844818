"""A shown recipe in the words of the slip; no number is worked out anew."""

from __future__ import annotations

from pycore.desk.contract.results import Jugs, PourShown
from pycore.desk.sheets.messages import SlipRecipe
from pycore.quantity.rounding import Shown
from pycore.sheets.language import Language
from pycore.sheets.recipe_slip import RecipeSlip, SlipPart, SlipPour
from pycore.sheets.svg import printable


def _parts(pour: PourShown, language: Language) -> list[SlipPart]:
    """Each part of one bucket in pouring order; a part of 0 is left out."""
    if pour.kind == "ready_mix":
        return [SlipPart("ready_mix", language.amount(pour.total))]
    every: list[tuple[str, Shown | None, str]] = [
        ("own_fluid", pour.fluid, ""),
        ("water", pour.water, ""),
        ("concentrate", pour.concentrate, _measured_by(pour, language)),
    ]
    return [
        SlipPart(key, language.amount(part), note)
        for key, part, note in every
        if part and part.value > 0
    ]


def _measured_by(pour: PourShown, language: Language) -> str:
    """How the concentrate is measured where one jug does not do it."""
    if pour.pail_mark is not None:
        return language.say("up_to", mark=language.amount(pour.pail_mark))
    if pour.jugs is not None:
        return _jugs(pour.jugs, language)
    return ""


def _jugs(jugs: Jugs, language: Language) -> str:
    """So many full jugs; a rest of 0 is left out, as nobody can measure it."""
    if jugs.rest.value == 0:
        return language.say("jugs_full", n=str(jugs.count))
    rest = language.amount(jugs.rest)
    if jugs.count == 1:
        return language.say("jugs_one", rest=rest)
    return language.say("jugs", n=str(jugs.count), rest=rest)


def _pour(pour: PourShown, language: Language) -> SlipPour:
    return SlipPour(
        count=pour.count,
        parts=_parts(pour, language),
        water_share=min(1.0, max(0.0, pour.water_share)),
        concentrate_share=min(1.0, max(0.0, pour.concentrate_share)),
        note=language.say(
            "bucket_strength",
            strength=language.amount(pour.strength),
            weight=language.amount(pour.weight),
        ),
    )


def _before(recipe: SlipRecipe, language: Language) -> list[str]:
    amount = language.amount
    said = []
    if recipe.depth is not None:
        said.append(language.say("from_dip", depth=amount(recipe.depth)))
    if recipe.reading is not None:
        said.append(language.say("from_reading", reading=amount(recipe.reading)))
    if recipe.now_strength is not None and recipe.now_volume is not None:
        strength, volume = amount(recipe.now_strength), amount(recipe.now_volume)
        said.append(language.say("now", strength=strength, volume=volume))
    return [" ".join(said)] if said else []


def slip_of(name: str, when: str | None, recipe: SlipRecipe, language: Language) -> RecipeSlip:
    """What stands on the slip of a recipe that was shown."""
    amount, out = language.amount, recipe.take_out
    after = language.say(
        "after",
        strength=amount(recipe.strength),
        low=language.number(recipe.low),
        high=amount(recipe.high),
        volume=amount(recipe.volume),
    )
    # What the page said, or at least this: nobody pours without it.
    cautions = [*map(printable, recipe.cautions)] or [language.say("slip_caution")]
    cautions.append(language.say("slip_sheet"))
    return RecipeSlip(
        name=name,
        when=None if when is None else printable(when),
        before=_before(recipe, language),
        take_out=amount(out) if out is not None and out.value > 0 else None,
        pours=[_pour(pour, language) for pour in recipe.pours],
        after=after,
        cautions=cautions,
    )
