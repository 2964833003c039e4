"""A change as edits of a request's elements."""

from typing import Any

import msgspec

from ...feedline.elements import Element
from ...feedline.feedline import Feedline
from ..requests import LineRequest
from ..results import Edit
from .candidate import Candidate

__all__ = ["changed_elements", "edits_of", "tuner_element"]


def edits_of(request: LineRequest, feedline: Feedline, candidate: Candidate) -> list[Edit]:
    """One edit for each element that a change touches, from the transmitter on."""
    if candidate.tuner:
        removed = [Edit(at=feedline.links[index].element, element=None) for index in candidate.dropped]
        return [*removed, Edit(at=tuner_element(request, feedline, candidate), element=candidate.tuner, insert=True)]
    fields: dict[int, dict[str, Any]] = {}
    for index, to in candidate.replaced.items():
        fields.setdefault(feedline.links[index].element, {})[_field(feedline, index)] = to
    for index in candidate.dropped:
        of_element = fields.setdefault(feedline.links[index].element, {})
        kept = next(iter(of_element.values()))
        of_element |= {"family": kept, "adapter_to": None}
    elements = request.elements
    changed = {at: msgspec.structs.replace(elements[at], **values) for at, values in fields.items()}
    return [Edit(at=at, element=changed[at]) for at in sorted(changed) if changed[at] != elements[at]]


def changed_elements(request: LineRequest, feedline: Feedline, candidate: Candidate) -> list[Element]:
    """The elements of the line with a change made."""
    elements = list(request.elements)
    for edit in reversed(edits_of(request, feedline, candidate)):
        elements[edit.at : edit.at + (not edit.insert)] = [] if edit.element is None else [edit.element]
    return elements


def tuner_element(request: LineRequest, feedline: Feedline, candidate: Candidate) -> int:
    """Index of the element in front of which its tuner is put."""
    (link,) = candidate.about
    return feedline.links[link].element if link < len(feedline.links) else len(request.elements)


def _field(feedline: Feedline, index: int) -> str:
    """The field of its element that a link's cable or family stands in."""
    link = feedline.links[index]
    if not link.family:
        return "cable"
    second = index > 0 and feedline.links[index - 1].element == link.element
    return "adapter_to" if second else "family"
