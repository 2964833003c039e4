"""Packs of earlier versions, brought to the shape of today."""

from typing import Any

import msgspec

__all__ = ["brought_up_to_date"]

RETIRED = {
    "interfaces": (
        "altitude_voltage_rms_v",
        "thermal_time_constant_s",
        "cable_conductor_area_m2",
        "usual_cable_diameter_m",
    ),
    "cables": (),
}
"""Fields that nothing uses any more, by table."""

TRACES = (*(name.encode() for names in RETIRED.values() for name in names), b'"low"', b'"end"')


def brought_up_to_date(text: bytes) -> tuple[bytes, list[str]]:
    """The text of a pack in today's shape, and a sentence for each thing that was changed; what is no pack stays so."""
    if not any(trace in text for trace in TRACES):
        return text, []
    try:
        pack = msgspec.json.decode(text)
    except (msgspec.DecodeError, UnicodeDecodeError):
        return text, []
    if not isinstance(pack, dict):
        return text, []
    sentences: list[str] = []
    for table in RETIRED:
        entries = pack.get(table)
        for entry in entries if isinstance(entries, list) else []:
            if isinstance(entry, dict):
                sentences += _updated(table, entry)
    return (msgspec.json.encode(pack), sentences) if sentences else (text, [])


def _updated(table: str, entry: dict[str, Any]) -> list[str]:
    """Bring an entry up to date in place; what was changed, in words."""
    name = entry.get("name", entry.get("id"))
    sentences = []
    if unused := [field for field in RETIRED[table] if entry.pop(field, None) is not None]:
        sentences.append(f"{name}: {', '.join(unused)} {'is' if len(unused) == 1 else 'are'} no longer used.")
    ends = entry.get("average_power")
    if isinstance(ends, dict) and set(ends) == {"low", "high"}:
        low, high = ends["low"], ends["high"]
        entry["average_power"] = [low] if low == high else [low, high]
        sentences.append(f"{name}: the ends of average_power are taken as ratings to compare with.")
    ratings = entry.get("power") if table == "cables" else None
    ended = [rating for rating in ratings if isinstance(rating, dict)] if isinstance(ratings, list) else []
    if [rating for rating in ended if rating.pop("end", None) is not None]:
        sentences.append(f"{name}: end is no longer used; each power is a rating to compare with.")
    return sentences
