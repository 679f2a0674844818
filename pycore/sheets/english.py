"""Generated from shared/words/en.json by `python3 -m web contract`. Do not edit."""

# ruff: noqa: E501

from collections.abc import Mapping
from types import MappingProxyType

WORDS: Mapping[str, str] = MappingProxyType(
    {
        "made_by": "Pailwright",
        "page": "Page {n} of {total}",
        "corrected": "Corrected: the 100 mm line came out {length} long.",
        "check": (
            "Print at 100 %, not “fit to page”. Then measure both lines. If the 100 mm line is not 100 mm long, tell the app and print again."
        ),
        "check_short": "Print at 100 %, not “fit to page”. Both lines must have their full length.",
        "machine": "Machine",
        "code_is": "Code {code}",
        "small_numbers": "Small numbers: {unit}",
        "large_numbers": "Large numbers: {unit}",
        "likely_within": "The amounts are likely right within {percent} %.",
        "full": "FULL",
        "add": "ADD",
        "add_note": "Below it a bucket of {bucket} fits.",
        "never_above": "NEVER ABOVE",
        "zero": "0",
        "zero_note": "end of the stick",
        "pail_zero_note": "inside floor of the pail",
        "dip_scale": "Dip scale",
        "dip_step_1": "Cut out the strips along the lines.",
        "dip_step_2": "Glue each strip on the tab below it, A on A.",
        "dip_step_3": "Put 0 at the end of the stick.",
        "dip_step_4": "Scratch or punch the marks into the stick. Paper does not last in coolant.",
        "dip_step_5": "Dip upright on the hard floor, pump off.",
        "dip_step_5_running": "Dip upright on the hard floor, pump running, away from what moves.",
        "dip_step_top": (
            "Lower the end until it touches the coolant, pump off. Read at the fixed point."
        ),
        "dip_step_top_running": (
            "With the pump running, lower the end until it touches the coolant. Read at the fixed point."
        ),
        "from_the_top": (
            "For dips from the fixed point at the top: a smaller number means more coolant."
        ),
        "own_zero": (
            "This strip has its own zero. With it the app must not add {offset} to the stick any more."
        ),
        "bucket_scale": "Bucket scale",
        "bucket_step_1": "Cut out the strip along the lines.",
        "bucket_step_2": "Put 0 at the inside floor and lay the strip up the wall.",
        "bucket_step_3": "Copy the marks onto the wall with a paint marker.",
        "bucket_step_4": "Water to the WATER line first, then concentrate to its line.",
        "bucket_step_5": "Check one mark with a measured fill before you trust the others.",
        "water_to": "{n} WATER",
        "concentrate_to": "{n} CONCENTRATE",
        "mix_water": "{amount} water",
        "mix_concentrate": "+ {amount} concentrate",
        "mix_makes": "= {strength}",
        "fill_most": "FILL no higher: {amount}",
        "machine_card": "Machine card",
        "card_coolant": "Coolant",
        "card_target": "Target",
        "card_factor": "Factor",
        "factor_chart": "by its chart",
        "card_glass": "Glass reads",
        "card_full": "Full mark",
        "card_circuit": "Whole circuit",
        "card_calibrated": "Tank measured",
        "target_of": "{low} to {high}, aim {aim}",
        "glass_of": "{low} to {high}",
        "full_of": "{depth} = {volume}",
        "type_soluble_oil": "soluble oil",
        "type_semi_synthetic": "semi-synthetic",
        "type_synthetic": "synthetic",
        "card_caution_gloves": "Wear gloves. Concentrate harms the skin.",
        "card_caution_eyes": "Protect your eyes when you pour.",
        "card_caution_pump": "Pump off, nothing turning, then dip.",
        "card_caution_running": "Leave the pump running to dip. Keep away from what moves.",
        "card_caution_sheet": "The safety data sheet and the supplier decide.",
        "cut_and_laminate": "Cut out, laminate and hang it at the machine.",
        "log_sheet": "Coolant log",
        "log_note": (
            "One line for each check. Wipe and zero the refractometer first. Water first, then concentrate. Gloves and eye protection on."
        ),
        "col_date": "Date",
        "col_who": "Who",
        "col_dip": "Dip",
        "col_reading": "Reading",
        "col_strength": "Strength",
        "col_water": "Water",
        "col_concentrate": "Concentrate",
        "col_after": "Reading after",
        "col_notes": "Look, smell, notes",
        "recipe_slip": "Recipe",
        "take_out": "First take out {amount}.",
        "nothing_to_pour": "Nothing to pour.",
        "buckets_one": "1 bucket",
        "buckets_many": "{n} buckets, each",
        "jugs": "{n} full jugs and {rest}",
        "jugs_one": "1 full jug and {rest}",
        "jugs_full": "{n} full jugs",
        "up_to": "fill up to {mark}",
        "bucket_strength": "{strength}, {weight}",
        "water": "WATER",
        "concentrate": "CONCENTRATE",
        "own_fluid": "COOLANT",
        "ready_mix": "READY MIX",
        "from_dip": "Dip {depth}.",
        "from_reading": "Reading {reading}.",
        "now": "Now about {strength} in {volume}.",
        "after": "After that: about {strength}, likely {low} to {high}, {volume}.",
        "slip_caution": "Water first, then concentrate. Gloves and eye protection on.",
        "slip_sheet": "The safety data sheet and the supplier decide.",
    }
)
