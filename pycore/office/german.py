"""Generated from shared/words/de.json by `python3 -m web contract`. Do not edit."""

# ruff: noqa: E501

from collections.abc import Mapping
from types import MappingProxyType

WORDS: Mapping[str, str] = MappingProxyType(
    {
        "made_by": "Pailwright",
        "page": "Seite {n} von {total}",
        "corrected": "Korrigiert: Die 100-mm-Linie wurde {length} lang.",
        "check": (
            "Mit 100 % drucken, nicht „An Seite anpassen“. Dann beide Linien messen. Ist die 100-mm-Linie nicht 100 mm lang, das der App sagen und neu drucken."
        ),
        "check_short": (
            "Mit 100 % drucken, nicht „An Seite anpassen“. Beide Linien müssen ihre volle Länge haben."
        ),
        "machine": "Maschine",
        "code_is": "Code {code}",
        "small_numbers": "Kleine Zahlen: {unit}",
        "large_numbers": "Große Zahlen: {unit}",
        "likely_within": "Die Mengen stimmen wohl auf {percent} %.",
        "full": "VOLL",
        "add": "FÜLLEN",
        "add_note": "Darunter passt ein Eimer mit {bucket}.",
        "never_above": "NIE HÖHER",
        "zero": "0",
        "zero_note": "Ende des Stabs",
        "pail_zero_note": "Boden innen im Eimer",
        "dip_scale": "Peilskala",
        "dip_step_1": "Die Streifen an den Linien ausschneiden.",
        "dip_step_2": "Jeden Streifen auf die Lasche darunter kleben, A auf A.",
        "dip_step_3": "Die 0 an das Ende des Stabs legen.",
        "dip_step_4": "Die Striche in den Stab ritzen oder schlagen. Papier hält in KSS nicht.",
        "dip_step_5": "Senkrecht auf hartem Boden peilen, Pumpe aus.",
        "dip_step_5_running": (
            "Senkrecht auf hartem Boden peilen, Pumpe läuft, Abstand von Bewegtem."
        ),
        "dip_step_top": (
            "Das Ende senken, bis es den KSS berührt, Pumpe aus. Am festen Punkt ablesen."
        ),
        "dip_step_top_running": (
            "Bei laufender Pumpe das Ende senken, bis es den KSS berührt. Am festen Punkt ablesen."
        ),
        "from_the_top": "Für Peilungen vom festen Punkt oben: Eine kleinere Zahl heißt mehr KSS.",
        "own_zero": (
            "Dieser Streifen hat seine eigene Null. Damit darf die App {offset} nicht mehr zum Stab zählen."
        ),
        "bucket_scale": "Eimerskala",
        "bucket_step_1": "Den Streifen an den Linien ausschneiden.",
        "bucket_step_2": "Die 0 an den Boden innen legen, den Streifen die Wand hinauf.",
        "bucket_step_3": "Die Striche mit einem Lackstift auf die Wand übertragen.",
        "bucket_step_4": "Erst Wasser bis zum Strich WASSER, dann Konzentrat bis zu seinem.",
        "bucket_step_5": "Einen Strich mit gemessener Füllung prüfen, bevor die anderen gelten.",
        "water_to": "{n} WASSER",
        "concentrate_to": "{n} KONZENTRAT",
        "mix_water": "{amount} Wasser",
        "mix_concentrate": "+ {amount} Konzentrat",
        "mix_makes": "= {strength}",
        "fill_most": "Nicht höher FÜLLEN: {amount}",
        "machine_card": "Maschinenkarte",
        "card_coolant": "KSS",
        "card_target": "Soll",
        "card_factor": "Faktor",
        "factor_chart": "nach Diagramm",
        "card_glass": "Gerät zeigt",
        "card_full": "Vollmarke",
        "card_circuit": "Ganzer Kreislauf",
        "card_calibrated": "Tank vermessen",
        "target_of": "{low} bis {high}, Ziel {aim}",
        "glass_of": "{low} bis {high}",
        "full_of": "{depth} = {volume}",
        "type_soluble_oil": "Emulsion",
        "type_semi_synthetic": "teilsynthetisch",
        "type_synthetic": "synthetisch",
        "card_caution_gloves": "Handschuhe tragen. Konzentrat schadet der Haut.",
        "card_caution_eyes": "Beim Einfüllen die Augen schützen.",
        "card_caution_pump": "Pumpe aus, nichts dreht sich, dann peilen.",
        "card_caution_running": (
            "Zum Peilen die Pumpe laufen lassen. Abstand von allem, was sich bewegt."
        ),
        "card_caution_sheet": "Sicherheitsdatenblatt und Lieferant entscheiden.",
        "cut_and_laminate": "Ausschneiden, laminieren, an die Maschine hängen.",
        "log_sheet": "KSS-Prüfblatt",
        "log_note": (
            "Eine Zeile je Prüfung. Erst Prisma abwischen und nullen. Erst Wasser, dann Konzentrat. Handschuhe und Augenschutz tragen."
        ),
        "col_date": "Datum",
        "col_who": "Wer",
        "col_dip": "Füllstand",
        "col_reading": "Messwert",
        "col_strength": "Konz.",
        "col_water": "Wasser",
        "col_concentrate": "Konzentrat",
        "col_after": "Danach",
        "col_notes": "Aussehen, Geruch, Notizen",
        "recipe_slip": "Rezept",
        "take_out": "Zuerst {amount} entnehmen.",
        "nothing_to_pour": "Nichts einzufüllen.",
        "buckets_one": "1 Eimer",
        "buckets_many": "{n} Eimer, je",
        "jugs": "{n} volle Messbecher und {rest}",
        "jugs_one": "1 voller Messbecher und {rest}",
        "jugs_full": "{n} volle Messbecher",
        "up_to": "füllen bis {mark}",
        "bucket_strength": "{strength}, {weight}",
        "water": "WASSER",
        "concentrate": "KONZENTRAT",
        "own_fluid": "KSS",
        "ready_mix": "FERTIGER ANSATZ",
        "from_dip": "Füllstand {depth}.",
        "from_reading": "Messwert {reading}.",
        "now": "Jetzt etwa {strength} in {volume}.",
        "after": "Danach: etwa {strength}, wohl {low} bis {high}, {volume}.",
        "slip_caution": "Erst Wasser, dann Konzentrat. Handschuhe und Augenschutz tragen.",
        "slip_sheet": "Sicherheitsdatenblatt und Lieferant entscheiden.",
    }
)
