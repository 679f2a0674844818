"""``python3 -m tests.published.rule_of_thumb``: how far a shop's rule holds, as a table."""

import json
import sys

from tests.published.checks import Native, question, rows


def table() -> str:
    """One line per dip and reading: where the rule lands, and whether it fits into the sump."""
    lines = ["dip in  reading  concentrate US gal  lands at %  u %   verdict"]
    for file, row in rows():
        if row["kind"] == "rule_of_thumb":
            got = Native().answer(question(file, row))
            verdict = "overfills" if got["overfills"] else "6 to 10 %"
            if not got["overfills"] and not got["in_6_to_10_pct"]:
                verdict = "outside 6 to 10 %"
            amount = f"{row['concentrate_us_gal']:18.1f}"
            landing = f"{got['strength_pct']:10.2f}  {got['u_pct']:4.2f}"
            lines.append(
                f"{row['dip_in']:>6}  {row['reading_brix']:>7}  {amount}  {landing}  {verdict}"
            )
    return "\n".join(lines)


def edges() -> dict[str, float]:
    """Dip in inches from which the rule overfills, and reading below which it falls under 6 %."""
    file, first = next((file, row) for file, row in rows() if row["kind"] == "rule_of_thumb")

    def lands(dip: float, reading: float) -> dict[str, float]:
        amount = 2.5 if dip > 3.5 else 3
        row = {**first, "dip_in": f"{dip:.4f}", "reading_brix": f"{reading:.4f}"}
        text = question(file, {**row, "concentrate_us_gal": amount})
        return json.loads(json.dumps(Native().answer(text)))

    dips = [dip / 100 for dip in range(360, 700) if lands(dip / 100, 3.0)["overfills"]]
    weak = [r / 100 for r in range(100, 400) if lands(3.501, r / 100)["strength_pct"] < 6]
    return {"overfills_from_in": min(dips), "too_weak_up_to_reading": max(weak)}


if __name__ == "__main__":
    print(table())
    print(", ".join(f"{name} {value}" for name, value in edges().items()))
    sys.exit(0)
