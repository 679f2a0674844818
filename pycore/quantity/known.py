"""Generated from shared/quantities.json by `python3 -m web contract`. Do not edit."""

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType


@dataclass(frozen=True)
class Known:
    """Unit and range of one quantity, in that unit; None where a side is open."""

    unit: str
    typed: bool
    minimum: float | None = None
    maximum: float | None = None
    above: float | None = None
    below: float | None = None
    usual_low: float | None = None
    usual_high: float | None = None


KNOWN: Mapping[str, Known] = MappingProxyType(
    {
        "depth_mm": Known(unit="mm", typed=True, minimum=0, maximum=5000),
        "full_depth_mm": Known(
            unit="mm", typed=True, minimum=10, maximum=5000, usual_low=50, usual_high=2500
        ),
        "rim_depth_mm": Known(
            unit="mm", typed=True, maximum=6000, above=0, usual_low=55, usual_high=3000
        ),
        "depth_u_mm": Known(
            unit="mm", typed=True, minimum=0, maximum=200, usual_low=0, usual_high=20
        ),
        "length_mm": Known(
            unit="mm", typed=True, maximum=50000, above=0, usual_low=100, usual_high=10000
        ),
        "volume_l": Known(unit="L", typed=True, minimum=0, maximum=200000),
        "full_volume_l": Known(
            unit="L", typed=True, minimum=1, maximum=200000, usual_low=5, usual_high=50000
        ),
        "reading_brix": Known(
            unit="Brix", typed=True, minimum=0, maximum=95, usual_low=0.3, usual_high=18
        ),
        "reading_u_brix": Known(
            unit="Brix", typed=True, minimum=0, maximum=10, usual_low=0, usual_high=1
        ),
        "zero_brix": Known(
            unit="Brix", typed=True, minimum=-5, maximum=5, usual_low=-0.5, usual_high=0.5
        ),
        "factor": Known(unit="1", typed=True, maximum=8, above=0.3, usual_low=0.9, usual_high=3.5),
        "strength_pct": Known(unit="%", typed=True, minimum=0, below=40),
        "low_pct": Known(unit="%", typed=True, above=0, below=100, usual_low=2, usual_high=15),
        "aim_pct": Known(unit="%", typed=True, above=0, below=100, usual_low=2, usual_high=15),
        "high_pct": Known(unit="%", typed=True, above=0, below=100, usual_low=2, usual_high=15),
        "strong_pct": Known(unit="%", typed=True, maximum=100, above=0, usual_low=2, usual_high=35),
        "weak_pct": Known(unit="%", typed=True, minimum=0, below=100, usual_low=0, usual_high=4),
        "closeness_pct": Known(
            unit="%", typed=True, maximum=10, above=0, usual_low=0.1, usual_high=2
        ),
        "usable_l": Known(
            unit="L", typed=True, minimum=0.1, maximum=1000, usual_low=2, usual_high=20
        ),
        "water_mark_l": Known(
            unit="L", typed=True, minimum=0.001, maximum=1000, usual_low=0.05, usual_high=5
        ),
        "jug_mark_l": Known(
            unit="L", typed=True, minimum=0.001, maximum=1000, usual_low=0.005, usual_high=1
        ),
        "temperature_c": Known(
            unit="°C", typed=True, minimum=-20, maximum=100, usual_low=10, usual_high=40
        ),
        "mass_kg": Known(unit="kg", typed=True, minimum=0, maximum=5000),
        "fill_to_l": Known(unit="L", typed=False, maximum=200000, above=0),
        "mark_l": Known(unit="L", typed=False, minimum=0.001, maximum=1000),
        "most_l": Known(unit="L", typed=False, minimum=0, maximum=200000),
        "draw_off_l": Known(unit="L", typed=False, minimum=0, maximum=200000),
        "water_l": Known(unit="L", typed=False, minimum=0, maximum=200000),
        "concentrate_l": Known(unit="L", typed=False, minimum=0, maximum=200000),
        "room_l": Known(unit="L", typed=False),
        "litres_per_mm": Known(unit="L/mm", typed=False, minimum=0),
        "rim_volume_l": Known(unit="L", typed=False, minimum=0),
        "share": Known(unit="1", typed=False, minimum=0, maximum=1),
        "chance_in_band": Known(unit="1", typed=False, minimum=0, maximum=1),
        "u": Known(unit="as its value", typed=False, minimum=0),
        "minutes": Known(unit="min", typed=False, minimum=0),
        "carry_out_l_d": Known(
            unit="L", typed=True, maximum=200000, above=0, usual_low=0.1, usual_high=60
        ),
        "first_mark_l": Known(
            unit="L", typed=True, minimum=0, maximum=1000, usual_low=0, usual_high=5
        ),
        "jug_first_mark_l": Known(
            unit="L", typed=True, minimum=0, maximum=1000, usual_low=0, usual_high=1
        ),
        "jug_max_l": Known(
            unit="L", typed=True, maximum=1000, above=0, usual_low=0.2, usual_high=5
        ),
        "concentrate_at_hand_l": Known(unit="L", typed=True, minimum=0, maximum=200000),
        "never_above_mm": Known(
            unit="mm", typed=True, maximum=6000, above=0, usual_low=50, usual_high=3000
        ),
        "never_above_l": Known(unit="L", typed=False, minimum=0),
        "run_l": Known(unit="L", typed=False, minimum=0),
        "level_l": Known(unit="L", typed=False, minimum=0),
        "setting_pct": Known(unit="%", typed=False, minimum=0),
        "lowest_pct": Known(
            unit="%", typed=True, minimum=0, maximum=100, usual_low=0, usual_high=10
        ),
        "highest_pct": Known(
            unit="%", typed=True, maximum=100, above=0, usual_low=2, usual_high=35
        ),
        "step_pct": Known(
            unit="%", typed=True, minimum=0.01, maximum=100, usual_low=0.1, usual_high=2
        ),
        "usual_pct": Known(
            unit="%", typed=True, minimum=0, maximum=100, usual_low=0, usual_high=15
        ),
        "top_up_pct": Known(unit="%", typed=True, minimum=0, maximum=1000),
        "deal_number": Known(unit="1", typed=True, minimum=1, maximum=9999),
        "own_buckets": Known(unit="1", typed=True, minimum=1, maximum=1000),
        "drift_pct_d": Known(unit="%", typed=False, minimum=0),
        "age_d": Known(unit="d", typed=False, minimum=0),
        "days": Known(unit="d", typed=False, minimum=0),
        "density_kg_l": Known(
            unit="kg/L", typed=True, minimum=0.5, maximum=2, usual_low=0.85, usual_high=1.15
        ),
        "heaviest_kg": Known(
            unit="kg", typed=True, maximum=100, above=0, usual_low=5, usual_high=25
        ),
        "most_buckets": Known(
            unit="1", typed=True, minimum=1, maximum=1000, usual_low=2, usual_high=40
        ),
        "fluid_l": Known(unit="L", typed=False, minimum=0),
        "rise_mm": Known(unit="mm", typed=True, maximum=5000, above=0, usual_low=5, usual_high=300),
        "floor_mm": Known(
            unit="mm", typed=True, minimum=0, maximum=5000, usual_low=0, usual_high=1500
        ),
        "diameter_mm": Known(
            unit="mm", typed=True, maximum=20000, above=0, usual_low=150, usual_high=4000
        ),
        "bottom_diameter_mm": Known(
            unit="mm", typed=True, minimum=0, maximum=20000, usual_low=0, usual_high=4000
        ),
        "height_mm": Known(
            unit="mm", typed=True, maximum=6000, above=0, usual_low=100, usual_high=3000
        ),
        "from_depth_mm": Known(
            unit="mm", typed=True, minimum=0, maximum=6000, usual_low=0, usual_high=3000
        ),
        "to_depth_mm": Known(unit="mm", typed=True, maximum=20000, above=0),
        "thing_mm": Known(
            unit="mm", typed=True, maximum=20000, above=0, usual_low=20, usual_high=3000
        ),
        "displaced_l": Known(
            unit="L", typed=True, maximum=200000, above=0, usual_low=0.1, usual_high=2000
        ),
        "hidden_l": Known(
            unit="L", typed=True, minimum=0, maximum=200000, usual_low=0, usual_high=5000
        ),
        "hidden_u_l": Known(unit="L", typed=True, minimum=0, maximum=200000),
        "rest_l": Known(
            unit="L", typed=True, minimum=0, maximum=200000, usual_low=0, usual_high=1000
        ),
        "reference_height_mm": Known(
            unit="mm", typed=True, maximum=10000, above=0, usual_low=100, usual_high=4000
        ),
        "zero_offset_mm": Known(
            unit="mm", typed=True, minimum=-1000, maximum=1000, usual_low=-50, usual_high=50
        ),
        "outage_mm": Known(
            unit="mm", typed=True, minimum=0, maximum=10000, usual_low=0, usual_high=3000
        ),
        "gauge": Known(unit="1", typed=True, minimum=0, maximum=1),
        "wait_min": Known(
            unit="min", typed=False, minimum=0, maximum=240, usual_low=0, usual_high=60
        ),
        "mix_min": Known(
            unit="min", typed=False, minimum=1, maximum=1440, usual_low=10, usual_high=480
        ),
        "poured_l": Known(
            unit="L", typed=True, minimum=0.1, maximum=10000, usual_low=1, usual_high=250
        ),
        "point_u_l": Known(unit="L", typed=True, minimum=0, maximum=200000),
        "least_volume_l": Known(unit="L", typed=False, minimum=0),
        "pumpable_l": Known(unit="L", typed=False),
        "sides_mm": Known(unit="mm", typed=False),
        "maker_difference_l": Known(unit="L", typed=False),
        "height_share": Known(unit="1", typed=False),
        "left_share": Known(unit="1", typed=False),
        "right_share": Known(unit="1", typed=False),
        "from_share": Known(unit="1", typed=False),
        "to_share": Known(unit="1", typed=False),
        "width_share": Known(unit="1", typed=False),
        "zero_share": Known(unit="1", typed=False),
        "aspect_share": Known(unit="1", typed=False),
        "point_depth_mm": Known(unit="mm", typed=True, minimum=0, maximum=6000),
        "reading_nd": Known(
            unit="nD", typed=True, minimum=1.3, maximum=1.6, usual_low=1.331, usual_high=1.361
        ),
        "reading_pct": Known(
            unit="%", typed=True, minimum=0, below=100, usual_low=0.3, usual_high=20
        ),
        "resolution_brix": Known(
            unit="Brix", typed=True, maximum=5, above=0, usual_low=0.05, usual_high=0.5
        ),
        "resolution_nd": Known(
            unit="nD", typed=True, maximum=0.01, above=0, usual_low=0.0001, usual_high=0.0005
        ),
        "resolution_pct": Known(
            unit="%", typed=True, maximum=5, above=0, usual_low=0.05, usual_high=1
        ),
        "zero_nd": Known(
            unit="nD",
            typed=True,
            minimum=1.3265,
            maximum=1.3402,
            usual_low=1.3317,
            usual_high=1.3341,
        ),
        "zero_pct": Known(
            unit="%", typed=True, minimum=-10, maximum=10, usual_low=-0.5, usual_high=0.5
        ),
        "scale_brix": Known(
            unit="Brix", typed=True, minimum=-10, maximum=95, usual_low=0, usual_high=40
        ),
        "scale_nd": Known(
            unit="nD", typed=True, minimum=1.3, maximum=1.6, usual_low=1.32, usual_high=1.4
        ),
        "scale_pct": Known(
            unit="%", typed=True, minimum=-10, maximum=100, usual_low=0, usual_high=40
        ),
        "factor_divide": Known(
            unit="1", typed=True, minimum=0.125, below=3.3333, usual_low=0.28, usual_high=1.12
        ),
        "factor_inside": Known(
            unit="1", typed=True, maximum=8, above=0.3, usual_low=0.9, usual_high=3.5
        ),
        "factor_u": Known(unit="1", typed=True, minimum=0, maximum=4),
        "offset_brix": Known(
            unit="Brix", typed=True, minimum=-3, maximum=3, usual_low=-0.5, usual_high=0.5
        ),
        "diluted": Known(unit="1", typed=True, maximum=9, above=0, usual_low=1, usual_high=1),
        "jug_amount_l": Known(
            unit="L", typed=True, minimum=0, maximum=20, usual_low=0.005, usual_high=10
        ),
        "chart_pct": Known(unit="%", typed=True, minimum=0, below=40, usual_low=0, usual_high=20),
        "first_fill_ph": Known(
            unit="1", typed=True, minimum=5, maximum=12, usual_low=8.3, usual_high=9.8
        ),
        "hardness_mg_l": Known(
            unit="mg/L CaCO₃", typed=True, minimum=0, maximum=2000, usual_low=0, usual_high=357
        ),
        "hardness_dh": Known(unit="°dH", typed=False, minimum=0),
        "hardness_fh": Known(unit="°fH", typed=False, minimum=0),
        "hardness_gpg": Known(unit="gpg", typed=False, minimum=0),
        "hardness_mmol_l": Known(unit="mmol/L", typed=False, minimum=0),
        "chloride_mg_l": Known(
            unit="mg/L", typed=True, minimum=0, maximum=5000, usual_low=0, usual_high=100
        ),
        "nitrate_mg_l": Known(
            unit="mg/L", typed=True, minimum=0, maximum=1000, usual_low=0, usual_high=50
        ),
        "second_shows": Known(
            unit="1", typed=True, minimum=0, maximum=1000, usual_low=0.5, usual_high=100
        ),
        "second_factor": Known(
            unit="1", typed=True, maximum=50, above=0, usual_low=0.05, usual_high=10
        ),
        "second_u": Known(unit="1", typed=True, maximum=100, above=0, usual_low=0, usual_high=5),
        "normalised_error": Known(unit="1", typed=False),
        "score": Known(unit="1", typed=False),
        "shelf_life_months": Known(unit="month", typed=False, minimum=1, maximum=120),
        "ph": Known(unit="1", typed=True, minimum=5, maximum=12, usual_low=8.3, usual_high=9.8),
        "ph_drop": Known(unit="1", typed=True, maximum=5, above=0, usual_low=0.2, usual_high=1.5),
        "nitrite_mg_l": Known(
            unit="mg/L", typed=True, minimum=0, maximum=5000, usual_low=0, usual_high=20
        ),
        "dip_slide_cfu_ml": Known(
            unit="CFU/mL", typed=True, minimum=0, maximum=100000000, usual_low=0, usual_high=1000000
        ),
        "poured_pct": Known(
            unit="%", typed=True, minimum=0, maximum=100, usual_low=0, usual_high=25
        ),
        "measured_100_mm": Known(unit="mm", typed=True, minimum=90, maximum=110),
        "pail_diameter_mm": Known(
            unit="mm", typed=True, maximum=2000, above=0, usual_low=120, usual_high=450
        ),
        "pail_height_mm": Known(
            unit="mm", typed=True, maximum=2000, above=0, usual_low=20, usual_high=500
        ),
        "pail_fill_l": Known(unit="L", typed=True, maximum=1000, above=0),
        "bucket_water_l": Known(unit="L", typed=True, minimum=0, maximum=1000),
        "bucket_concentrate_l": Known(unit="L", typed=True, minimum=0, maximum=1000),
        "circuit_volume_l": Known(
            unit="L", typed=True, minimum=1, maximum=200000, usual_low=5, usual_high=50000
        ),
        "code_number": Known(unit="1", typed=False, minimum=0, maximum=923520),
        "most_lost_pct_d": Known(
            unit="%", typed=True, minimum=0, maximum=100, usual_low=1, usual_high=20
        ),
        "check_every_d": Known(
            unit="1", typed=True, minimum=1, maximum=365, usual_low=1, usual_high=28
        ),
        "clean_out_every_d": Known(
            unit="1", typed=True, minimum=1, maximum=3650, usual_low=14, usual_high=730
        ),
        "print_scale": Known(unit="1", typed=False, above=0),
    }
)
